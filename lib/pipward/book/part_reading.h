// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>

#include "pipward/book/book.h"
#include "pipward/record/orchard_shelf.h"

/// Books of which only those rows are read that a question needs.
namespace pipward::book {

/// What `choose` takes from the book's shelf. Of the rest nothing is said. Nothing where the part would be
/// too large or `choose` gives false, on a server, and in a file without the indexes to look up by: then the
/// whole is to be read. Throws Error (access) as read_book(). `choose` may run more than once.
std::optional<BookReading> read_part(const BookAt& book,
                                     const std::function<bool(OrchardShelf& shelf)>& choose);

}  // namespace pipward::book
