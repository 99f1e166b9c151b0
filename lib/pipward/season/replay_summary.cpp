// SPDX-License-Identifier: MIT
#include "pipward/season/replay_summary.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/squared.h"

namespace pipward::season {
namespace {

double success_in(const cross::SpringReplay& spring, std::size_t planner) {
    const auto succeeded = std::ranges::count_if(spring.crosses, [&](const cross::ReplayedCross& one) {
        return one.done[planner] >= cross::success_from;
    });
    return static_cast<double>(succeeded);
}

double spread_between(std::span<const cross::SpringReplay> replays, std::size_t planner, double mean) {
    double squares = 0;
    for (const auto& spring : replays) {
        const auto crosses = static_cast<double>(spring.crosses.size());
        squares += math::squared(success_in(spring, planner) / crosses - mean);
    }
    return replays.size() < 2 ? 0 : std::sqrt(squares / static_cast<double>(replays.size() - 1));
}

PlannerScore score_of_planner(std::span<const cross::SpringReplay> replays, std::size_t planner) {
    PlannerScore score;
    score.planner = cross::planners[planner];
    for (const auto& spring : replays) {
        ++score.springs;
        score.crosses += static_cast<int>(spring.crosses.size());
        score.success += success_in(spring, planner);
        for (const auto& one : spring.crosses) {
            score.seedlings += one.wanted * one.done[planner];
        }
    }
    score.success /= std::max(1, score.crosses);
    score.success_sd = spread_between(replays, planner, score.success);
    return score;
}

}  // namespace

ReplayScore score_replays(std::span<const cross::SpringReplay> replays) {
    ReplayScore all;
    for (std::size_t planner = 0; planner < cross::planners.size(); ++planner) {
        all.planners.push_back(score_of_planner(replays, planner));
    }
    const double known = all.planners[1].seedlings;
    for (auto& score : all.planners) {
        score.of_hindsight = known > 0 ? score.seedlings / known : 0;
    }
    std::vector<cross::ChanceSaid> chances;
    for (const auto& spring : replays) {
        all.crosses.insert(all.crosses.end(), spring.crosses.begin(), spring.crosses.end());
        chances.insert(chances.end(), spring.chances.begin(), spring.chances.end());
    }
    all.chances = cross::reliability(chances);
    all.late = static_cast<int>(std::ranges::count_if(all.crosses, &cross::ReplayedCross::late));
    const auto flipped = std::ranges::count_if(all.crosses, [](const auto& one) { return one.flips > 0; });
    all.flipped =
        static_cast<double>(flipped) / static_cast<double>(std::max<std::size_t>(1, all.crosses.size()));
    return all;
}

}  // namespace pipward::season
