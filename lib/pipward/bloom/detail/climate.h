// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/wandering_level.h"
#include "pipward/value/quantity.h"
#include "pipward/weather/season_weather.h"

/// Past springs stand in for the days to come. They are not equally fit for it: where the springs have grown
/// warmer, an old one is moved to what is usual now.
namespace pipward::bloom::detail {

/// So many past seasons at most lend their remainder, the nearest ones: what moves besides the mean is less
/// and less that of older ones. As many as the recent mean has.
inline constexpr int nearest_seasons = 15;

/// A past season that lends its remainder.
struct LentSeason {
    Season season;       ///< the past one
    CelsiusStep warmer;  ///< to be added to its days, whole climate_steps
};

/// Moves are rounded to this: a third of a day of bloom.
inline constexpr CelsiusStep climate_step{0.1};

/// What is usual from 15 February to 30 April (south: 16 August to 30 October) at a station, year by year.
WanderingLevel spring_climate(std::span<const weather::SeasonWeather> seasons);

/// The seasons that stand in for the days to come in `target`, in order, each moved from the climate of its
/// years to the warm and to the cool edge of what is usual in the target's: twice in the answer. `target`
/// itself lends nothing, and does not tell of its own climate.
std::vector<LentSeason> lent_seasons(std::span<const weather::SeasonWeather> seasons, Season target);

}  // namespace pipward::bloom::detail
