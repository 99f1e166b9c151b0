// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/part_reading.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/place/earth.h"
#include "pipward/place/misplaced.h"
#include "pipward/place/near_words.h"
#include "pipward/place/place_text.h"
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
        {{"probability", number, "0 to 1", "Probability", "Probability that you stand there."},
         [](const SpotRow& r) { return number_cell(r.spot->probability, 3); }},
        {{"tree", text, "", "Tree", "The tree's label; unknown at a position without a record."},
         [](const SpotRow& r) { return r.tree == nullptr ? Cell{} : text_cell(r.tree->label); }},
        {{"accession", text, "", "Accession", "What the tree is."},
         [](const SpotRow& r) { return r.tree == nullptr ? Cell{} : cell(r.tree->accession); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const SpotRow& r) { return text_cell(r.address); }},
        {{"status", text, "", "Status", "Whether a tree stands there, or when and why it was removed."},
         [](const SpotRow& r) { return text_cell(r.status); }},
        {{"distance_m", number, "m", "Distance", "From the receiver's position."},
         [](const SpotRow& r) { return number_cell(math::length(r.spot->at), 1); }},
        {{"bearing_deg", number, "°", "Bearing", "From there, clockwise from true north."},
         [](const SpotRow& r) { return number_cell(math::bearing_deg(r.spot->at), 0); }},
    };
    return columns;
}

constexpr TableOf<SpotRow> near_table{
    "near",
    "Trees near by",
    "Possible positions, the most likely first.",
    near_columns,
    [] {
        return TableView{.first = {"rank", "probability", "tree", "accession", "address", "status",
                                   "distance_m", "bearing_deg"}};
    },
    [](const SpotRow& r) { return std::optional{r.at}; }};

const std::vector<ColumnOf<QuestionRow>>& question_columns() {
    static const std::vector<ColumnOf<QuestionRow>> columns{
        {{"rank", whole, "", "Rank", "1 for the question that would settle most."},
         [](const QuestionRow& r) { return whole_cell(r.rank); }},
        {{"question", text, "", "Question", "What to check; answered by yes or no."},
         [](const QuestionRow& r) { return text_cell(r.question->words); }},
        {{"if_yes", text, "", "If yes", "Most likely tree after yes."},
         [](const QuestionRow& r) { return text_cell(r.if_yes); }},
        {{"if_no", text, "", "If no", "Most likely tree after no."},
         [](const QuestionRow& r) { return text_cell(r.if_no); }},
        {{"yes", number, "0 to 1", "Yes", "Probability that the answer is yes."},
         [](const QuestionRow& r) { return number_cell(r.question->yes, 3); }},
        {{"bits", number, "bits", "Information", "Expected information of the answer."},
         [](const QuestionRow& r) { return number_cell(r.question->bits, 3); }},
        {{"key", text, "", "Key", "The question's name for the parameter answers."},
         [](const QuestionRow& r) { return text_cell(r.question->key); }},
    };
    return columns;
}

constexpr TableOf<QuestionRow> question_table{
    "near_question", "Questions to identify the tree",
    "What to check to identify the tree, the best question first.", question_columns, [] {
        return TableView{.first = {"rank", "question", "if_yes", "if_no", "yes", "key"}};
    }};

Findings check(const Request& request) {
    Findings findings;
    if (request.here.empty() == request.grid.empty()) {
        findings.push_back(about_parameter(
            "at", request.here, say("Exactly one position is needed."),
            say("Give either at, as in 48.1340,9.3010, or at-grid, as in 522341.5,5331497.")));
    }
    if (!request.here.empty() && !place::parse_place(request.here)) {
        findings.push_back(
            about_parameter("at", request.here, say("This is no location on the earth."),
                            say("Give latitude and longitude in degrees, as in 48.1340,9.3010.")));
    }
    if (!request.grid.empty() && !place::parse_grid(request.grid)) {
        findings.push_back(
            about_parameter("at-grid", request.grid, say("These are not two coordinates."),
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

// Rows around the position; all of them where no tree is near.
book::BookReading read_around(const Request& request) {
    auto part = book::read_part(request.book, [&](OrchardShelf& shelf) {
        const auto place = place::parse_place(request.here);
        const auto at =
            place ? place::ToEarth(shelf.taken().crs).back(place->at) : place::parse_grid(request.grid);
        return at && place::take_near({*at, request.accuracy, request.beside, request.gap_weight}, shelf);
    });
    if (!part) {
        return book::read_stands(request.book);
    }
    book::tell_as_warnings(part->findings);
    return std::move(*part);
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = read_around(request);
    const auto& orchard = reading.orchard;
    lent.step(0.8, say("Comparing the trees"));
    Outcome outcome;
    outcome.findings = reading.findings;
    add_findings(outcome, place::check_places(orchard));
    const auto written = place::parse_place(request.here);
    const auto place = written ? std::optional{written->at} : std::nullopt;
    const auto at = place ? place::place_on_map(*place, orchard, {"at", request.here}, outcome.findings)
                          : place::grid_on_map(orchard, {"at-grid", request.grid}, outcome.findings);
    if (!at) {
        throw Error(Trouble::input, std::move(outcome.findings));
    }
    auto near = place::near_spots(orchard, request.as_of,
                                  {*at, request.accuracy, request.beside, request.gap_weight});
    if (const auto warning =
            place::distance_warning(near, place ? place::NamedPlace{"at", request.here}
                                                : place::NamedPlace{"at-grid", request.grid})) {
        outcome.findings.push_back(*warning);
    }
    const auto answers = place::parse_answers(request.answers).value_or(place::NearAnswers{});
    for (const auto& key : place::weigh_answers(near, orchard, answers.by_key)) {
        outcome.findings.push_back(
            {Level::warning, "", "", "answers", key,
             say("This question is not asked at this position: the answer is not used."),
             say("Take keys from the table of questions of the same position.")});
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
            parameter(&Request::here, "at", "Your position",
                      "Latitude and longitude of your position, as in 48.1340,9.3010."),
            parameter(&Request::grid, "at-grid", "Your position in the book's coordinates",
                      "The same in the book's own coordinates, x and y, as in 522341.5,5331497."),
            parameter(&Request::accuracy, "accuracy-m", "Accuracy of the receiver",
                      "Radius of 68 % probability around the position, as receivers and telephones show it.")
                .in("m")
                .between(0.01, 200.0),
            parameter(&Request::answers, "answers", "Answers",
                      "Answers to the questions by their keys, as in tree-ahead=no; row-left=yes."),
            parameter(&Request::limit, "limit", "Maximum number of trees", "Maximum number of trees to show.")
                .between(1, 1000),
            parameter(&Request::beside, "trunk-m", "Distance from the trunk",
                      "Distance from the trunk at which you stand or hold the receiver, as a 68 % radius.")
                .in("m")
                .between(0.0, 20.0)
                .advanced(),
            parameter(&Request::gap_weight, "gap-weight", "Weight of gaps",
                      "Weight of a gap relative to a standing tree at the same distance.")
                .in("of a tree's weight")
                .between(0.001, 1.0)
                .advanced(),
            as_of_parameter(&Request::as_of)};
}

}  // namespace

std::unique_ptr<const Operation> tree_near() {
    return declare<Request>(
        {.about = {"tree-near", "Tree at this position", "Trees",
                   "Shows at which tree you stand, from a receiver's position and its accuracy: every "
                   "candidate with its probability, and the question with the highest information, such as "
                   "whether a tree stands at the next position of the row. Answers update the probabilities. "
                   "Nothing is written."},
         .parameters = parameters(),
         .results = {near_table.shape(), question_table.shape()},
         .examples =
             {{"A telephone under the leaves.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"at", "48.13638,9.30025"}, {"accuracy-m", "5"}}},
              {"The same place with an answer.",
               {{"book", "BOOK"},
                {"as-of", "2026-03-20"},
                {"at", "48.13638,9.30025"},
                {"accuracy-m", "5"},
                {"answers", "row-left=no"}}},
              {"A surveyor's receiver, in the book's grid.",
               {{"book", "BOOK"},
                {"as-of", "2026-03-20"},
                {"at-grid", "522340.9,5331503.3"},
                {"accuracy-m", "0.1"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
