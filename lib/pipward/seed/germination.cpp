// SPDX-License-Identifier: MIT
#include "pipward/seed/germination.h"

namespace pipward::seed {
namespace {

double half_of(int germinated, HalfRule rule) {
    return rule == HalfRule::coolbear ? (germinated + 1) / 2.0 : germinated / 2.0;
}

}  // namespace

std::optional<double> days_to_half(std::span<const GerminationPoint> points, HalfRule rule) {
    if (points.empty() || points.back().germinated == 0) {
        return std::nullopt;
    }
    const double target = half_of(points.back().germinated, rule);
    GerminationPoint before;
    for (const auto& point : points) {
        if (point.germinated >= target) {
            return before.day + (target - before.germinated) * (point.day - before.day) /
                                    (point.germinated - before.germinated);
        }
        before = point;
    }
    return points.back().day;
}

std::optional<double> mean_germination_days(std::span<const GerminationPoint> points) {
    double days = 0;
    int before = 0;
    for (const auto& point : points) {
        days += point.day * (point.germinated - before);
        before = point.germinated;
    }
    return before == 0 ? std::nullopt : std::optional{days / before};
}

}  // namespace pipward::seed
