// SPDX-License-Identifier: MIT
// A sheet of notes against the book: what becomes of each line.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>
#include <set>

#include "pipward/intake/detail/known_rows.h"
#include "pipward/intake/entry_place.h"
#include "pipward/intake/record_sheet.h"
#include "pipward/intake/remark.h"
#include "pipward/math/quantile.h"

namespace pipward::intake {
namespace {

// The notes of one sheet are mostly of one season. Common practice, no source.
constexpr int far_days = 180;
constexpr std::size_t enough_days = 3;

Finding about_line(const RecordSheet& sheet, const RecordLine& line, Remark remark) {
    return finding_about(sheet.file, say("line {}", line.line), std::move(remark));
}

/// Lines that need no judging: not filled in, or in the book already.
void pass_over(RecordSheet& sheet, detail::KnownRows& known) {
    for (auto& line : sheet.lines) {
        if (!line.filled) {
            line.verdict = RecordVerdict::not_filled_in;
        } else if (!has_errors(line.findings)) {
            if (const auto row = known.take(line.entry)) {
                line.verdict = RecordVerdict::there_already;
                line.why = say("The book has it as {}.", *row);
            }
        }
    }
}

// Both may be meant, but more often a line was copied once too often.
void tell_repeated(RecordSheet& sheet) {
    std::map<std::vector<std::string>, int> seen;
    for (auto& line : sheet.lines) {
        if (!line.is_wanted() || has_errors(line.findings)) {
            continue;
        }
        const auto [first, is_new] = seen.emplace(detail::lines_of(line.entry), line.line);
        if (!is_new) {
            line.findings.push_back(
                about_line(sheet, line,
                           {Level::warning, "", "", say("It says the same as line {}.", first->second),
                            say("Remove one of them, if it was written twice by mistake.")}));
        }
    }
}

/// The day of a line that is to be written.
const Day* day_in(const RecordLine& line, const book::BookColumn* column) {
    if (column == nullptr || !line.is_wanted()) {
        return nullptr;
    }
    const auto value = line.entry.values.find(std::string(column->name));
    return value == line.entry.values.end() ? nullptr : std::get_if<Day>(&value->second);
}

/// Warns of a few days that lie far from those of the other lines: last year's, most likely.
void tell_strange_days(RecordSheet& sheet) {
    const auto* column = day_column_of(table_of(sheet.kind));
    std::vector<Day> days;
    for (const auto& line : sheet.lines) {
        if (const auto* day = day_in(line, column)) {
            days.push_back(*day);
        }
    }
    if (days.size() < enough_days) {
        return;
    }
    const Day middle = math::middle_value(days);
    const auto is_far = [&](Day day) { return std::abs(day - middle) > far_days; };
    if (std::ranges::count_if(days, is_far) > std::max<std::ptrdiff_t>(1, std::ssize(days) / 10)) {
        return;
    }
    for (auto& line : sheet.lines) {
        const auto* day = day_in(line, column);
        if (day != nullptr && is_far(*day)) {
            line.findings.push_back(about_line(sheet, line,
                                               {Level::warning, sheet.heading_of(column->name), to_iso(*day),
                                                say("The other lines are of about {}.", to_iso(middle)),
                                                say("Correct the year or the month, if it is wrong.")}));
        }
    }
}

// The book's findings name its table, "new entry" and its column; people look for the line and the heading,
// and a remedy should know of the sheet.
Finding as_of_sheet(Finding finding, const RecordLine& line, const RecordSheet& sheet,
                    const detail::KnownRows& known) {
    const auto& table = table_of(sheet.kind);
    const auto* day = day_column_of(table);
    if (day != nullptr && finding.field == day->name && finding.value.empty()) {
        finding.remedy = say("Fill it in, or give the date of such lines with date-if-blank.");
    }
    if (finding.level == Level::error && !table.key.empty() && finding.field == table.key.front()) {
        if (const auto* row = known.named(finding.value)) {
            finding.remedy = say("It says there: {}. Correct it there, or give this one another name.",
                                 book::in_words(*row));
        }
    }
    return about_line(sheet, line,
                      {finding.level, sheet.heading_of(finding.field), std::move(finding.value),
                       std::move(finding.message), std::move(finding.remedy)});
}

/// What the book says of a line. A cell that could not be read is not told once more as missing.
void add_said(RecordLine& line, const Findings& said, const RecordSheet& sheet,
              const detail::KnownRows& known) {
    std::set<std::string> unreadable;
    std::ranges::transform(line.findings, std::inserter(unreadable, unreadable.end()), &Finding::field);
    for (const auto& finding : said) {
        if (!finding.value.empty() || !unreadable.contains(sheet.heading_of(finding.field))) {
            line.findings.push_back(as_of_sheet(finding, line, sheet, known));
        }
    }
}

void conclude(RecordLine& line) {
    line.verdict = has_errors(line.findings) ? RecordVerdict::wrong : line.verdict;
    std::vector<Sentence> reasons;
    std::ranges::transform(line.findings, std::back_inserter(reasons), &Finding::message);
    line.why = reasons.empty() ? line.why : joined(reasons, verbatim(" "));
}

/// Takes what was said of the wanted lines, one after the other, and concludes on every line.
void take_findings(RecordSheet& sheet, const std::vector<Findings>& said, const detail::KnownRows& known) {
    auto next = said.begin();
    for (auto& line : sheet.lines) {
        if (line.is_wanted()) {
            add_said(line, *next++, sheet, known);
        }
        if (line.verdict != RecordVerdict::there_already) {
            conclude(line);
        }
        sheet.findings.insert(sheet.findings.end(), line.findings.begin(), line.findings.end());
    }
}

/// Latitude and longitude of each line as a place of the book.
void place_lines(RecordSheet& sheet, const std::string& crs) {
    for (auto& line : sheet.lines) {
        for (auto& finding : place_entry(line.entry, crs)) {
            line.findings.push_back(
                about_line(sheet, line,
                           {finding.level, sheet.heading_of(finding.field), std::move(finding.value),
                            std::move(finding.message), std::move(finding.remedy)}));
        }
    }
}

book::BookReading read_without_weather(const book::BookAt& location) {
    std::set<std::string> tables;
    for (const auto& table : book::book_tables()) {
        if (!table.long_series) {
            tables.emplace(table.name);
        }
    }
    return book::read_tables(location, tables);
}

}  // namespace

std::span<const Word<RecordVerdict>> words(RecordVerdict) {
    static constexpr std::array table{
        Word<RecordVerdict>{RecordVerdict::would_be_written, "would_be_written", "would be written"},
        Word<RecordVerdict>{RecordVerdict::written, "written", "written"},
        Word<RecordVerdict>{RecordVerdict::there_already, "there_already", "there already"},
        Word<RecordVerdict>{RecordVerdict::not_filled_in, "not_filled_in", "not filled in"},
        Word<RecordVerdict>{RecordVerdict::wrong, "wrong", "wrong"}};
    return table;
}

void take_records(RecordSheet& sheet, const book::BookAt& location, Day as_of, bool write) {
    const std::string table(table_of(sheet.kind).name);
    const auto book = read_without_weather(location);
    place_lines(sheet, book.orchard.crs);
    detail::KnownRows known(table, book::rows_of_entries(location, table));
    pass_over(sheet, known);
    tell_repeated(sheet);
    tell_strange_days(sheet);
    std::vector<book::Entry> entries;
    bool is_clean = !has_errors(sheet.findings);
    for (const auto& line : sheet.lines) {
        is_clean = is_clean && !has_errors(line.findings);
        if (line.is_wanted()) {
            entries.push_back(line.entry);
        }
    }
    if (!write || !is_clean) {
        take_findings(sheet, book::check_entries(book, entries, as_of), known);
        return;
    }
    const auto added = book::add_entries(location, book, entries, as_of);
    take_findings(sheet, added.findings, known);
    for (auto& line : sheet.lines) {
        line.verdict = !added.rows.empty() && line.is_wanted() ? RecordVerdict::written : line.verdict;
    }
}

}  // namespace pipward::intake
