// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/book/change.h"

/// Records that a book is to have, as append_rows() and apply_change() take them.
namespace pipward::book {

/// With their lines; heights where both ends have one.
Table rows_to_add(std::span<const TreeRow> rows);
/// An upright rectangle between two opposite corners.
Table block_to_add(const std::string& name, const MapPoint& low, const MapPoint& high);

/// Block, row and position for a tree that stands in the book; only while it stands there as it was read.
CellEdit placed(const Tree& tree, const std::string& block, const std::string& row,
                const std::optional<int>& position);
/// A tree, an accession or a seed withdrawal taken out, only while its name and remark are what was read.
RowRemoval removal_of(const Tree& tree);
RowRemoval removal_of(const Accession& accession);
RowRemoval removal_of(const SeedWithdrawal& withdrawal);

}  // namespace pipward::book
