// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/operation/declare/detail/declare.h"
#include "pipward/paper/label_grid.h"

namespace pipward::operation::detail {

/// The parameters that fill a wish for a sheet of labels, for a request that extends it.
std::vector<Bound<paper::SheetWish>> sheet_parameters();

}  // namespace pipward::operation::detail
