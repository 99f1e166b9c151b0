// SPDX-License-Identifier: MIT
#include "pipward/book/book.h"
#include "pipward/intake/record_explained.h"
#include "pipward/intake/record_prefill.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_kind.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    intake::RecordKind kind = intake::RecordKind::bloom;
    bool prefill = true;
    std::string trait;
    Day as_of;
};

struct SheetColumn {
    const book::BookColumn* column = nullptr;
    std::string example{};
};

const std::vector<ColumnOf<SheetColumn>>& sheet_columns() {
    static const std::vector<ColumnOf<SheetColumn>> columns{
        {{"field", text, "", "Column", "The heading in the sheet."},
         [](const SheetColumn& c) { return text_cell(c.column->name); }},
        {{"holds", text, "", "Content", "What to write there."},
         [](const SheetColumn& c) { return text_cell(intake::holds(*c.column)); }},
        {{"needed", yes_no, "", "Needed", "Whether a line that is filled in must have it."},
         [](const SheetColumn& c) { return Cell{c.column->required}; }},
        {{"unit", text, "", "Unit", "The unit of its numbers."},
         [](const SheetColumn& c) {
             return text_cell(c.column->unit.empty() ? Sentence{} : filled(c.column->unit, {}));
         }},
        {{"allowed", text, "", "Allowed", "From what to what, where that is limited."},
         [](const SheetColumn& c) { return text_cell(intake::allowed_in(*c.column)); }},
        {{"example", text, "", "Example", "An example."},
         [](const SheetColumn& c) { return text_cell(c.example); }},
    };
    return columns;
}

constexpr TableOf<SheetColumn> sheet_table{
    "record_columns", "Columns of the sheet", "Content of each column of the sheet.", sheet_columns, [] {
        return TableView{.first = {"field", "needed", "example", "allowed", "unit"}, .below = {"holds"}};
    }};

Sentence summary_of(const std::string& sheet, std::size_t lines) {
    return lines == 0   ? say("{} has no lines yet.", sheet)
           : lines == 1 ? say("{} has 1 line to fill in.", sheet)
                        : say("{} has {} lines to fill in.", sheet, lines);
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto book = book::read_book(request.book);
    const auto lines = request.prefill
                           ? intake::likely_lines(request.kind, book.orchard, request.as_of, request.trait)
                           : std::vector<intake::KnownCells>{};
    const auto stem = "records-" + std::string(to_word(request.kind));
    std::vector<SheetColumn> columns;
    for (const auto& column : intake::table_of(request.kind).columns) {
        columns.push_back({&column, intake::example_of(column, intake::table_of(request.kind), book.orchard,
                                                       request.as_of)});
    }
    Outcome outcome;
    outcome.tables = {sheet_table.of(columns)};
    outcome.files = {{stem + ".csv", "text/csv", intake::note_sheet_text(request.kind, lines)},
                     {stem + "-how.txt", "text/plain",
                      intake::explanations_of(intake::table_of(request.kind), stem + ".csv", lent.wording)}};
    outcome.findings = std::move(book.findings);
    outcome.summary = summary_of(stem + ".csv", lines.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> record_template() {
    return declare<Request>(
        {.about = {"record-template", "Recording sheet", "Records",
                   "Makes a sheet to be filled in outdoors or indoors, one record per line, with the "
                   "expected lines: trees in walking order, tags whose fruit is awaited, lots with seed "
                   "left. A second file explains its columns; record-import imports the filled sheet."},
         .parameters = {book_parameter(&Request::book), record_kind_parameter(&Request::kind).required(),
                        parameter(&Request::prefill, "prefill", "Fill in beforehand",
                                  "Whether the sheet has lines for the expected records."),
                        parameter(&Request::trait, "trait", "Trait", "What was scored."),
                        as_of_parameter(&Request::as_of)},
         .results = {sheet_table.shape()},
         .examples = {{"Scores of the seedlings' taste.",
                       {{"book", "BOOK"}, {"kind", "score"}, {"trait", "taste"}, {"as-of", "2026-09-20"}}},
                      {"An empty sheet for stages of bloom.",
                       {{"book", "BOOK"}, {"kind", "bloom"}, {"prefill", "no"}, {"as-of", "2026-04-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
