// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/record_sheet.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_kind.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;
using intake::RecordLine;
using intake::RecordSheet;
using intake::RecordVerdict;

struct Request {
    BookName book;
    InputFile file;
    std::optional<intake::RecordKind> kind;
    std::optional<Day> date_if_blank;
    std::optional<intake::DateFormat> date_format;
    bool complete = false;
    Day as_of;
    bool write = false;
};

const std::vector<ColumnOf<RecordLine>>& row_columns() {
    static const std::vector<ColumnOf<RecordLine>> columns{
        {{"line", whole, "", "File line", "The line of the file, counted from 1."},
         [](const RecordLine& l) { return whole_cell(l.line); }},
        {{"record", text, "", "Text", "The record in words."},
         [](const RecordLine& l) { return text_cell(book::in_words(l.entry)); }},
        {{"verdict", text, "", "Verdict", "What happens to it.", codes_of<RecordVerdict>()},
         [](const RecordLine& l) { return text_cell(to_word(l.verdict)); }},
        {{"why", text, "", "Why", "What is wrong or doubtful about it, or where the book has it."},
         [](const RecordLine& l) { return text_cell(l.why); }},
    };
    return columns;
}

constexpr TableOf<RecordLine> row_table{
    "record_rows", "Lines of the file", "What happens to each line of the file.", row_columns, [] {
        return TableView{.first = {"line", "verdict", "record"}, .below = {"why"}};
    }};

std::ptrdiff_t count(const RecordSheet& sheet, RecordVerdict verdict) {
    return std::ranges::count(sheet.lines, verdict, &RecordLine::verdict);
}

RecordSheet taken(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the file"));
    auto sheet = intake::read_record_sheet(
        read_input_file(request.file.path),
        {request.file.path, request.kind, request.date_if_blank, request.date_format, request.complete});
    expect_no_errors(sheet.findings);
    lent.step(0.2, say("Reading the book"));
    lent.step(0.5, say("Comparing with the book"));
    intake::take_records(sheet, request.book, request.as_of, request.write);
    return sheet;
}

Sentence counted(std::ptrdiff_t rows) {
    return rows == 1 ? say("1 row") : say("{} rows", rows);
}

Sentence summary_of(const RecordSheet& sheet, const Request& request) {
    const auto others =
        say("There already: {}; not filled in: {}.", count(sheet, RecordVerdict::there_already),
            count(sheet, RecordVerdict::not_filled_in));
    const auto wrong = count(sheet, RecordVerdict::wrong);
    const auto coming = count(sheet, RecordVerdict::would_be_written);
    const auto written = count(sheet, RecordVerdict::written);
    Sentence first = say("There is nothing to write.");
    if (wrong > 0) {
        first = wrong == 1 ? say("1 line has an error: nothing would be written.")
                           : say("{} lines have errors: nothing would be written.", wrong);
    } else if (written > 0) {
        first = say("Written to {}: {}; record-undo reverts all of it at once.",
                    book::shown_location(request.book.location), counted(written));
    } else if (coming > 0) {
        first = say("Nothing was written; with write these would be written: {}.", counted(coming));
    }
    return first + verbatim(" ") + others;
}

Outcome take_in(const Request& request, const Run& lent) {
    auto sheet = taken(request, lent);
    if (request.write && has_errors(sheet.findings)) {
        throw Error(Trouble::input, std::move(sheet.findings));
    }
    Outcome outcome;
    outcome.tables = {row_table.of(sheet.lines)};
    outcome.findings = std::move(sheet.findings);
    outcome.summary = summary_of(sheet, request);
    lent.step(1.0, say("Done"));
    return outcome;
}

Outcome run(const Request& request, const Run& lent) {
    return in_one_change_if(request.write, request, lent, take_in);
}

}  // namespace

std::unique_ptr<const Operation> record_import() {
    return declare<Request>(
        {.about = {"record-import", "Import records", "Records",
                   "Imports a filled recording sheet into the book, one record per line. Every line is "
                   "checked against the book with the lines before it, and shown with what would happen to "
                   "it; with write all lines are written at once, or none where one has an error, and one "
                   "record-undo reverts them all. A sheet read again adds nothing twice."},
         .parameters =
             {book_parameter(&Request::book),
              parameter(
                  &Request::file, "records-file", "Sheet",
                  "The sheet as comma, semicolon or tab separated text in UTF-8, as made by record-template.")
                  .named(sheet_files)
                  .required(),
              record_kind_parameter(&Request::kind),
              parameter(&Request::date_if_blank, "date-if-blank", "Date of lines without one",
                        "Date of lines that have none; without it they are errors."),
              parameter(&Request::date_format, "date-format", "Date format",
                        "Date format of the file; recognised from the file where not given.")
                  .advanced(),
              parameter(&Request::complete, "complete", "Complete rows",
                        "Whether lines complete rows that the book has, by their names; only empty cells are "
                        "filled.")
                  .advanced(),
              as_of_parameter(&Request::as_of), write_parameter(&Request::write)},
         .results = {row_table.shape()},
         .examples =
             {{"Germination counted in the store, shown only.",
               {{"book", "BOOK"}, {"records-file", "FILE"}, {"as-of", "2026-03-24"}},
               "lot,counted_on,germinated\nS-25-03,2026-03-23,68\nS-25-03,2026-03-24,70\n"},
              {"Stages of bloom in the German way, written.",
               {{"book", "BOOK"}, {"records-file", "FILE"}, {"write", "yes"}, {"as-of", "2026-05-16"}},
               "tree;observed_on;bbch;open_percent;remark\nLO-04-07;12.05.2026;61;7,5;\nLO-04-08;13.05.2026;;"
               ";\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
