// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/tree_shares.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace pipward::cross::detail {
namespace {

constexpr int days_a_year = 365;

double squared_distance(const Tree& a, const Tree& b) {
    if (!a.at || !b.at) {
        return std::numeric_limits<double>::max();
    }
    const double east = a.at->x - b.at->x;
    const double north = a.at->y - b.at->y;
    return east * east + north * north;
}

// Bagged trees first, those that are done last; then by the way from the first tree.
std::vector<bloom::TreeBloom> in_order_of_work(std::vector<bloom::TreeBloom> trees, const BegunTrees& begun) {
    const auto turn = [&](const bloom::TreeBloom& bloom) {
        const auto& label = bloom.tree->label;
        return begun.pollinated.contains(label) ? 2 : begun.bagged.contains(label) ? 0 : 1;
    };
    std::ranges::stable_sort(trees, {}, turn);
    const Tree first = *trees.front().tree;
    std::ranges::stable_sort(trees, {}, [&](const bloom::TreeBloom& bloom) {
        return std::pair(turn(bloom), squared_distance(first, *bloom.tree));
    });
    return trees;
}

struct Room {
    bloom::TreeBloom bloom;
    int flowers = 0;
};

// Of those that are not done, or of all where each is.
std::vector<Room> one_part_each(const std::vector<bloom::TreeBloom>& trees, const BegunTrees& begun) {
    std::vector<Room> parts;
    for (const auto& bloom : trees) {
        if (parts.empty() || !begun.pollinated.contains(bloom.tree->label) ||
            begun.pollinated.contains(parts.front().bloom.tree->label)) {
            parts.push_back({bloom, 1});
        }
    }
    return parts;
}

// As few trees as bear the flowers together, or all.
std::vector<Room> trees_needed(const std::vector<bloom::TreeBloom>& trees, int flowers, Day as_of,
                               const BegunTrees& begun, const std::map<std::string, int>& planned) {
    std::vector<Room> needed;
    int room = 0;
    for (const auto& bloom : trees) {
        const auto taken = planned.find(bloom.tree->label);
        const int left = flowers_borne(*bloom.tree, as_of) - (taken == planned.end() ? 0 : taken->second);
        if (left > 0 && room < flowers) {
            needed.push_back({bloom, left});
            room += left;
        }
    }
    return room < flowers ? one_part_each(trees, begun) : needed;
}

}  // namespace

int flowers_borne(const Tree& tree, Day as_of) {
    if (!tree.planted_on) {
        return flowers_a_tree;
    }
    const int years = (as_of - *tree.planted_on) / days_a_year;
    return years < 3 ? flowers_a_whip : years < 5 ? flowers_a_young_tree : flowers_a_tree;
}

std::vector<PollinatedTree> spread_over_trees(const std::vector<bloom::TreeBloom>& trees, int flowers,
                                              Day as_of, const BegunTrees& begun,
                                              std::map<std::string, int>& planned) {
    const auto needed =
        trees_needed(in_order_of_work(trees, begun), std::max(1, flowers), as_of, begun, planned);
    double all = 0;
    for (const auto& room : needed) {
        all += room.flowers;
    }
    std::vector<PollinatedTree> shares;
    double so_far = 0;
    int given = 0;
    for (const auto& room : needed) {
        so_far += room.flowers;
        const auto until = static_cast<int>(flowers * so_far / all + 1e-9);
        if (until > given) {
            shares.push_back({room.bloom, until - given});
            planned[room.bloom.tree->label] += until - given;
            given = until;
        }
    }
    return shares;
}

}  // namespace pipward::cross::detail
