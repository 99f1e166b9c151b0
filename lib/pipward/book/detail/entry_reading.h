// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/book/entry.h"

/// Inside of the room: what of the book one entry is judged by.
namespace pipward::book::detail {

/// The rows that the rules for the entry look at: an entry that they have no error for has none in the whole
/// book either, and the same warnings. Nothing for entries that are judged by all trees or accessions, and
/// where a part cannot be read.
std::optional<BookReading> read_for_entry(const BookAt& book, const Entry& entry);

/// The book as far as entries are judged by it.
BookReading read_without_weather(const BookAt& book);

}  // namespace pipward::book::detail
