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
#include "pipward/intake/note_kind.h"

/// A sheet of notes, filled in by people, as entries of a book.
namespace pipward::intake {

enum class NoteVerdict { would_be_written, written, there_already, not_filled_in, wrong };
std::span<const Word<NoteVerdict>> words(NoteVerdict);

/// One line of the sheet.
struct NoteLine {
    int line = 0;  ///< in the file, counted from 1
    book::Entry entry{};
    bool filled = false;  ///< something was counted, staged or scored
    Findings findings{};
    NoteVerdict verdict = NoteVerdict::would_be_written;
    Sentence why{};

    bool is_wanted() const { return verdict == NoteVerdict::would_be_written; }
};

struct NoteOptions {
    std::string file;                       ///< how findings name it
    std::optional<NoteKind> kind{};         ///< seen from the heading where not given
    std::optional<Day> day_if_blank{};      ///< of lines without a day
    std::optional<DayFormat> day_format{};  ///< found out where not given
};

struct NoteSheet {
    std::string file;
    NoteKind kind = NoteKind::bloom;
    std::map<std::string, std::string, std::less<>> headings{};  ///< how the file heads the book's columns
    std::vector<NoteLine> lines{};
    Findings findings{};  ///< of the file as a whole, then line by line once it is judged

    /// How the file heads it, else the column's own name.
    std::string heading_of(std::string_view column) const;
};

/// Reads a sheet without asking the book: everything that is wrong is told with its line. Where a finding of
/// the file is an error there are no lines.
NoteSheet read_note_sheet(std::string_view bytes, const NoteOptions& options);

/// Judges each line of a sheet against the book with the lines before it: blank, in the book already, wrong
/// or to be written; and writes those all at once, or none where one is wrong, when it is told so. Throws
/// Error as book::add_entries().
void take_notes(NoteSheet& sheet, const std::string& book, Day as_of, bool write);

}  // namespace pipward::intake
