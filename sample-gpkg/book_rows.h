// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/record/table.h"

/// Records as rows of the book's tables, in the order in which a book is filled.
namespace pipward::larkfold {

/// Every table of the orchard but blocks and rows, which need their outlines.
std::vector<Table> record_tables(const Orchard& orchard);
/// Blocks and rows as laid out by block_plans().
std::vector<Table> ground_tables();

}  // namespace pipward::larkfold
