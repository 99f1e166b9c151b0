// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "pipward/bloom/forecast.h"

namespace pipward::cross::detail {

/// So many flowers are pollinated on a grown tree before another is taken, and on one that was planted less
/// than five or less than three years ago. Common practice, no source.
inline constexpr int flowers_a_tree = 100;
inline constexpr int flowers_a_young_tree = 30;  ///< below five years
inline constexpr int flowers_a_whip = 10;        ///< below three years

/// One tree's part of a cross.
struct PollinatedTree {
    bloom::TreeBloom bloom;  ///< the tree
    int flowers = 0;         ///< to be pollinated on it
};

/// Flowers that a tree bears for crossing on a day, by its years in the place.
int flowers_borne(const Tree& tree, Day as_of);

/// What a cross has at its trees already, by their labels.
struct BegunTrees {
    std::set<std::string> bagged;      ///< and not pollinated: gone on with first
    std::set<std::string> pollinated;  ///< their part is done: taken again only where no other is left
};

/// Spreads a cross's flowers over the trees of its seed parent, by what each bears beside the crosses before:
/// on those nearest to the first, so that the walk is short. Where all of them together bear too few, the
/// flowers are spread evenly. `trees` in the order of preference, not empty; `planned` are flowers of crosses
/// before, by label, and is added to.
std::vector<PollinatedTree> spread_over_trees(const std::vector<bloom::TreeBloom>& trees, int flowers,
                                              Day as_of, const BegunTrees& begun,
                                              std::map<std::string, int>& planned);

}  // namespace pipward::cross::detail
