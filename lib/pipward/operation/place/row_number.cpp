// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/new_rows.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/row_tables.h"
#include "pipward/operation/place/detail/user_places.h"
#include "pipward/paper/page_svg.h"
#include "pipward/paper/reading_page.h"
#include "pipward/place/number_trees.h"
#include "pipward/record/reader_days.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {

namespace {

using enum CellType;

struct Request : PlacesRequest, place::NumberingWish {
    BookName book;
    Day as_of;
    bool keep = true;
    bool write = false;
};

const std::vector<ColumnOf<place::TreeDecision>>& decision_columns() {
    static const std::vector<ColumnOf<place::TreeDecision>> columns{
        {{"tree", text, "", "Tree", "The tree's label, or the point's name in its layer."},
         [](const place::TreeDecision& d) { return text_cell(d.label); }},
        {{"block", text, "", "Block", "The block that was numbered."},
         [](const place::TreeDecision& d) { return text_cell(d.block); }},
        {{"row", text, "", "Tree row", "The likeliest row, also where it is left open."},
         [](const place::TreeDecision& d) { return text_cell(d.row); }},
        {{"position", whole, "", "Position", "The likeliest position in the row."},
         [](const place::TreeDecision& d) { return whole_cell(d.position); }},
        {{"decided", yes_no, "", "Decided", "Whether that is certain enough to be numbered."},
         [](const place::TreeDecision& d) { return Cell{d.decided()}; }},
        {{"confidence", number, "0 to 1", "Confidence", "Probability that row and position are right."},
         [](const place::TreeDecision& d) { return number_cell(d.confidence, 4); }},
        {{"row_offset_m", number, "m", "Offset from the row", "Offset of the point from the row's line."},
         [](const place::TreeDecision& d) { return d.position ? number_cell(d.off_row, 2) : Cell{}; }},
        {{"position_offset_m", number, "m", "Offset from the position",
          "Offset from the position along the row, positive in the direction of numbering."},
         [](const place::TreeDecision& d) { return d.position ? number_cell(d.off_position, 2) : Cell{}; }},
        {{"reason", text, "", "Reason", "Reason of the doubt; empty where decided."},
         [](const place::TreeDecision& d) { return text_cell(d.doubt); }},
    };
    return columns;
}

constexpr TableOf<place::TreeDecision> tree_number_rows{
    "tree_number",
    "Tree numbers",
    "Row and position of each tree as found from its location on the map, with their probability.",
    decision_columns,
    [] {
        return TableView{.first = {"tree", "row", "position", "decided", "confidence", "row_offset_m",
                                   "position_offset_m"},
                         .below = {"reason"},
                         .once = {"block"}};
    },
    [](const place::TreeDecision& d) { return d.at; }};

/// One answer, spread out.
struct AnswerRow {
    std::string block;
    Sentence question;
    Sentence answer;
    std::string option;
    place::TreeDecision tree;  // one whose number the answers differ in; without a position for none
    std::ptrdiff_t decided = 0;
};

const std::vector<ColumnOf<AnswerRow>>& answer_columns() {
    static const std::vector<ColumnOf<AnswerRow>> columns{
        {{"block", text, "", "Block", "The block that was numbered."},
         [](const AnswerRow& a) { return text_cell(a.block); }},
        {{"question", text, "", "Question", "The question whose answer settles most."},
         [](const AnswerRow& a) { return text_cell(a.question); }},
        {{"answer", text, "", "Answer", "One of its answers."},
         [](const AnswerRow& a) { return text_cell(a.answer); }},
        {{"option", text, "", "Option", "The option that gives this answer."},
         [](const AnswerRow& a) { return text_cell(a.option); }},
        {{"decided", whole, "", "Decided", "Trees that could be numbered with it."},
         [](const AnswerRow& a) { return Cell{static_cast<std::int64_t>(a.decided)}; }},
        {{"tree", text, "", "Tree", "A tree whose number the answers differ in."},
         [](const AnswerRow& a) { return text_cell(a.tree.label); }},
        {{"row", text, "", "Tree row", "The row of this tree, were it so."},
         [](const AnswerRow& a) { return text_cell(a.tree.row); }},
        {{"position", whole, "", "Position", "The position of this tree, were it so."},
         [](const AnswerRow& a) { return whole_cell(a.tree.position); }},
    };
    return columns;
}

constexpr TableOf<AnswerRow> answer_rows{
    "row_question", "Question about rows",
    "What should be asked where two readings of the rows are likely, and the options that answer it.",
    answer_columns, [] {
        return TableView{.first = {"answer", "option", "decided", "tree", "row", "position"},
                         .once = {"block", "question"}};
    }};

std::vector<AnswerRow> answers_of(const Request& request, const place::Numbering& numbering) {
    std::vector<AnswerRow> rows;
    if (!numbering.question) {
        return rows;
    }
    for (const auto& answer : numbering.question->answers) {
        AnswerRow row{request.block,
                      numbering.question->words,
                      answer.words,
                      fmt::format("--{} {}", answer.option, answer.value),
                      {},
                      0};
        if (numbering.question->tree) {
            row.tree = answer.decisions[*numbering.question->tree];
        }
        row.decided = std::ranges::count_if(answer.decisions, &place::TreeDecision::decided);
        rows.push_back(std::move(row));
    }
    return rows;
}

/// Both answers as they would number the trees.
MadeFile picture_of(const place::NumberingQuestion& question, const Run& lent) {
    std::vector<paper::ReadingPanel> panels;
    for (const auto& answer : question.answers) {
        paper::ReadingPanel panel{answer.words.in(lent.wording), {}};
        for (const auto& decision : answer.decisions) {
            if (decision.at) {
                panel.trees.push_back({decision.at->x, decision.at->y, decision.row,
                                       decision.decided() ? decision.position : std::nullopt});
            }
        }
        panels.push_back(std::move(panel));
    }
    const auto words = question.words.in(lent.wording);
    return {"row-question.svg", "image/svg+xml", paper::page_svg(paper::reading_page(words, panels), words)};
}

}  // namespace

ResultShape tree_number_shape() {
    return tree_number_rows.shape();
}

namespace {

/// Trees get their numbers; what is open, or would share a position with a tree of the book, is told.
book::BookChange change_of(const Request& request, const place::Numbering& numbering, const Orchard& orchard,
                           Findings& findings) {
    book::BookChange change;
    if (request.write) {
        auto rows = place::new_rows(request, numbering, orchard);
        if (!rows.empty()) {
            change.added.push_back(book::rows_to_add(rows));
        }
        for (const auto& decision : numbering.decisions) {
            if (!decision.decided()) {
                findings.push_back(place::left_open(decision));
            } else {
                change.edits.push_back(book::placed(orchard.trees[*decision.tree], decision.block,
                                                    decision.row, decision.position));
            }
        }
    }
    return change;
}

Sentence done_words(const Request& request, std::ptrdiff_t decided, std::ptrdiff_t all, int rows) {
    const auto open = all - decided;
    if (request.write) {
        return say("{} of {} trees in {} rows were numbered in the book, {} left open.", decided, all, rows,
                   open);
    }
    return request.keep
               ? say("{} of {} trees in {} rows can be numbered; the trees were left as they are, {} left "
                     "open.",
                     decided, all, rows, open)
               : say("{} of {} trees in {} rows can be numbered; nothing was written, {} left open.", decided,
                     all, rows, open);
}

Sentence summary_of(const Request& request, const place::Numbering& numbering) {
    const auto decided = std::ranges::count_if(numbering.decisions, &place::TreeDecision::decided);
    const auto all = static_cast<std::ptrdiff_t>(numbering.decisions.size());
    const auto done = done_words(request, decided, all, numbering.rows);
    auto words = numbering.understood.empty() ? done : done + verbatim(" ") + numbering.understood;
    return numbering.question ? words + verbatim(" ") + numbering.question->words : words;
}

bool is_of_layer(const Request& request) {
    return request.file || !request.points.empty();
}

place::TreeCloud cloud_of(const Request& request, const Orchard& orchard, Findings& findings) {
    return is_of_layer(request)
               ? place::cloud_of_layer(intake::read_places(given_places(request), orchard.crs,
                                                           place::known_places(orchard), findings),
                                       orchard)
               : place::cloud_of_trees(request.block, orchard, request.as_of, findings);
}

Outcome give_numbers(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto reading = book::read_trees(request.book);
    Outcome outcome;
    outcome.findings = std::move(reading.findings);
    lent.step(0.3, say("Numbering the trees"));
    place::expect_block(request, reading.orchard);
    const auto numbering = place::number_trees(cloud_of(request, reading.orchard, outcome.findings), request,
                                               reading.orchard, request.as_of, outcome.findings);
    outcome.tables = {tree_number_rows.of(numbering.decisions)};
    outcome.tables.push_back(answer_rows.of(answers_of(request, numbering)));
    if (numbering.question) {
        outcome.files.push_back(picture_of(*numbering.question, lent));
    }
    auto change = change_of(request, numbering, reading.orchard, outcome.findings);
    if (request.keep || request.write) {
        lent.step(0.8, say("Writing the numbers"));
        if (request.keep) {
            change.results = {spoken(outcome.tables.front(), with_stored_days(lent.wording))};
        }
        book::apply_change(request.book, change);
    }
    outcome.crs = reading.orchard.crs;
    outcome.summary = summary_of(request, numbering);
    lent.step(1.0, say("Done"));
    return outcome;
}

Outcome run(const Request& request, const Run& lent) {
    return in_one_change_if(request.keep || request.write, request, lent, give_numbers);
}

Findings check(const Request& request) {
    auto findings = place::check_numbering(request);
    if (request.write && is_of_layer(request)) {
        findings.push_back(about_parameter("write", "yes",
                                           say("Only trees of the book can be given their numbers."),
                                           say("Leave the file and the points out, or do not write.")));
    }
    return findings;
}

std::vector<Bound<Request>> parameters() {
    return {
        book_parameter(&Request::book),
        Bound<Request>(
            parameter(&place::NumberingWish::block, "block", "Block", "The block of the rows.").required()),
        parameter(&place::NumberingWish::spacing, "spacing", "Spacing",
                  "From one position to the next, over the ground.")
            .in("m")
            .between(0.3, 20.0),
        parameter(&place::NumberingWish::row_distance, "row-distance", "Row distance",
                  "From row to row, over the ground.")
            .in("m")
            .between(1.0, 30.0),
        parameter(&place::NumberingWish::bearing, "bearing", "Bearing",
                  "Roughly, the direction in which positions are counted, clockwise from north; the rows' "
                  "northern one where not given.")
            .in("°")
            .between(0.0, 360.0),
        parameter(&place::NumberingWish::rows_to, "rows-to", "Direction of row numbers",
                  "Side to which the row numbers increase, seen in the direction of the positions."),
        parameter(&place::NumberingWish::row, "row", "Row",
                  "The name of the row, or of the first one, from which the others count on."),
        parameter(&place::NumberingWish::first_position, "first-position", "First position",
                  "The number of the first position.")
            .between(0, 99999),
        parameter(&place::NumberingWish::begin, "begin", "Rows begin", "Where the counting of a row begins."),
        parameter(&place::NumberingWish::empty_rows, "empty-rows", "Empty rows",
                  "Whether a row without trees between others has a number."),
        parameter(&place::NumberingWish::confidence, "min-probability", "Least probability",
                  "Least probability of a number; below it the tree is left open.")
            .in("0 to 1")
            .between(0.5, 0.99999),
        places_file_parameter(),
        places_layer_parameter(),
        places_crs_parameter(),
        as_of_parameter(&Request::as_of),
        keep_parameter(&Request::keep),
        write_parameter(&Request::write),
    };
}

}  // namespace

std::unique_ptr<const Operation> row_number() {
    return declare<Request>(
        {.about =
             {"row-number", "Number trees", "Trees",
              "Finds rows and positions of trees from their locations on the map, however roughly measured: "
              "the trees of the book that have no row or position yet, or the points of a layer. Where the "
              "block has rows in the book, the trees are matched with them; otherwise the rows are detected "
              "from the trees; spacing, row distance and bearing, where given, need only be approximate. "
              "Gaps stay gaps. Rows may bend, fan out, be staggered and stand unevenly apart. Where two "
              "readings are likely what they differ in is left open, and one question is asked, with a "
              "picture of both answers; the answer is an option. Each decision comes with its distance and "
              "its probability; doubtful trees are listed and left open, never forced. With write the trees "
              "get their numbers; trees that have one are never changed."},
         .parameters = parameters(),
         .results = {tree_number_shape(), answer_rows.shape()},
         .examples = {{"Points of a receiver matched with the rows of a block.",
                       {{"book", "BOOK"},
                        {"block", "Lower"},
                        {"layer-file", "FILE"},
                        {"keep", "no"},
                        {"as-of", "2026-03-20"}},
                       "name,x,y\na,522400.3,5331200.2\nb,522403.2,5331201.1\nc,522406.9,5331201.7\n"},
                      {"The book's trees without a number.",
                       {{"book", "BOOK"}, {"block", "Upper"}, {"write", "yes"}, {"as-of", "2026-03-20"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
