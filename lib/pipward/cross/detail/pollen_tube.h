// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "pipward/value/quantity.h"

namespace pipward::cross::detail {

/// How far pollen tubes get in one day: one hundred brings them home. Whole °C from 5 to 15.
struct TubeIndex {
    double per_day = 0;        ///< 0..50
    bool inside_table = true;  ///< false where the mean lies outside 5..15 °C
};

/// Williams 1970 (Long Ashton Report; the table as reproduced in Westwood and in Jackson 2003), linear
/// between whole degrees. Above 15 °C the figure for 15 is used. Below 5 nothing is counted: pollen
/// may fail to germinate there (Penn State Extension, Orchard Pollination).
TubeIndex tube_index(Celsius daily_mean);

/// How the tubes come home.
struct TubeJourney {
    double days = 0;           ///< the last day counted by the part of it that was needed
    int home_on_day = 0;       ///< 1 is the day of pollination
    bool inside_table = true;  ///< false where any day on the way lay outside 5..15 °C
};

/// The way of the tubes from pollination on, one daily mean after the other, until the indices reach one
/// hundred. Nothing where the days run out before.
std::optional<TubeJourney> tube_journey(std::span<const double> daily_means_c);

}  // namespace pipward::cross::detail
