// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/tree_reading.h"
#include "pipward/place/address.h"
#include "pipward/place/named_place.h"
#include "pipward/place/near_question.h"
#include "pipward/place/tree_story.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    std::string here;
    std::string grid;
    Metres accuracy{5};
    std::string answers;
    int limit = 10;
    Metres beside{1};
    double gap_weight = 0.1;
    Day as_of;
};

struct SpotRow {
    int rank = 0;
    const place::NearSpot* spot = nullptr;
    const Tree* tree = nullptr;
    Sentence address{};
    Sentence status{};
};

struct QuestionRow {
    int rank = 0;
    const place::NearQuestion* question = nullptr;
    Sentence if_yes{};
    Sentence if_no{};
};

using enum CellType;

const std::vector<ColumnOf<SpotRow>>& near_columns() {
    static const std::vector<ColumnOf<SpotRow>> columns{
        {{"rank", whole, "", "Rank", "1 for the likeliest."},
         [](const SpotRow& r) { return whole_cell(r.rank); }},
        {{"probability", number, "of 1", "Probability", "How likely it is that one stands there."},
         [](const SpotRow& r) { return number_cell(r.spot->probability, 3); }},
        {{"label", text, "", "Label", "What stands on the tree's tag; unknown at a place without a record."},
         [](const SpotRow& r) { return r.tree == nullptr ? Cell{} : text_cell(r.tree->label); }},
        {{"accession", text, "", "Accession", "What the tree is."},
         [](const SpotRow& r) { return r.tree == nullptr ? Cell{} : cell(r.tree->accession); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const SpotRow& r) { return text_cell(r.address); }},
        {{"status", text, "", "Status", "Whether a tree stands there, or when and why it was removed."},
         [](const SpotRow& r) { return text_cell(r.status); }},
        {{"distance_m", number, "m", "Distance", "From the receiver's place."},
         [](const SpotRow& r) { return number_cell(math::length(r.spot->at), 1); }},
        {{"bearing_deg", number, "degrees", "Bearing", "From there, clockwise from true north."},
         [](const SpotRow& r) { return number_cell(math::bearing_deg(r.spot->at), 0); }},
    };
    return columns;
}

const std::vector<ColumnOf<QuestionRow>>& question_columns() {
    static const std::vector<ColumnOf<QuestionRow>> columns{
        {{"rank", whole, "", "Rank", "1 for the question that would settle most."},
         [](const QuestionRow& r) { return whole_cell(r.rank); }},
        {{"question", text, "", "Question", "What to look for; answered by yes or no."},
         [](const QuestionRow& r) { return text_cell(r.question->words); }},
        {{"if_yes", text, "", "If yes", "The likeliest after yes."},
         [](const QuestionRow& r) { return text_cell(r.if_yes); }},
        {{"if_no", text, "", "If no", "The likeliest after no."},
         [](const QuestionRow& r) { return text_cell(r.if_no); }},
        {{"yes", number, "of 1", "Yes", "How likely the answer is yes."},
         [](const QuestionRow& r) { return number_cell(r.question->yes, 3); }},
        {{"bits", number, "bits", "Worth", "How much the answer tells, 0 to 1."},
         [](const QuestionRow& r) { return number_cell(r.question->bits, 3); }},
        {{"key", text, "", "Key", "The question's name for the parameter answers."},
         [](const QuestionRow& r) { return text_cell(r.question->key); }},
    };
    return columns;
}

TableShape near_shape() {
    return shape_of<SpotRow>({"near", "Trees near by", "Where one may stand, the likeliest first.", true, {}},
                             near_columns());
}

TableShape question_shape() {
    return shape_of<QuestionRow>({"near_question",
                                  "Questions that settle it",
                                  "What to look for to know which tree it is, the best question first.",
                                  false,
                                  {}},
                                 question_columns());
}

struct Answers {
    std::map<std::string, bool> by_key;
    std::vector<std::string> keys;
};

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    const auto last = text.find_last_not_of(" \t");
    return first == std::string_view::npos ? "" : std::string(text.substr(first, last - first + 1));
}

/// "tree-ahead=no; label:UP-03-09=yes"; nothing where a part is not so written.
std::optional<Answers> parse_answers(std::string_view text) {
    Answers answers;
    while (!trimmed(text).empty()) {
        const auto end = std::min(text.find(';'), text.size());
        const auto part = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        const auto sign = part.rfind('=');
        const auto word = sign == std::string_view::npos ? "" : trimmed(part.substr(sign + 1));
        if (word != "yes" && word != "no") {
            return std::nullopt;
        }
        answers.keys.push_back(trimmed(part.substr(0, sign)));
        answers.by_key[answers.keys.back()] = word == "yes";
    }
    return answers;
}

Findings check(const Request& request) {
    Findings findings;
    if (request.here.empty() == request.grid.empty()) {
        findings.push_back(about_parameter("here", request.here,
                                           say("One place is needed, no more and no less."),
                                           say("Give either here, as in 48.1340,9.3010, or grid, as in "
                                               "522341.5,5331497.")));
    }
    if (!request.here.empty() && !place::parse_lat_lon(request.here)) {
        findings.push_back(
            about_parameter("here", request.here, say("This is no place on the earth."),
                            say("Give latitude and longitude in degrees, as in 48.1340,9.3010.")));
    }
    if (!request.grid.empty() && !place::parse_grid(request.grid)) {
        findings.push_back(
            about_parameter("grid", request.grid, say("These are not two coordinates."),
                            say("Give x and y with a comma between, as in 522341.5,5331497.")));
    }
    if (!parse_answers(request.answers)) {
        findings.push_back(about_parameter("answers", request.answers,
                                           say("An answer is neither yes nor no."),
                                           say("Write key=yes or key=no, with semicolons between.")));
    }
    return findings;
}

Sentence address_at(const place::NearSpot& spot, const Orchard& orchard) {
    if (spot.tree) {
        return place::address_of(orchard.trees[*spot.tree], orchard.rows);
    }
    Tree place;
    place.block = spot.row && !spot.row->first.empty() ? std::optional{spot.row->first} : std::nullopt;
    place.row = spot.row ? std::optional{spot.row->second} : std::nullopt;
    place.position = spot.position;
    return place::address_of(place, orchard.rows);
}

// "UP-05-04", or the address of a place without a tree's record.
Sentence name_at(const place::NearSpot& spot, const Orchard& orchard) {
    if (spot.kind == place::SpotKind::tree) {
        return verbatim(orchard.trees[*spot.tree].label);
    }
    return say("the gap at {}", address_at(spot, orchard));
}

Sentence after_words(const place::NearSpots& near, const std::vector<double>& shares,
                     const Orchard& orchard) {
    std::vector<std::size_t> order(shares.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    std::ranges::stable_sort(order, std::ranges::greater{}, [&](std::size_t i) { return shares[i]; });
    std::vector<Sentence> named;
    constexpr std::size_t most = 3;
    for (std::size_t i = 0; i < std::min(most, order.size()) && shares[order[i]] >= 0.05; ++i) {
        named.push_back(say("{} {:.0f} %", name_at(near.spots[order[i]], orchard), 100 * shares[order[i]]));
    }
    return joined(named, verbatim(", "));
}

Table near_table(const place::NearSpots& near, const Orchard& orchard, const place::MetrePlane& plane,
                 const Request& request) {
    constexpr double least = 0.0005;
    Table table{near_shape(), {}};
    for (const auto& spot : near.spots) {
        const int rank = static_cast<int>(table.rows.size()) + 1;
        if (rank > request.limit || spot.probability < least) {
            break;
        }
        SpotRow row{rank, &spot, spot.tree ? &orchard.trees[*spot.tree] : nullptr};
        row.address = address_at(spot, orchard);
        row.status =
            row.tree == nullptr ? say("no tree on record") : place::standing_of(*row.tree, request.as_of);
        table.rows.push_back(row_of(row, near_columns()));
        table.rows.back().at = row.tree == nullptr ? plane.back(spot.at) : *row.tree->at;
    }
    return table;
}

Table question_table(const place::NearSpots& near, const std::vector<place::NearQuestion>& questions,
                     const Orchard& orchard) {
    constexpr std::size_t most = 5;
    Table table{question_shape(), {}};
    for (std::size_t i = 0; i < std::min(most, questions.size()); ++i) {
        const QuestionRow row{static_cast<int>(i) + 1, &questions[i],
                              after_words(near, questions[i].if_yes, orchard),
                              after_words(near, questions[i].if_no, orchard)};
        table.rows.push_back(row_of(row, question_columns()));
    }
    return table;
}

void warn_of_distance(const place::NearSpots& near, const Request& request, Findings& findings) {
    const std::string key = request.here.empty() ? "grid" : "here";
    const std::string& value = request.here.empty() ? request.grid : request.here;
    if (near.spots.empty()) {
        findings.push_back(
            {Level::warning, "", "", key, value, say("No tree is anywhere near this place."),
             say("See whether the place is right; tree-find --at tells the nearest trees however far.")});
        return;
    }
    constexpr double unlikely = 3.0;  // farther off one time in ninety
    if (near.off > unlikely) {
        findings.push_back(
            {Level::warning, "", "", key, value,
             say("No tree is as near as the accuracy would have it: the likeliest is {:.1f} m away.",
                 math::length(near.spots.front().at)),
             say("See whether the place is right, or give a larger accuracy-m.")});
    }
}

Sentence summary_of(const place::NearSpots& near, const std::vector<place::NearQuestion>& questions,
                    const Orchard& orchard) {
    if (near.spots.empty()) {
        return say("No tree is near.");
    }
    const auto& best = near.spots.front();
    constexpr double sure = 0.95;
    const auto where =
        say("{:.0f} % for {}, {:.1f} m to the {}.", 100 * best.probability, name_at(best, orchard),
            math::length(best.at), place::compass_words(math::bearing_deg(best.at)));
    return best.probability >= sure || questions.empty()
               ? where
               : say("Ask yourself: {} As yet {}", questions.front().words, where);
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = read_stands(request.book.location);
    const auto& orchard = reading.orchard;
    lent.step(0.8, say("Weighing the trees"));
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto place = place::parse_lat_lon(request.here);
    const auto at = place ? place::place_on_map(*place, orchard, {"here", request.here}, outcome.findings)
                          : place::grid_on_map(orchard, {"grid", request.grid}, outcome.findings);
    if (!at) {
        throw Error(Trouble::input, std::move(outcome.findings));
    }
    auto near = place::near_spots(orchard, request.as_of,
                                  {*at, request.accuracy, request.beside, request.gap_weight});
    warn_of_distance(near, request, outcome.findings);
    const auto answers = parse_answers(request.answers).value_or(Answers{});
    for (const auto& key : place::weigh_answers(near, orchard, answers.by_key)) {
        outcome.findings.push_back(
            {Level::warning, "", "", "answers", key,
             say("This question is not asked at this place: the answer counts for nothing."),
             say("Take keys from the table of questions of the same place.")});
    }
    const auto questions = questions_about(near, orchard, answers.keys);
    outcome.tables = {near_table(near, orchard, place::MetrePlane(orchard.crs, *at), request),
                      question_table(near, questions, orchard)};
    outcome.crs = orchard.crs;
    outcome.summary = summary_of(near, questions, orchard);
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return {book_parameter(&Request::book),
            parameter(&Request::here, "here", "Standpoint",
                      "Latitude and longitude of where you stand, as in 48.1340,9.3010."),
            parameter(&Request::grid, "grid", "Standpoint in the book's grid",
                      "The same in the book's own coordinates, x and y, as in 522341.5,5331497."),
            parameter(&Request::accuracy, "accuracy-m", "Accuracy of the receiver",
                      "The radius around the place that holds the true one 68 times in 100, as receivers and "
                      "telephones tell it.")
                .in("m")
                .between(0.01, 200.0),
            parameter(&Request::answers, "answers", "Answers",
                      "What you saw: keys of questions with yes or no, as in tree-ahead=no; row-left=yes."),
            parameter(&Request::limit, "limit", "Most trees", "How many trees to tell at the most.")
                .between(1, 1000),
            parameter(&Request::beside, "trunk-m", "Distance from the trunk",
                      "How far from the trunk you stand or hold the receiver, as such a radius.")
                .in("m")
                .between(0.0, 20.0)
                .advanced(),
            parameter(&Request::gap_weight, "gap-weight", "Weight of gaps",
                      "How likely you stand at a gap, against a standing tree at the same distance.")
                .in("of a tree's")
                .between(0.001, 1.0)
                .advanced(),
            as_of_parameter(&Request::as_of)};
}

}  // namespace

std::unique_ptr<const Operation> tree_near() {
    return declare<Request>(
        {.about =
             {"tree-near", "Which tree is this?", "Trees",
              "Tells at which tree you stand, from a receiver's place and its accuracy: every candidate with "
              "its probability, and the question that would settle it best, such as whether a tree stands "
              "at the next place of the row. Answers are taken in and weighed. Nothing is written."},
         .parameters = parameters(),
         .results = {near_shape(), question_shape()},
         .examples = {{"A telephone under the leaves.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"here", "48.13638,9.30025"},
                        {"accuracy-m", "5"}}},
                      {"The same place with an answer.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"here", "48.13638,9.30025"},
                        {"accuracy-m", "5"},
                        {"answers", "row-left=no"}}},
                      {"A surveyor's receiver, in the book's grid.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"grid", "522340.9,5331503.3"},
                        {"accuracy-m", "0.1"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
