// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/entry.h"
#include "pipward/book/schema.h"
#include "pipward/record/table.h"

/// Inside of the room: what a transaction of change_book() is put together from. The checks come before the
/// transaction, the rest within it.
namespace pipward::book::detail {

/// Throws Error as append_rows() does for rows that the schema does not allow.
void check_appended(const Table& rows, Schema schema = book_tables());
/// What was written is added to `written`, where one wants to know.
void append_in(Session& session, const std::string& location, const Table& rows,
               std::vector<AddedRow>* written = nullptr);

/// Throws Error (access) for names that are no result tables.
void check_results(std::span<const Table> results);
void replace_in(Session& session, const std::string& location, std::span<const Table> results);

}  // namespace pipward::book::detail
