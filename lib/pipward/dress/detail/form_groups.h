// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "pipward/dress/layer_dress.h"

namespace pipward::dress::detail {

/// How the form of a wide table is cut into tabs. A column that the table below does not name stands in the
/// first tab, so that none is lost; a table that it does not know has one tab.
std::vector<FormGroup> form_groups(std::string_view table, std::string_view title,
                                   const std::vector<FieldDress>& fields,
                                   const Wording& wording = in_english);

}  // namespace pipward::dress::detail
