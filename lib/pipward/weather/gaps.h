// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/weather/daily_series.h"

namespace pipward::weather {

/// Gaps of at most this many days are interpolated between their neighbours; longer ones are left open.
/// Common practice, no source.
inline constexpr int longest_filled_gap = 5;

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

}  // namespace pipward::weather
