// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/not_yet.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/distributions.h"
#include "pipward/math/squared.h"

namespace pipward::bloom::detail {
namespace {

constexpr double surely_early = -3.5;  // deviations: a bound so far below tells nothing
constexpr double far_out = 6;          // beyond, the tail is so thin that one bound is as good as another

}  // namespace

std::optional<ToldDeparture> told_by_waiting(double least, double sd, double noise) {
    const double whole = std::hypot(sd, noise);
    const double bound = std::min(least / whole, far_out);
    if (bound < surely_early) {
        return std::nullopt;
    }
    const double hazard = math::normal_density(bound, 1) / math::normal_below(-bound);
    const double mean = whole * hazard;
    const double variance = math::squared(whole) * (1 + bound * hazard - math::squared(hazard));
    const double precision = 1 / variance - 1 / math::squared(whole);
    return ToldDeparture{mean / variance / precision, std::sqrt(1 / precision + math::squared(noise))};
}

}  // namespace pipward::bloom::detail
