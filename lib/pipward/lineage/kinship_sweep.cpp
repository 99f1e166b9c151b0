// SPDX-License-Identifier: MIT
#include "pipward/lineage/detail/kinship_sweep.h"

#include <algorithm>

namespace pipward::lineage::detail {
namespace {

constexpr unsigned char source = 1;  // a mixture's member or its ancestor
constexpr unsigned char goal = 2;    // a wanted member or its ancestor

void add(Lanes& to, const Lanes& what, double share) {
    for (std::size_t k = 0; k < sweep_lanes; ++k) {
        to[k] += share * what[k];
    }
}

}  // namespace

KinshipSweep::KinshipSweep(const GeneFlow& flow)
    : flow_(flow), values_(flow.members()), marks_(flow.members()) {}

void KinshipSweep::run(std::span<const double> sampling, std::span<const std::vector<ParentShare>> mixtures,
                       std::span<const int> wanted) {
    mark(mixtures, wanted);
    for (std::size_t k = 0; k < mixtures.size(); ++k) {
        for (const auto& entry : mixtures[k]) {
            values_[entry.parent][k] += entry.share;
        }
    }
    walk_up(sampling);
    walk_down();
}

// Few members of a large pedigree are on the way: they are listed, and their values cleared.
void KinshipSweep::mark(std::span<const std::vector<ParentShare>> mixtures, std::span<const int> wanted) {
    int last = -1;
    const auto begin = [&](int member, unsigned char what) {
        marks_[member] |= what;
        last = std::max(last, member);
    };
    for (const auto& mixture : mixtures) {
        for (const auto& entry : mixture) {
            begin(entry.parent, source);
        }
    }
    for (const int member : wanted) {
        begin(member, goal);
    }
    on_way_up_.clear();
    on_way_down_.clear();
    for (int i = last; i >= 0; --i) {
        auto& own = marks_[i];
        if (own == 0) {
            continue;
        }
        for (const auto& parent : flow_.parents_of(i)) {
            marks_[parent.parent] |= own;
        }
        if ((own & source) != 0) {
            on_way_up_.push_back(i);
        }
        if ((own & goal) != 0) {
            on_way_down_.push_back(i);
        }
        values_[i] = {};
        own = 0;
    }
    std::ranges::reverse(on_way_down_);
}

// x becomes D T' x: every member hands what it has on to its parents.
void KinshipSweep::walk_up(std::span<const double> sampling) {
    for (const int i : on_way_up_) {
        auto& own = values_[i];
        for (const auto& parent : flow_.parents_of(i)) {
            add(values_[parent.parent], own, parent.share);
        }
        for (auto& value : own) {
            value *= sampling[i];
        }
    }
}

// x becomes T x: every member takes its part of what its parents have.
void KinshipSweep::walk_down() {
    for (const int i : on_way_down_) {
        auto& own = values_[i];
        for (const auto& parent : flow_.parents_of(i)) {
            add(own, values_[parent.parent], parent.share);
        }
    }
}

GeneFlow marked_part(const GeneFlow& flow, const std::vector<bool>& marked, std::vector<int>& place) {
    GeneFlow part{{0}, {}};
    place.assign(marked.size(), -1);
    for (std::size_t i = 0; i < marked.size(); ++i) {
        if (!marked[i]) {
            continue;
        }
        place[i] = part.members();
        for (const auto& parent : flow.parents_of(static_cast<int>(i))) {
            part.parents.push_back({place[parent.parent], parent.share});
        }
        part.first.push_back(part.parents.size());
    }
    return part;
}

}  // namespace pipward::lineage::detail
