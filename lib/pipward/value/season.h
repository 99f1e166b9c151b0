// SPDX-License-Identifier: MIT
#pragma once

#include <compare>

#include "pipward/value/day.h"
#include "pipward/value/quantity.h"
#include "pipward/value/spoken.h"

namespace pipward::value {

/// Half of the Earth: it tells where in the calendar a season lies.
enum class Hemisphere {
    north,  ///< seasons are counted from 1 January
    south,  ///< seasons are counted from 2 July (1 July in a leap year)
};

/// South below 0 degrees; the equator is of the north.
Hemisphere hemisphere_of(Latitude latitude);

/// A bloom season, named by the calendar year in which the trees bloom.
struct Season {
    int year = 0;  ///< of the bloom, in both hemispheres

    auto operator<=>(const Season&) const = default;
};

/// A place in a season: days after the season's anchor, which is 1 January in the north and
/// 182 days later (2 July, 1 July in a leap year) in the south, so that one set of starting days serves both.
using SeasonDay = int;

inline constexpr SeasonDay season_first = -92;  ///< 1 October in the north: chill is counted from here
inline constexpr SeasonDay season_last = 180;   ///< 30 June in the north (29 June in a leap year)
inline constexpr int season_length = season_last - season_first + 1;  ///< 273 days

/// The season's anchor day (season day 0).
Day anchor_of(Season season, Hemisphere hemisphere);
/// The season whose span season_first .. season_last + the rest of the summer holds `day`:
/// days from 1 October (north) belong to the coming year's season.
Season season_of(Day day, Hemisphere hemisphere);

}  // namespace pipward::value
