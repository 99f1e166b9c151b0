// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

/// Inside of the room: entries that complete rows of the book.
namespace pipward::book::detail {

/// Entries put together with the rows that they complete.
struct Completion {
    BookReading without;             ///< the book without those rows
    std::vector<Entry> whole;        ///< each entry with all cells of its row
    std::vector<Findings> findings;  ///< of each: no such row, cells that hold something else, nothing to fill
};

/// All entries are of one table, whose key is one column. Throws Error (usage) where it has none.
Completion complete(const BookReading& book, std::span<const Entry> entries, Schema schema);

}  // namespace pipward::book::detail
