// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/schema.h"

/// Inside of the room: reads one table of a book, trusting nothing. OGR turns text in a number column into 0,
/// cuts 3.7 to 3, wraps numbers that are too large, accepts 31 June and may stop early on a damaged page
/// without a word; each of these becomes a finding here.
namespace pipward::book::detail {

/// Hands every readable row to `use` and adds what is wrong to `findings`. Every cell has the type and domain
/// of the schema; what could not be read is unknown. A row that lacks a required value is left out.
void read_table(Session& session, const BookTable& table, Findings& findings,
                const std::function<void(const BookRow&)>& use);

/// The same of the rows that fulfil an SQL condition; every row where it is empty.
void read_rows(Session& session, const BookTable& table, const std::string& condition, Findings& findings,
               const std::function<void(const BookRow&)>& use);

}  // namespace pipward::book::detail
