// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/place/near_words.h"
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
    MapPoint at{};
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

constexpr TableOf<SpotRow> near_table{"near", "Trees near by", "Where one may stand, the likeliest first.",
                                      near_columns, [](const SpotRow& r) { return std::optional{r.at}; }};

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

constexpr TableOf<QuestionRow> question_table{
    "near_question", "Questions that settle it",
    "What to look for to know which tree it is, the best question first.", question_columns};

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
    if (!place::parse_answers(request.answers)) {
        findings.push_back(about_parameter("answers", request.answers,
                                           say("An answer is neither yes nor no."),
                                           say("Write key=yes or key=no, with semicolons between.")));
    }
    return findings;
}

std::vector<SpotRow> spot_rows(const place::NearSpots& near, const Orchard& orchard,
                               const place::MetrePlane& plane, const Request& request) {
    constexpr double least = 0.0005;
    std::vector<SpotRow> rows;
    for (const auto& spot : near.spots) {
        const int rank = static_cast<int>(rows.size()) + 1;
        if (rank > request.limit || spot.probability < least) {
            break;
        }
        const auto* tree = spot.tree ? &orchard.trees[*spot.tree] : nullptr;
        rows.push_back({rank, &spot, tree, place::address_at(spot, orchard),
                        tree == nullptr ? say("no tree on record") : place::standing_of(*tree, request.as_of),
                        tree == nullptr ? plane.back(spot.at) : *tree->at});
    }
    return rows;
}

std::vector<QuestionRow> question_rows(const place::NearSpots& near,
                                       const std::vector<place::NearQuestion>& questions,
                                       const Orchard& orchard) {
    constexpr std::size_t most = 5;
    std::vector<QuestionRow> rows;
    for (const auto& question : std::span(questions).first(std::min(most, questions.size()))) {
        rows.push_back({static_cast<int>(rows.size()) + 1, &question,
                        place::after_words(near, question.if_yes, orchard),
                        place::after_words(near, question.if_no, orchard)});
    }
    return rows;
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_stands(request.book.location);
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
    if (const auto warning = place::distance_warning(near, place ? place::NamedPlace{"here", request.here}
                                                                 : place::NamedPlace{"grid", request.grid})) {
        outcome.findings.push_back(*warning);
    }
    const auto answers = place::parse_answers(request.answers).value_or(place::NearAnswers{});
    for (const auto& key : place::weigh_answers(near, orchard, answers.by_key)) {
        outcome.findings.push_back(
            {Level::warning, "", "", "answers", key,
             say("This question is not asked at this place: the answer counts for nothing."),
             say("Take keys from the table of questions of the same place.")});
    }
    const auto questions = questions_about(near, orchard, answers.keys);
    outcome.tables = {near_table.of(spot_rows(near, orchard, place::MetrePlane(orchard.crs, *at), request)),
                      question_table.of(question_rows(near, questions, orchard))};
    outcome.crs = orchard.crs;
    outcome.summary = place::near_summary(near, questions, orchard);
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
         .results = {near_table.shape(), question_table.shape()},
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
