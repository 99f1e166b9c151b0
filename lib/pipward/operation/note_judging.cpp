// SPDX-License-Identifier: MIT
#include "pipward/operation/note_judging.h"

#include <algorithm>
#include <cstdlib>
#include <map>

#include "pipward/math/quantile.h"

namespace pipward::operation {
namespace {

// The book's findings name its table, "new entry" and its column; people look for the line and the heading.
Finding as_of_file(Finding finding, const NoteLine& line, const SheetImport& import,
                   const std::string& file) {
    finding.table = file;
    finding.row = say("line {}", line.line);
    const auto heading = import.file.headings.find(finding.field);
    finding.field = heading == import.file.headings.end() ? finding.field : heading->second;
    return finding;
}

// A remedy that knows of the sheet.
void mend_remedy(Finding& finding, std::string_view column, const SheetImport& import) {
    const auto& table = table_of(import.file.kind);
    const auto* day = day_column_of(table);
    if (day != nullptr && column == day->name && finding.value.empty()) {
        finding.remedy = say("Fill it in, or give the day of such lines with day-if-blank.");
    }
    if (finding.level == Level::error && !table.key.empty() && column == table.key.front()) {
        if (const auto* row = import.known.named(finding.value)) {
            finding.remedy = say("It says there: {}. Correct it there, or give this one another name.",
                                 book::in_words(*row));
        }
    }
}

/// What the book says of a line. A cell that could not be read is not told once more as missing.
void add_verdict(JudgedLine& judged, const Findings& said, const SheetImport& import,
                 const std::string& file) {
    auto& findings = judged.line.findings;
    const auto unreadable = findings;
    for (const auto& finding : said) {
        auto moved = as_of_file(finding, judged.line, import, file);
        const bool told = moved.value.empty() &&
                          std::ranges::find(unreadable, moved.field, &Finding::field) != unreadable.end();
        mend_remedy(moved, finding.field, import);
        if (!told) {
            findings.push_back(std::move(moved));
        }
    }
}

void conclude(JudgedLine& judged) {
    std::vector<Sentence> reasons;
    for (const auto& finding : judged.line.findings) {
        reasons.push_back(finding.message);
    }
    if (has_errors(judged.line.findings)) {
        judged.verdict = Verdict::wrong;
    }
    if (!reasons.empty()) {
        judged.why = joined(reasons, verbatim(" "));
    }
}

// The notes of one sheet are mostly of one season. Common practice, no source.
constexpr int far_days = 180;
constexpr std::size_t enough_days = 3;

/// The day of a line that is to be written.
std::optional<Day> day_in(const JudgedLine& judged, const book::BookColumn& column) {
    const auto value = judged.line.entry.values.find(std::string(column.name));
    const auto* day = judged.verdict != Verdict::would_be_written || value == judged.line.entry.values.end()
                          ? nullptr
                          : std::get_if<Day>(&value->second);
    return day == nullptr ? std::nullopt : std::optional{*day};
}

std::string heading_of(const book::BookColumn& column, const SheetImport& import) {
    const auto heading = import.file.headings.find(column.name);
    return heading == import.file.headings.end() ? std::string(column.name) : heading->second;
}

}  // namespace

void pass_over(SheetImport& import) {
    for (auto& line : import.file.lines) {
        auto& judged = import.lines.emplace_back(JudgedLine{std::move(line)});
        if (!judged.line.filled) {
            judged.verdict = Verdict::not_filled_in;
        } else if (!has_errors(judged.line.findings)) {
            if (const auto row = import.known.take(judged.line.entry)) {
                judged.verdict = Verdict::there_already;
                judged.why = say("The book has it as {}.", *row);
            }
        }
    }
    import.file.lines.clear();
}

// Both may be meant, but more often a line was copied once too often.
void tell_repeated(SheetImport& import, const std::string& file) {
    std::map<std::vector<std::string>, int> seen;
    for (auto& judged : import.lines) {
        if (judged.verdict != Verdict::would_be_written || has_errors(judged.line.findings)) {
            continue;
        }
        const auto [first, is_new] = seen.emplace(lines_of(judged.line.entry), judged.line.line);
        if (!is_new) {
            judged.line.findings.push_back({Level::warning, file, say("line {}", judged.line.line), "", "",
                                            say("It says the same as line {}.", first->second),
                                            say("Remove one of them, if it was written twice by mistake.")});
        }
    }
}

void tell_strange_days(SheetImport& import, const std::string& file) {
    const auto* column = day_column_of(table_of(import.file.kind));
    std::vector<Day> days;
    for (const auto& judged : import.lines) {
        if (const auto day = column == nullptr ? std::nullopt : day_in(judged, *column)) {
            days.push_back(*day);
        }
    }
    if (days.size() < enough_days) {
        return;
    }
    const auto usual = math::middle_value(days);
    const auto is_far = [usual](Day day) { return std::abs(day - usual) > far_days; };
    if (std::ranges::count_if(days, is_far) > std::max<std::ptrdiff_t>(1, std::ssize(days) / 10)) {
        return;
    }
    for (auto& judged : import.lines) {
        const auto day = day_in(judged, *column);
        if (day && is_far(*day)) {
            judged.line.findings.push_back({Level::warning, file, say("line {}", judged.line.line),
                                            heading_of(*column, import), to_iso(*day),
                                            say("The other lines are of about {}.", to_iso(usual)),
                                            say("Correct the year or the month, if it is wrong.")});
        }
    }
}

std::vector<book::Entry> entries_of(const SheetImport& import) {
    std::vector<book::Entry> entries;
    for (const auto& judged : import.lines) {
        if (judged.verdict == Verdict::would_be_written) {
            entries.push_back(judged.line.entry);
        }
    }
    return entries;
}

void take_findings(SheetImport& import, const std::vector<Findings>& said, const std::string& file) {
    auto next = said.begin();
    for (auto& judged : import.lines) {
        if (judged.verdict == Verdict::would_be_written) {
            add_verdict(judged, *next++, import, file);
        }
        if (judged.verdict != Verdict::there_already) {
            conclude(judged);
        }
        import.findings.insert(import.findings.end(), judged.line.findings.begin(),
                               judged.line.findings.end());
    }
}

bool is_without_errors(const SheetImport& import) {
    return !has_errors(import.findings) && std::ranges::none_of(import.lines, [](const JudgedLine& judged) {
        return has_errors(judged.line.findings);
    });
}

}  // namespace pipward::operation
