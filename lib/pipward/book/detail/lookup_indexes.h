// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/detail/ogr_session.h"

/// Inside of the room: the database's own indexes on columns that rows are looked up by. The database keeps
/// them true whatever program writes, so nothing read through them can be out of date. A book without
/// them is whole, and only slower.
namespace pipward::book::detail {

/// Makes those that a file lacks, as far as it has their tables and columns. Nothing on a server.
void ensure_lookup_indexes(Session& session);

/// Whether a file has those of the trees and accessions, without which looking up is no quicker than reading
/// everything. False on a server.
bool has_lookup_indexes(Session& session);

}  // namespace pipward::book::detail
