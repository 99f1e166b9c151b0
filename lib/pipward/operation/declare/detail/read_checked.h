// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/book.h"
#include "pipward/operation/declare/detail/request_field.h"
#include "pipward/operation/operation.h"

namespace pipward::operation::detail {

/// The book, read and checked by its rules; bloom notes that the rules find misdated are left out. Throws
/// Error (input) carrying every finding where any is an error.
book::BookReading read_checked(const BookName& book, Day as_of, const Run& lent);

/// The same for work that asks nothing of bloom and weather: what the rules find in those tables is not its
/// business and is left to book-check.
book::BookReading read_checked_without_weather(const BookName& book, Day as_of, const Run& lent);

/// Replaces result tables in one transaction, their sentences in the words of a host; a book that cannot be
/// written says how to look without writing.
void write_results(const BookName& book, std::span<const Table> results, const Wording& wording = in_english);

}  // namespace pipward::operation::detail
