// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/note_sheet.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note_kind.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;
using intake::NoteLine;
using intake::NoteSheet;
using intake::NoteVerdict;

struct Request {
    BookName book;
    InputFile file;
    std::optional<intake::NoteKind> kind;
    std::optional<Day> day_if_blank;
    std::optional<intake::DayFormat> day_format;
    Day as_of;
    bool write = false;
};

const std::vector<ColumnOf<NoteLine>>& row_columns() {
    static const std::vector<ColumnOf<NoteLine>> columns{
        {{"line", whole, "", "File line", "The line of the file, counted from 1."},
         [](const NoteLine& l) { return whole_cell(l.line); }},
        {{"says", text, "", "Says", "What the line notes, in words."},
         [](const NoteLine& l) { return text_cell(book::in_words(l.entry)); }},
        {{"verdict", text, "", "Verdict", "What becomes of it.", codes_of<NoteVerdict>()},
         [](const NoteLine& l) { return text_cell(to_word(l.verdict)); }},
        {{"why", text, "", "Why", "What is wrong or doubtful about it, or where the book has it."},
         [](const NoteLine& l) { return text_cell(l.why); }},
    };
    return columns;
}

constexpr TableOf<NoteLine> row_table{"note_rows", "Lines of the file",
                                      "What becomes of each line of the file.", row_columns};

std::ptrdiff_t count(const NoteSheet& sheet, NoteVerdict verdict) {
    return std::ranges::count(sheet.lines, verdict, &NoteLine::verdict);
}

NoteSheet taken(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the file"));
    auto sheet =
        intake::read_note_sheet(read_input_file(request.file.path),
                                {request.file.path, request.kind, request.day_if_blank, request.day_format});
    expect_no_errors(sheet.findings);
    lent.step(0.2, say("Reading the book"));
    lent.step(0.5, say("Comparing with the book"));
    intake::take_notes(sheet, request.book.location, request.as_of, request.write);
    return sheet;
}

Sentence counted(std::ptrdiff_t rows) {
    return rows == 1 ? say("1 row") : say("{} rows", rows);
}

Sentence summary_of(const NoteSheet& sheet, const Request& request) {
    const auto others = say("There already: {}; not filled in: {}.", count(sheet, NoteVerdict::there_already),
                            count(sheet, NoteVerdict::not_filled_in));
    const auto wrong = count(sheet, NoteVerdict::wrong);
    const auto coming = count(sheet, NoteVerdict::would_be_written);
    const auto written = count(sheet, NoteVerdict::written);
    Sentence first = say("There is nothing to write.");
    if (wrong > 0) {
        first = wrong == 1 ? say("1 line is wrong: as it is, nothing would be written.")
                           : say("{} lines are wrong: as it is, nothing would be written.", wrong);
    } else if (written > 0) {
        first = say("Written to {}: {}; note-undo takes all of it back at once.",
                    book::shown_location(request.book.location), counted(written));
    } else if (coming > 0) {
        first = say("Nothing was written; write yes would write: {}.", counted(coming));
    }
    return first + verbatim(" ") + others;
}

Outcome run(const Request& request, const Run& lent) {
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

}  // namespace

std::unique_ptr<const Operation> note_import() {
    return declare<Request>(
        {.about = {"note-import", "Import notes", "Notes",
                   "Takes a sheet that was filled in outdoors into the book, a note a line. Every line is "
                   "judged against the book with the lines before it, and shown with what would become of "
                   "it; nothing is written until you say so. Then all lines are written at once, or none "
                   "where one is wrong, and one note-undo takes them all back. A sheet read again adds "
                   "nothing twice."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::file, "notes-file", "Sheet",
                                  "The sheet as comma, semicolon or tab separated text in UTF-8, as "
                                  "note-template makes it.")
                            .named(sheet_files)
                            .required(),
                        note_kind_parameter(&Request::kind),
                        parameter(&Request::day_if_blank, "day-if-blank", "Day of lines without one",
                                  "The day of lines that have none; without it they are wrong."),
                        parameter(&Request::day_format, "day-format", "Order of the day",
                                  "How the days are written; found out from the file where not given.")
                            .advanced(),
                        as_of_parameter(&Request::as_of), write_parameter(&Request::write)},
         .results = {row_table.shape()},
         .examples = {{"Sprouts counted in the cold store, shown only.",
                       {{"book", "BOOK"}, {"notes-file", "FILE"}, {"as-of", "2026-03-24"}},
                       "lot,counted_on,sprouted\nS-25-03,2026-03-23,58\nS-25-03,2026-03-24,60\n"},
                      {"Stages of bloom in the German way, written.",
                       {{"book", "BOOK"}, {"notes-file", "FILE"}, {"write", "yes"}, {"as-of", "2026-05-16"}},
                       "tree;noted_on;bbch;open_percent;note\nLO-04-07;12.05.2026;61;7,5;\n"
                       "LO-04-08;13.05.2026;;;\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
