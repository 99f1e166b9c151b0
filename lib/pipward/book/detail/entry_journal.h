// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/entry.h"

/// Inside of the room: what the book remembers of its latest entries, so that they can be taken back another
/// day. A small table beside the book's own; nobody need look at it, and a book without it is whole.
namespace pipward::book::detail {

inline constexpr const char* journal_table = "entry_journal";

/// Remembers entries that were written at once; the oldest of many are forgotten, such batches as a whole.
void remember(Session& session, std::span<const AddedRow> rows);
void forget(Session& session, std::span<const AddedRow> rows);
/// The newest batch first, its rows in the order of writing. Empty where the book has no journal.
std::vector<std::vector<AddedRow>> remembered(Session& session);

}  // namespace pipward::book::detail
