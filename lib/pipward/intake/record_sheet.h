// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/entry.h"
#include "pipward/intake/days.h"
#include "pipward/intake/record_kind.h"

/// A sheet of notes, filled in by people, as entries of a book.
namespace pipward::intake {

/// What becomes of a line.
enum class RecordVerdict {
    would_be_written,  ///< nothing speaks against it
    written,           ///< it stands in the book now
    there_already,     ///< the book has such a note
    not_filled_in,     ///< nothing was counted, staged or scored
    wrong              ///< an error stands in the way of the whole sheet
};
/// The verdicts as they stand in tables.
std::span<const Word<RecordVerdict>> words(RecordVerdict);

/// One line of the sheet.
struct RecordLine {
    int line = 0;         ///< in the file, counted from 1
    book::Entry entry{};  ///< cells that could not be read are left out
    bool filled = false;  ///< something was counted, staged or scored
    Findings findings{};  ///< of this line
    /// set by take_records(); to be written before.
    RecordVerdict verdict = RecordVerdict::would_be_written;
    Sentence why{};  ///< of a verdict other than to be written; may be empty

    /// Whether it is to be written, as far as is known.
    bool is_wanted() const { return verdict == RecordVerdict::would_be_written; }
};

/// What is stated of a sheet instead of being found out.
struct RecordOptions {
    std::string file;                         ///< how findings name it
    std::optional<RecordKind> kind{};         ///< seen from the heading where not given
    std::optional<Day> date_if_blank{};       ///< of lines without a day
    std::optional<DateFormat> date_format{};  ///< found out where not given
    /// Whether lines complete rows that the book has, by their names, instead of being rows of their own.
    bool complete = false;
};

/// A sheet of notes with what is said of its lines.
struct RecordSheet {
    std::string file;                     ///< how findings name it
    RecordKind kind = RecordKind::bloom;  ///< without a meaning where a finding of the file is an error
    std::map<std::string, std::string, std::less<>> headings{};  ///< how the file heads the book's columns
    std::vector<RecordLine> lines{};                             ///< in the file's order
    Findings findings{};  ///< of the file as a whole, then line by line once it is judged

    /// How the file heads it, else the column's own name.
    std::string heading_of(std::string_view column) const;
};

/// Reads a sheet without asking the book: everything that is wrong is told with its line. Where a finding of
/// the file is an error there are no lines.
RecordSheet read_record_sheet(std::string_view bytes, const RecordOptions& options);

/// Judges each line of a sheet against the book with the lines before it: blank, in the book already, wrong
/// or to be written; and writes those all at once, or none where one is wrong, when it is told so. Throws
/// Error as book::add_entries(). Where it is to write, the book should be held (book::in_one_change()): what
/// another program adds meanwhile would not be judged.
void take_records(RecordSheet& sheet, const book::BookAt& book, Day as_of, bool write);

}  // namespace pipward::intake
