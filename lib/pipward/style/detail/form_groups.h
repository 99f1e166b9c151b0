// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/style/layer_style.h"

namespace pipward::style::detail {

/// How the form of a table is cut into tabs: by what its columns say. A table whose columns name no tab has
/// one.
std::vector<FormGroup> form_groups(const book::BookTable& table, const Wording& wording = in_english);

/// The same of a result. A column that no tab of it names stands on the first, so that none is lost.
std::vector<FormGroup> form_groups(const TableShape& result, const Wording& wording = in_english);

}  // namespace pipward::style::detail
