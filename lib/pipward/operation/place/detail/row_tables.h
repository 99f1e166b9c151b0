// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include "pipward/place/row_position.h"
#include "pipward/record/table.h"

/// Rows and positions as tables.
namespace pipward::operation::detail {

TableShape row_position_shape();
TableShape tree_number_shape();
/// `rows` tell how positions are spoken of.
Table row_position_table(std::span<const place::RowPosition> positions, std::span<const TreeRow> rows);

}  // namespace pipward::operation::detail
