// SPDX-License-Identifier: MIT
#include "pipward/seed/sprouting.h"

namespace pipward::seed {
namespace {

double half_of(int sprouted, HalfRule rule) {
    return rule == HalfRule::coolbear ? (sprouted + 1) / 2.0 : sprouted / 2.0;
}

}  // namespace

std::optional<double> days_to_half(std::span<const SproutPoint> points, HalfRule rule) {
    if (points.empty() || points.back().sprouted == 0) {
        return std::nullopt;
    }
    const double target = half_of(points.back().sprouted, rule);
    SproutPoint before;
    for (const auto& point : points) {
        if (point.sprouted >= target) {
            return before.day +
                   (target - before.sprouted) * (point.day - before.day) / (point.sprouted - before.sprouted);
        }
        before = point;
    }
    return points.back().day;
}

std::optional<double> mean_days_to_sprout(std::span<const SproutPoint> points) {
    double days = 0;
    int before = 0;
    for (const auto& point : points) {
        days += point.day * (point.sprouted - before);
        before = point.sprouted;
    }
    return before == 0 ? std::nullopt : std::optional{days / before};
}

}  // namespace pipward::seed
