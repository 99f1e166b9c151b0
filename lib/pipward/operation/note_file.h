// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/entry.h"
#include "pipward/operation/note_kind.h"
#include "pipward/weather/csv_text.h"
#include "pipward/weather/weather_import.h"

/// A sheet of notes, filled in by people, as entries. Pure.
namespace pipward::operation {

/// One line of the sheet.
struct NoteLine {
    int line = 0;  ///< in the file, counted from 1
    book::Entry entry;
    bool filled = false;  ///< something was counted, staged or scored
    Findings findings{};  ///< cells that cannot be read
};

struct NoteFileOptions {
    std::string file;                                ///< how findings name it
    std::optional<NoteKind> kind{};                  ///< seen from the header where not given
    std::optional<Day> day_if_blank{};               ///< of lines without a day
    std::optional<weather::DayFormat> day_format{};  ///< found out where not given
};

struct NoteFile {
    NoteKind kind = NoteKind::bloom;
    std::map<std::string, std::string, std::less<>> headings{};  ///< how the file heads the book's columns
    std::vector<NoteLine> lines{};
    Findings findings{};  ///< of the file as a whole; where one is an error there are no lines
};

/// Reads comma, semicolon or tab separated text in UTF-8. Everything that is wrong is told with its line; the
/// rules of the book are not asked here.
NoteFile read_note_file(std::string_view text, const NoteFileOptions& options);

// The steps of it, one file each.

/// Why the bytes are no CSV in UTF-8: a workbook, UTF-16, Windows-1252 ... Empty where they are.
Findings judge_note_bytes(std::string_view text, const std::string& file);

/// Where each column of the file goes: into Row::fields by position. Null for a column that is not read.
struct NoteHeader {
    NoteKind kind = NoteKind::bloom;
    std::vector<const book::BookColumn*> columns{};
    Findings findings{};
};
NoteHeader read_note_header(const weather::CsvText& csv, const NoteFileOptions& options);

/// A cell as the column holds it; what people write that cannot be read is wrong. Days are left as they are.
struct NoteCell {
    Cell cell{};
    std::optional<Finding> wrong{};
};
NoteCell read_note_cell(const book::BookColumn& column, std::string_view text);

/// Days of one column, in whatever order they are written.
struct NoteDayText {
    int line = 0;
    std::string text;
    std::optional<Day> day{};  ///< to be found
    std::optional<Finding> wrong{};
};
/// Finds the days. A note where the order had to be found out from other lines.
Findings read_note_days(std::vector<NoteDayText>& days, std::optional<weather::DayFormat> format);

}  // namespace pipward::operation
