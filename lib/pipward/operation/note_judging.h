// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/note_file.h"
#include "pipward/operation/note_known.h"

/// A sheet of notes against the book: what becomes of each line.
namespace pipward::operation {

enum class Verdict { would_be_written, written, there_already, not_filled_in, wrong };

struct JudgedLine {
    NoteLine line;
    cross::Verdict verdict = Verdict::would_be_written;
    Sentence why{};
};

/// A sheet while it is judged.
struct SheetImport {
    NoteFile file;
    KnownRows known;
    std::vector<JudgedLine> lines{};
    Findings findings{};
};

/// Looks for lines that need no judging: not filled in, or in the book already.
void pass_over(SheetImport& import);

/// Warns of lines that say the same as an earlier one. `file` is how findings name the sheet.
void tell_repeated(SheetImport& import, const std::string& file);

/// Warns of a few days that lie far from those of the other lines: last year's, most likely.
void tell_strange_days(SheetImport& import, const std::string& file);

/// The lines that are left, to be held against the book.
std::vector<book::Entry> entries_of(const SheetImport& import);

/// Takes what was said of entries_of(), and concludes on every line.
void take_findings(SheetImport& import, const std::vector<Findings>& said, const std::string& file);

bool is_without_errors(const SheetImport& import);

}  // namespace pipward::operation
