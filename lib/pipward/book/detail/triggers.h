// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/book/detail/ogr_session.h"

/// Inside of the room: triggers run with every write, so a file from elsewhere could use one to change rows
/// that we never touched.
namespace pipward::book::detail {

/// Throws Error (access) when a trigger on `tables`, or on the GeoPackage's own tables that every write
/// touches, does anything but what the GeoPackage standard and OGR make triggers for.
void refuse_foreign_triggers(Session& session, const std::string& location,
                             const std::vector<std::string>& tables);

/// Whether a trigger on `table` is one of the known kinds, judged by what it does rather than by its name.
bool is_known_trigger(const std::string& table, const std::string& sql);

}  // namespace pipward::book::detail
