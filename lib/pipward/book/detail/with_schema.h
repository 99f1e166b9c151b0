// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "pipward/book/book.h"
#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

/// The functions of book.h and entry.h for a book of another schema than the released one: a table or a
/// column more, tried before it is released. Each does by `schema` what its namesake does by book_tables().
namespace pipward::book::detail {

void create_book(const std::string& path, const std::string& crs, Schema schema);
BookReading read_book(const BookAt& book, Schema schema);
Findings check_orchard(const Orchard& orchard, Day as_of, const UnreadRows& unread, Schema schema);
void append_rows(const BookAt& book, const Table& rows, Schema schema);
std::vector<Findings> check_entries(const BookReading& book, std::span<const Entry> entries, Day as_of,
                                    Schema schema);
Sentence in_words(const Entry& entry, Schema schema);

}  // namespace pipward::book::detail
