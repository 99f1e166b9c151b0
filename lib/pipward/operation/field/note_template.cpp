// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/cells.h"
#include "pipward/intake/note_explained.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/field/detail/note.h"
#include "pipward/operation/field/detail/note_kind.h"
#include "pipward/operation/field/note_prefill.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/tree_reading.h"
#include "pipward/record/table_text.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    intake::NoteKind kind = intake::NoteKind::bloom;
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
        {{"holds", text, "", "What it holds", "What to write there."},
         [](const SheetColumn& c) { return text_cell(intake::holds(*c.column)); }},
        {{"needed", yes_no, "", "Needed", "Whether a line that is filled in must have it."},
         [](const SheetColumn& c) { return Cell{c.column->required}; }},
        {{"unit", text, "", "Unit", "The unit of its numbers."},
         [](const SheetColumn& c) {
             return text_cell(c.column->unit.empty() ? Sentence{} : filled(c.column->unit, {}));
         }},
        {{"allowed", text, "", "Allowed", "From what to what, where that is limited."},
         [](const SheetColumn& c) { return text_cell(intake::allowed_in(*c.column)); }},
        {{"example", text, "", "Example", "How it may look."},
         [](const SheetColumn& c) { return text_cell(c.example); }},
    };
    return columns;
}

TableShape sheet_shape() {
    return shape_of<SheetColumn>(
        {"note_columns", "Columns of the sheet", "What each column of the sheet holds.", false, {}},
        sheet_columns());
}

template <class Rows, class Member>
std::string last_name(const Rows& rows, Member member) {
    return rows.empty() ? std::string{} : rows.back().*member;
}

std::string name_in(const Orchard& orchard, std::string_view table) {
    if (table == "tree") {
        return last_name(orchard.trees, &Tree::label);
    }
    if (table == "accession") {
        return last_name(orchard.accessions, &Accession::name);
    }
    if (table == "cross_goal") {
        return last_name(orchard.goals, &CrossGoal::code);
    }
    if (table == "pollen_lot") {
        return last_name(orchard.pollen_lots, &PollenLot::code);
    }
    if (table == "pollination") {
        return last_name(orchard.pollinations, &Pollination::tag);
    }
    return last_name(orchard.seed_lots, &SeedLot::code);
}

std::string example_of(const book::BookColumn& column, const book::BookTable& table, const Orchard& orchard,
                       Day as_of) {
    if (!column.references.empty()) {
        return name_in(orchard, column.references.front().table);
    }
    if (column.name == "trait") {
        return last_name(orchard.trait_scores, &TraitScore::trait);
    }
    if (!table.key.empty() && table.key.front() == column.name) {
        return name_in(orchard, table.name);
    }
    switch (column.type) {
        case day:
            return to_iso(as_of);
        case whole:
            return column.domain == "bbch_stage" ? "65" : column.domain == "count" ? "40" : "1";
        case number:
            return column.name == "cold_c" ? "3" : "7.5";
        default:
            return {};
    }
}

bool names_a_place(intake::NoteKind kind) {
    return kind == intake::NoteKind::bloom || kind == intake::NoteKind::pollination ||
           kind == intake::NoteKind::pick || kind == intake::NoteKind::score;
}

std::string cell_of(const KnownCells& line, std::string_view column) {
    const auto cell = line.find(column);
    return cell == line.end() ? std::string{} : intake::harmless(cell->second);
}

Column heading(std::string_view name) {
    return {.name = std::string(name), .type = text, .unit = {}, .label = {}, .description = {}};
}

std::string sheet_of(const Request& request, const std::vector<KnownCells>& lines) {
    Table sheet;
    for (const auto& column : intake::table_of(request.kind).columns) {
        sheet.shape.columns.push_back(heading(column.name));
    }
    if (!lines.empty() && names_a_place(request.kind)) {
        sheet.shape.columns.push_back(heading(intake::where_column));
    }
    for (const auto& line : lines) {
        auto& row = sheet.rows.emplace_back();
        for (const auto& column : sheet.shape.columns) {
            row.cells.push_back(text_cell(cell_of(line, column.name)));
        }
    }
    return to_csv(sheet);
}

Sentence summary_of(const std::string& sheet, std::size_t lines) {
    return lines == 0   ? say("{} has no lines yet.", sheet)
           : lines == 1 ? say("{} has 1 line to fill in.", sheet)
                        : say("{} has {} lines to fill in.", sheet, lines);
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto book = book::read_book(request.book.location);
    const auto lines = request.prefill
                           ? likely_lines(request.kind, book.orchard, request.as_of, request.trait)
                           : std::vector<KnownCells>{};
    const auto stem = "notes-" + std::string(to_word(request.kind));
    std::vector<SheetColumn> columns;
    for (const auto& column : intake::table_of(request.kind).columns) {
        columns.push_back(
            {&column, example_of(column, intake::table_of(request.kind), book.orchard, request.as_of)});
    }
    Outcome outcome;
    outcome.tables = {table_of<SheetColumn>(sheet_shape(), columns, sheet_columns())};
    outcome.files = {{stem + ".csv", "text/csv", sheet_of(request, lines)},
                     {stem + "-how.txt", "text/plain",
                      intake::explanations_of(intake::table_of(request.kind), stem + ".csv", lent.wording)}};
    outcome.findings = std::move(book.findings);
    outcome.summary = summary_of(stem + ".csv", lines.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> note_template() {
    return declare<Request>(
        {.about = {"note-template", "Sheet for notes", "Notes",
                   "Makes a sheet to be filled in outdoors or at the bench, a note a line, with the lines "
                   "that are likely: trees in the order of the walk, tags whose fruit is awaited, lots with "
                   "seed left. A second file explains its columns; note-import takes the filled sheet in."},
         .parameters = {book_parameter(&Request::book), note_kind_parameter(&Request::kind).required(),
                        parameter(&Request::prefill, "prefill", "Fill in beforehand",
                                  "Whether the sheet has lines for what is likely to be noted."),
                        trait_parameter(&Request::trait), as_of_parameter(&Request::as_of)},
         .results = {sheet_shape()},
         .examples = {{"Scores of the seedlings' taste.",
                       {{"book", "BOOK"}, {"kind", "score"}, {"trait", "taste"}, {"as-of", "2026-09-20"}}},
                      {"An empty sheet for stages of bloom.",
                       {{"book", "BOOK"}, {"kind", "bloom"}, {"prefill", "no"}, {"as-of", "2026-04-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
