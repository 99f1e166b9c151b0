// SPDX-License-Identifier: MIT
#pragma once

#include <string>

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

}  // namespace pipward::book::detail
