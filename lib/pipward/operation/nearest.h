// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipward {

/// Letters to add, drop or change to make `a` of `b` (Levenshtein 1966).
int edit_distance(std::string_view a, std::string_view b);

/// The candidate that a slip of the hand most likely meant; nothing where none is near. The first of equals.
std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& candidates);

}  // namespace pipward
