// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/value/spoken.h"

namespace pipward::value {

/// Letters to add, drop or change to make `a` of `b` (Levenshtein 1966).
int edit_distance(std::string_view a, std::string_view b);

/// The candidate that a slip of the hand most likely meant; nothing where none is near. The first of equals.
std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& candidates);

/// At most `most` candidates that `word` may stand for, the likeliest first: capitals do not count, and one
/// that begins with the word or holds it is as near as one slip. Empty where none is near.
std::vector<std::string> nearest_few(std::string_view word, const std::vector<std::string>& candidates,
                                     std::size_t most = 3);

}  // namespace pipward::value
