// SPDX-License-Identifier: MIT
#pragma once

#include <ogrsf_frmts.h>

#include <map>
#include <string>

#include "pipward/book/detail/ogr_session.h"

/// Inside of the room: cells of a GeoPackage whose stored value is not of the column's declared type.
/// SQLite stores anything anywhere; OGR reads such cells as 0 or as nothing, so the database itself is asked.
namespace pipward::book::detail {

/// Field index to the value as stored, for one row.
using StrangeRow = std::map<int, std::string>;
/// By row number (fid), of the rows that fulfil the SQL condition `among`; of all where it is empty. Empty
/// for a server, which keeps its types.
std::map<std::int64_t, StrangeRow> find_strange_cells(Session& session, OGRLayer& layer,
                                                      const std::string& among);

}  // namespace pipward::book::detail
