// SPDX-License-Identifier: MIT
#include "pipward/place/detail/hits.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "pipward/record/presence.h"

namespace pipward::place::detail {

void Hits::add(const Hit& hit) {
    auto& best = best_[hit.tree];
    best_score_ = std::max(best_score_, hit.score);
    if (best == none) {
        best = static_cast<std::uint32_t>(hits_.size());
        hits_.push_back(hit);
    } else if (hit.score > hits_[best].score) {
        hits_[best] = hit;
    }
}

namespace {

double far_from(const std::optional<OwnPosition>& from, const Tree& tree) {
    if (!from) {
        return 0;
    }
    return tree.at ? from->plain_distance(*tree.at) : std::numeric_limits<double>::infinity();
}

}  // namespace

std::vector<Hit> Hits::ranked(const Orchard& orchard, std::size_t limit,
                              const std::optional<OwnPosition>& from, const std::optional<Day>& as_of) && {
    const auto stands = [&](const Tree& tree) { return !as_of || stands_on(tree, *as_of); };
    const auto before = [&](const Hit& a, const Hit& b) {
        if (a.score != b.score) {
            return a.score > b.score;
        }
        const auto& one = orchard.trees[a.tree];
        const auto& other = orchard.trees[b.tree];
        if (stands(one) != stands(other)) {
            return stands(one);
        }
        const double near = far_from(from, one);
        const double far = far_from(from, other);
        if (near != far) {
            return near < far;
        }
        const int by_label = one.label.compare(other.label);
        return by_label != 0 ? by_label < 0 : a.tree < b.tree;
    };
    auto sorted = std::move(hits_);
    const auto end = sorted.begin() + static_cast<std::ptrdiff_t>(std::min(limit, sorted.size()));
    std::partial_sort(sorted.begin(), end, sorted.end(), before);
    sorted.erase(end, sorted.end());
    return sorted;
}

}  // namespace pipward::place::detail
