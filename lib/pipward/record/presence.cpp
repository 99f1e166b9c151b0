// SPDX-License-Identifier: MIT
#include "pipward/record/presence.h"

#include <algorithm>
#include <map>
#include <string_view>

namespace pipward::record {
namespace {

bool is_gone_before(const Tree& one, const Tree& other) {
    return one.removed_on && other.planted_on && *one.removed_on <= *other.planted_on;
}

}  // namespace

bool planted_by(const Tree& tree, Day day) {
    return !tree.planted_on || *tree.planted_on <= day;
}

bool removed_by(const Tree& tree, Day day) {
    return tree.removed_on && *tree.removed_on <= day;
}

bool stands_on(const Tree& tree, Day day) {
    return planted_by(tree, day) && !removed_by(tree, day);
}

bool in_hand(const PollenLot& lot, Day day) {
    return lot.collected_on <= day && (!lot.used_up_on || *lot.used_up_on > day);
}

Store store_on(const PollenLot& lot, const std::vector<PollenMove>& moves, Day day) {
    const PollenMove* latest = nullptr;
    for (const auto& move : moves) {
        const bool counts = move.lot == lot.code && move.moved_on <= day;
        if (counts && (latest == nullptr || move.moved_on >= latest->moved_on)) {
            latest = &move;
        }
    }
    return latest == nullptr ? lot.store : latest->store;
}

std::vector<int> passes_of(const std::vector<Pollination>& works) {
    std::map<std::string_view, std::vector<std::size_t>> by_tag;
    for (std::size_t i = 0; i < works.size(); ++i) {
        by_tag[works[i].tag].push_back(i);
    }
    std::vector<int> passes(works.size(), 1);
    for (auto& [tag, rows] : by_tag) {
        std::ranges::stable_sort(rows, {}, [&](std::size_t i) { return works[i].pollinated_on; });
        int last = 0;
        for (const auto i : rows) {
            passes[i] = works[i].pass.value_or(last + 1);
            last = std::max(last, passes[i]);
        }
    }
    return passes;
}

bool stand_together(const Tree& one, const Tree& other) {
    return !is_gone_before(one, other) && !is_gone_before(other, one);
}

}  // namespace pipward::record
