// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/record/table.h"
#include "pipward/value/finding.h"

namespace pipward::book {

/// A row that is to be added to a table of the schema, by column name. Columns that are not given are
/// unknown.
struct AddedRecord {
    std::string table;                    ///< of the schema
    std::map<std::string, Cell> cells{};  ///< by column
    /// Of a table of points, in the book's system; nothing where it is not known.
    std::optional<MapPoint> at{};
    std::vector<MapPoint> line{};  ///< of a table of lines; empty where it is not known
};

/// What the rules of check_orchard() about trees, accessions, rows and names say of the book with these rows
/// that they do not say of it without. Rows must have their required values and pass check_cell(). That two
/// names look alike is not told. Pure.
Findings check_added(const Orchard& before, const std::vector<AddedRecord>& rows, Day as_of);

}  // namespace pipward::book
