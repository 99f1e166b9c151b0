// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/value/finding.h"
#include "pipward/value/season.h"
#include "pipward/weather/daily_series.h"
#include "pipward/weather/hours.h"

namespace pipward::weather {

/// The days of one season at a station, from season day `season_first` on, without holes.
/// Shape: at most season_length days; fewer where the record stops earlier.
struct SeasonWeather {
    Season season;                  ///< whose weather it is
    Day first;                      ///< the day of season_first
    std::vector<DayExtremes> days;  ///< from `first` on, one a day; short gaps are filled
};

/// A season is worth fitting and lending to the ensemble when its days reach at least this far:
/// 30 April in the north, past any bloom that a note could tell of in most orchards.
inline constexpr SeasonDay shortest_season_end = 119;

/// A station's whole past seasons.
struct SeasonsReport {
    std::vector<SeasonWeather> seasons;  ///< the usable ones, in order
    Findings findings;  ///< a warning for each season refused, saying why; notes for filled gaps
};

/// Cuts a station's record into whole past seasons: those that are complete (after short gaps are filled)
/// from season_first to shortest_season_end or beyond, and end before `as_of`. Forecast rows are not used.
/// A season is cut at a later long gap.
SeasonsReport past_seasons(const DailySeries& station, Hemisphere hemisphere, Day as_of);

/// The season in progress: days observed up to and including `as_of`, then unbroken forecast days.
struct CurrentSeason {
    SeasonWeather weather;  ///< observed days first, then forecast ones; may be empty of days
    int observed_days = 0;  ///< of weather.days, the rest are forecast
    Findings findings;      ///< notes for filled gaps, a warning for days that are missing before as_of
};

/// Throws Error (input) where a long gap spoils the days from season_first to the last reading before as_of.
/// A record that stops before as_of gives fewer days and a warning that says how many are missing.
CurrentSeason current_season(const DailySeries& station, Season season, Hemisphere hemisphere, Day as_of);

}  // namespace pipward::weather
