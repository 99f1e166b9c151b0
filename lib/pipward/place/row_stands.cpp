// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_stands.h"

#include "pipward/record/presence.h"

namespace pipward::place::detail {
namespace {

constexpr int longest_gap = 200;  // positions: more is a slip in a number, not a gap

RowStand stand_of(const TreeLine& line, const Orchard& orchard, Day as_of, std::size_t i) {
    const auto& tree = orchard.trees[line.trees[i]];
    return {line.trees[i], stands_on(tree, as_of), tree.position, line.at[i]};
}

bool is_same_place(const RowStand& a, const RowStand& b) {
    return a.position && b.position && *a.position == *b.position;
}

void add_vacant(std::vector<RowStand>& stands, const RowStand& next) {
    const auto last = stands.back();
    const int missing = last.position && next.position ? *next.position - *last.position - 1 : 0;
    for (int i = 1; i <= missing && missing <= longest_gap; ++i) {
        const double share = static_cast<double>(i) / (missing + 1);
        stands.push_back({{}, false, *last.position + i, last.at + (next.at - last.at) * share});
    }
}

}  // namespace

std::vector<RowStand> stands_of(const TreeLine& line, const Orchard& orchard, Day as_of) {
    std::vector<RowStand> stands;
    for (std::size_t i = 0; i < line.trees.size(); ++i) {
        const auto next = stand_of(line, orchard, as_of, i);
        if (stands.empty()) {
            stands.push_back(next);
        } else if (!is_same_place(stands.back(), next)) {
            add_vacant(stands, next);
            stands.push_back(next);
        } else if (!stands.back().stands) {
            stands.back() = next;
        }
    }
    return stands;
}

}  // namespace pipward::place::detail
