// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/forecast.h"

namespace pipward::bloom::detail {

/// Three points of a distribution, as fractional season days.
struct SeasonDayQuantiles {
    double p10 = 0;  ///< one value in ten is less
    double p50 = 0;  ///< the median
    double p90 = 0;  ///< one in ten is greater
};

/// Of values that are equally likely; interpolated between order statistics. Needs at least one.
SeasonDayQuantiles quantiles_of(std::vector<double> values);

/// Full bloom, fractional season days, of every member at every node of the season's and the accession's own
/// spread, both in days.
/// Shape: members x nodes x nodes, all equally likely, the member changing slowest.
std::vector<double> spread_days(std::span<const double> members, double season_sd, double own_sd);

/// The days of a stage that stands on the ladder in every scenario of a window: shape as spread_days().
std::vector<double> stage_days(const BloomForecast& forecast, const BloomWindow& window, Bbch stage);

/// The window's first, full and end, from its members and spreads, each by its member's own warmth.
void fill_quantiles(BloomWindow& window, const BloomForecast& forecast);

}  // namespace pipward::bloom::detail
