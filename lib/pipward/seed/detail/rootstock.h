// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace pipward::seed::detail {

/// Whether a rootstock, in free words, keeps a tree small: by the word ("dwarfing", "half-dwarfing", not
/// "non-dwarfing"), by quince, which keeps a pear small, or by its name, in any writing: "M9", "M.9 T337",
/// "m 9". Names of dwarfing apple rootstocks are those usual in textbooks (from memory: Rom & Carlson,
/// Rootstocks for Fruit Crops, 1987; Geneva stocks by their breeder's lists).
bool is_dwarfing(std::string_view rootstock);

}  // namespace pipward::seed::detail
