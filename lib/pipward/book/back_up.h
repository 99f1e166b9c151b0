// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "pipward/book/book.h"

/// A copy of a book to be kept, whatever others do to the book meanwhile.
namespace pipward::book {

/// A table of the copy.
struct BackedUpTable {
    std::string name;       ///< of the table
    std::int64_t rows = 0;  ///< in it
};

/// Writes the book as it stands at one moment, with what a write-ahead log of it holds, into a new file `to`;
/// others may read and write the book meanwhile. The copy is checked as check_file() does and its rows are
/// counted before it gets its name: it appears whole or not at all. Returns its layers and tables by name.
/// Throws Error: (usage) for a book on a server, or a name that does not end with .gpkg, (access) where the
/// book is damaged, where `to` exists or cannot be written; then nothing is left.
std::vector<BackedUpTable> back_up(const BookAt& book, const std::string& to);

}  // namespace pipward::book
