// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

#include "pipward/book/detail/ogr_session.h"

/// Inside of the room: whether what was written stands in the book. A trigger or a constraint of the file can
/// swallow a row, or put it in place of another one, without any complaint.
namespace pipward::book::detail {

/// How many rows the table holds, counted, not as registered somewhere.
std::int64_t rows_in(Session& session, const std::string& table);

/// Throws Error (access) where the table holds another number of rows. To be asked within the transaction.
void expect_rows(Session& session, const std::string& location, const std::string& table,
                 std::int64_t wanted);

/// What is thrown where a row does not hold what was written to it.
Error swallowed(const std::string& location, const std::string& table);

}  // namespace pipward::book::detail
