// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/value/season.h"
#include "pipward/weather/daily_series.h"

namespace pipward::weather {

/// Gaps of at most this many days are interpolated between their neighbours; longer ones are left open.
/// Common practice, no source.
inline constexpr int longest_filled_gap = 5;
/// In winter's rest, from the season's first day to this one (31 January in the north), longer ones may be:
/// with the weather known, ten days interpolated there move full bloom by 0.03 to 0.08 days and change its
/// RMSE by at most 0.02; five in February move it by 0.2 to 0.4, in April by 0.9 (tests/bloom/bloom_report on
/// 60 springs of apples and pears at Klein-Altendorf).
inline constexpr int longest_filled_winter_gap = 14;
inline constexpr SeasonDay winter_rest_ends = 30;

/// Days without a reading between two that have one.
struct Gap {
    Day first;            ///< the first day without one
    int length = 0;       ///< days
    bool filled = false;  ///< whether it was short enough to be interpolated
};

/// A series after its gaps were looked at.
struct GapReport {
    DailySeries series;     ///< with the short gaps filled, their days marked DayOrigin::interpolated
    std::vector<Gap> gaps;  ///< all of them, filled or left open, in day order
};

/// Fills short gaps inside the series linearly, minimum and maximum each on its own. Ends are never extended.
GapReport fill_gaps(const DailySeries& series, int longest = longest_filled_gap);
/// The same, gaps that lie wholly in winter's rest being filled up to longest_filled_winter_gap.
GapReport fill_gaps(const DailySeries& series, Hemisphere hemisphere);

}  // namespace pipward::weather
