// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/operation/declare/column_of.h"
#include "pipward/seed/planted.h"

/// A planting as a table.
namespace pipward::operation::detail {

extern const TableOf<seed::Planted> planting_table;

}  // namespace pipward::operation::detail
