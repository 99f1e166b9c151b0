// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/weather/daily_series.h"

/// Days that no thermometer is likely to have measured: zeros for missing readings, lost decimal points,
/// readings far off those around them, a thermometer that is stuck.
namespace pipward::weather {

/// What is odd about a day.
enum class Oddity {
    zeros_for_missing,  ///< both 0 where the days around are far from it, or three such days on end: no
                        ///< reading
    both_zero,          ///< both 0 among days that are not far from it: rare, but possible
    point_lost,         ///< ten times what the days around would have: 45 for 4.5
    far_off,            ///< far outside of what the days around have: rare, but possible
    unchanging,         ///< the same extremes for days: a thermometer that is stuck, or days made up
};

/// One such day.
struct OddDay {
    Day day;  ///< of an unchanging thermometer the first
    Oddity oddity = Oddity::far_off;
    Celsius reading{};        ///< the one that is odd
    Celsius usual_lowest{};   ///< of the same extreme in the days around, the lowest of them left out
    Celsius usual_highest{};  ///< likewise; both without meaning for zeros and an unchanging thermometer
    int days = 1;             ///< how long it stays so
};

/// A reading counts as far off so many degrees outside of the range of the 7 days before and behind it, of
/// which the lowest and the highest are left out. In 69,000 station-days of five stations (Badajoz, Chicago,
/// Klein-Altendorf, Seattle, Washington) 5 were; one of them was a typing error of its keeper. Recomputed.
inline constexpr double far_off_degrees = 14;
/// So many days on end with the same two extremes are beyond chance: on the same stations 5 were the most.
inline constexpr int days_of_two_unchanging = 6;
/// Likewise of one of the two extremes; 5 were the most, but in the tropics whole degrees repeat.
inline constexpr int days_of_one_unchanging = 15;

/// In day order, at most one of a kind a day. Days of a forecast are not judged, nor do they judge others.
std::vector<OddDay> odd_days(const DailySeries& series);

/// Whether such a day is better left out: nobody can have measured it.
bool is_no_reading(Oddity oddity);

}  // namespace pipward::weather
