// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <set>

#include "pipward/operation/column_of.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/input_file.h"
#include "pipward/operation/list.h"
#include "pipward/operation/note_judging.h"

namespace pipward::operation {

std::span<const Word<weather::DayFormat>> words(weather::DayFormat);

namespace {

using enum CellType;

struct Request {
    BookName book;
    InputFile file;
    std::optional<NoteKind> kind;
    std::optional<Day> day_if_blank;
    std::optional<weather::DayFormat> day_format;
    Day as_of;
    bool write = false;
};

constexpr std::array verdict_words{
    std::pair{Verdict::would_be_written, std::pair{"would_be_written", "would be written"}},
    std::pair{Verdict::written, std::pair{"written", "written"}},
    std::pair{Verdict::there_already, std::pair{"there_already", "there already"}},
    std::pair{Verdict::not_filled_in, std::pair{"not_filled_in", "not filled in"}},
    std::pair{Verdict::wrong, std::pair{"wrong", "wrong"}}};

std::vector<CodeWord> verdicts_as_codes() {
    std::vector<CodeWord> codes;
    for (const auto& [verdict, words] : verdict_words) {
        codes.push_back({words.first, words.second});
    }
    return codes;
}

std::string code_of(Verdict verdict) {
    return std::ranges::find(verdict_words, verdict, [](const auto& entry) { return entry.first; })
        ->second.first;
}

const std::vector<ColumnOf<JudgedLine>>& row_columns() {
    static const std::vector<ColumnOf<JudgedLine>> columns{
        {{"line", whole, "", "File line", "The line of the file, counted from 1."},
         [](const JudgedLine& l) { return whole_cell(l.line.line); }},
        {{"says", text, "", "Says", "What the line notes, in words."},
         [](const JudgedLine& l) { return text_cell(book::in_words(l.line.entry)); }},
        {{"verdict", text, "", "Verdict", "What becomes of it.", verdicts_as_codes()},
         [](const JudgedLine& l) { return text_cell(code_of(l.verdict)); }},
        {{"why", text, "", "Why", "What is wrong or doubtful about it, or where the book has it."},
         [](const JudgedLine& l) { return text_cell(l.why); }},
    };
    return columns;
}

TableShape row_shape() {
    return shape_of<JudgedLine>(
        {"note_rows", "Lines of the file", "What becomes of each line of the file.", false, {}},
        row_columns());
}

std::ptrdiff_t count(const SheetImport& import, Verdict verdict) {
    return std::ranges::count(import.lines, verdict, &JudgedLine::verdict);
}

void judge_and_write(SheetImport& import, const Request& request, const book::BookReading& book) {
    const auto entries = entries_of(import);
    if (!request.write || !is_without_errors(import)) {
        take_findings(import, book::check_entries(book, entries, request.as_of), request.file.path);
        return;
    }
    const auto added = book::add_entries(request.book.location, book, entries, request.as_of);
    take_findings(import, added.findings, request.file.path);
    if (!added.rows.empty()) {
        std::ranges::for_each(import.lines, [](JudgedLine& judged) {
            if (judged.verdict == Verdict::would_be_written) {
                judged.verdict = Verdict::written;
            }
        });
    }
}

book::BookReading read_without_weather(const std::string& location) {
    std::set<std::string> tables;
    for (const auto& table : book::book_tables()) {
        tables.emplace(table.name);
    }
    tables.erase("weather_day");
    return book::read_tables(location, tables);
}

SheetImport import_of(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the file"));
    auto file = read_note_file(read_input_file(request.file.path),
                               {request.file.path, request.kind, request.day_if_blank, request.day_format});
    if (has_errors(file.findings)) {
        throw Error(Trouble::input, std::move(file.findings));
    }
    lent.step(0.2, say("Reading the book"));
    const std::string table(table_of(file.kind).name);
    const auto book = read_without_weather(request.book.location);
    SheetImport import{std::move(file),
                       KnownRows(table, book::rows_of_entries(request.book.location, table))};
    import.findings = import.file.findings;
    pass_over(import);
    tell_repeated(import, request.file.path);
    tell_strange_days(import, request.file.path);
    lent.step(0.5, say("Comparing with the book"));
    judge_and_write(import, request, book);
    return import;
}

Sentence counted(std::ptrdiff_t rows) {
    return rows == 1 ? say("1 row") : say("{} rows", rows);
}

Sentence summary_of(const SheetImport& import, const Request& request) {
    const auto others = say("There already: {}; not filled in: {}.", count(import, Verdict::there_already),
                            count(import, Verdict::not_filled_in));
    const auto wrong = count(import, Verdict::wrong);
    const auto coming = count(import, Verdict::would_be_written);
    const auto written = count(import, Verdict::written);
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
    auto import = import_of(request, lent);
    if (request.write && has_errors(import.findings)) {
        throw Error(Trouble::input, std::move(import.findings));
    }
    Outcome outcome;
    outcome.tables = {table_of<JudgedLine>(row_shape(), import.lines, row_columns())};
    outcome.findings = std::move(import.findings);
    outcome.summary = summary_of(import, request);
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
                            .named("*.csv")
                            .required(),
                        note_kind_parameter(&Request::kind),
                        parameter(&Request::day_if_blank, "day-if-blank", "Day of lines without one",
                                  "The day of lines that have none; without it they are wrong."),
                        parameter(&Request::day_format, "day-format", "Order of the day",
                                  "How the days are written; found out from the file where not given.")
                            .advanced(),
                        as_of_parameter(&Request::as_of), write_parameter(&Request::write)},
         .results = {row_shape()},
         .examples = {{"Sprouts counted in the cold store, shown only.",
                       {{"book", "BOOK"}, {"notes-file", "FILE"}, {"as-of", "2026-03-24"}},
                       "lot,counted_on,sprouted\nS-25-03,2026-03-23,58\nS-25-03,2026-03-24,60\n"},
                      {"Stages of bloom in the German way, written.",
                       {{"book", "BOOK"}, {"notes-file", "FILE"}, {"write", "yes"}, {"as-of", "2026-05-16"}},
                       "tree;noted_on;bbch;open_percent;note\nLO-04-07;12.05.2026;61;7,5;\n"
                       "LO-04-08;13.05.2026;;;\n"}},
         .run = run});
}

}  // namespace pipward::operation
