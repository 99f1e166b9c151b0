// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/value/finding.h"

/// Inside of the room: whether a GeoPackage is whole as a database, whatever stands in it.
namespace pipward::book::detail {

/// What the database's own check, and that of its spatial indexes, find: damage, indexes that do not fit
/// their rows, locations stored in another coordinate system than their layer's. Nothing for a server, which
/// sees to that itself.
Findings check_file(Session& session);

/// Throws Error (access) where the file is damaged: written to, it would lose more.
void refuse_damaged_file(Session& session, const std::string& location);

/// Whether to look through the whole file takes longer than to write a record may.
bool is_large_file(Session& session);

/// The same of some tables with their indexes only, for large files: damage elsewhere is book-check's
/// business. Tables that are not there are passed over.
void refuse_damaged_tables(Session& session, const std::string& location,
                           const std::vector<std::string>& tables);

}  // namespace pipward::book::detail
