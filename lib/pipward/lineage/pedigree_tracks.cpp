// SPDX-License-Identifier: MIT
#include "pipward/lineage/detail/pedigree_tracks.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace pipward::lineage::detail {
namespace {

constexpr double apart = 0.7;  // nearer lines could not be told from each other

// A level part that arrives at a height where another one leaves: the other must have turned before.
bool must_turn_first(const LinkRun& first, const LinkRun& second) {
    return first.link != second.link && std::abs(second.to - first.from) < apart &&
           std::abs(first.to - first.from) >= apart;
}

// Runs in an order in which who must turn first comes first; of circles the topmost.
std::vector<std::size_t> turning_order(const std::vector<LinkRun>& runs) {
    std::vector<int> before(runs.size());
    for (std::size_t i = 0; i < runs.size(); ++i) {
        before[i] = static_cast<int>(
            std::ranges::count_if(runs, [&](const LinkRun& run) { return must_turn_first(run, runs[i]); }));
    }
    std::vector<std::size_t> open(runs.size());
    std::iota(open.begin(), open.end(), std::size_t{0});
    std::vector<std::size_t> order;
    while (!open.empty()) {
        const auto next = std::ranges::min_element(open, {}, [&](std::size_t i) { return before[i]; });
        order.push_back(*next);
        for (const auto i : open) {
            before[i] -= must_turn_first(runs[*next], runs[i]) ? 1 : 0;
        }
        open.erase(next);
    }
    return order;
}

// Or so near end to end that one would seem to go on in the other.
bool lie_on_each_other(const LinkRun& a, const LinkRun& b) {
    constexpr double end_to_end = 2.5;
    return std::min(a.from, a.to) < std::max(b.from, b.to) + end_to_end &&
           std::min(b.from, b.to) < std::max(a.from, a.to) + end_to_end;
}

}  // namespace

int give_tracks(std::vector<LinkRun>& runs) {
    std::ranges::sort(runs, {},
                      [](const LinkRun& run) { return std::pair(std::min(run.from, run.to), run.link); });
    int tracks = 1;
    std::vector<std::size_t> given;
    for (const auto i : turning_order(runs)) {
        auto& run = runs[i];
        for (const auto other : given) {
            run.track =
                must_turn_first(runs[other], run) ? std::max(run.track, runs[other].track + 1) : run.track;
        }
        const auto is_taken = [&](std::size_t other) {
            return runs[other].track == run.track && lie_on_each_other(runs[other], run);
        };
        while (std::ranges::any_of(given, is_taken)) {
            ++run.track;
        }
        tracks = std::max(tracks, run.track + 1);
        given.push_back(i);
    }
    return tracks;
}

}  // namespace pipward::lineage::detail
