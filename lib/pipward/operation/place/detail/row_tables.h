// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include "pipward/operation/operation.h"
#include "pipward/place/row_position.h"

/// Rows and positions as tables.
namespace pipward::operation::detail {

ResultShape row_position_shape();
ResultShape tree_number_shape();
/// `rows` tell how positions are spoken of.
Table row_position_table(std::span<const place::RowPosition> positions, std::span<const TreeRow> rows);

}  // namespace pipward::operation::detail
