// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/book.h"

/// Books of an older version of the schema made ones of ours.
namespace pipward::book {

/// What was done to a book.
struct BookUpgrade {
    int from = 0;      ///< its version before
    int to = 0;        ///< ours
    std::string copy;  ///< where the book as it was lies; empty for a server's, and where nothing was done
};

/// What upgrade_book() would do; nothing is written. Throws Error (access) where the book is of a newer
/// version, says none, or cannot be read.
BookUpgrade needed_upgrade(const std::string& location);

/// Runs the steps from the book's version to ours in one transaction; of a file it keeps a copy beside it
/// first. A book of ours is left as it is. Throws Error (access) as needed_upgrade(), and where the copy's
/// name is taken or the book cannot be written; then nothing was changed.
BookUpgrade upgrade_book(const std::string& location, Patience patience = default_patience);

}  // namespace pipward::book
