// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/schema.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/record/words.h"

/// The kinds of notes that are written down by the sheet: one for each table that takes entries.
namespace pipward::operation {

enum class NoteKind { bloom, pollination, pollen_test, pick, seed_lot, sprouts, seed_out, score };

std::span<const Word<NoteKind>> words(NoteKind);

const book::BookTable& table_of(NoteKind kind);

/// The column of the day on which it was seen or done; null where no day is needed (seed lots).
const book::BookColumn* day_column_of(const book::BookTable& table);

/// Whether a sheet's line is blank without it: what is counted, staged or scored.
bool is_the_note_itself(const book::BookColumn& column);

template <class Request, class Field>
BoundField<Request, Field> note_kind_parameter(Field Request::*field) {
    return parameter(field, "kind", "Kind",
                     "What the lines of the sheet note; note-import sees it from the header where it is not "
                     "given.");
}

/// A column of our own sheets that tells where to look; it is not read.
inline constexpr std::string_view where_column = "where";

/// A cell of a sheet such that no spreadsheet takes it for a formula: text that begins as one gets an
/// apostrophe in front.
std::string harmless(const std::string& text);
/// Such an apostrophe taken off.
std::string_view without_apostrophe(std::string_view text);

}  // namespace pipward::operation
