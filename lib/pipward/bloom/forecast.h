// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <map>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/curve_store.h"
#include "pipward/bloom/model.h"
#include "pipward/weather/season_weather.h"

namespace pipward::bloom {

/// Three days of a distribution.
struct DayQuantiles {
    Day p10;  ///< one chance in ten that it comes earlier
    Day p50;  ///< the median
    Day p90;  ///< one chance in ten that it comes later
};

/// One accession at one offset this season.
struct BloomWindow {
    std::string accession;  ///< its name
    CelsiusStep offset;     ///< of its trees' temperature from the station's; 0 where it has no tree
    /// One a member of the ensemble: fractional season day of full bloom by the fit and this spring's notes,
    /// before the spreads below.
    std::vector<double> full_bloom;
    double season_sd_days = 0;  ///< spread shared by every accession this season
    double own_sd_days = 0;     ///< spread of this accession alone (parameter, borrowing, residual)
    DayQuantiles first;         ///< BBCH 60
    DayQuantiles full;          ///< BBCH 65
    DayQuantiles end;           ///< BBCH 69
    NeedSource source = NeedSource::own_observations;  ///< where the accession's need comes from
    int observations_used = 0;  ///< bloom observations behind it: those of past seasons and those of this one
    /// Borrowed needs, a bloom that is past with no note of it; whole sentences, none where all is well.
    std::vector<Sentence> warnings;
    StageLadder ladder{};  ///< of its species: how it goes through bloom
};

/// A tree and the window it shares with its accession's trees at the same offset.
struct TreeBloom {
    const Tree* tree = nullptr;  ///< never null; into ForecastGround::trees
    std::size_t window = 0;      ///< into BloomForecast::windows
};

/// The season's bloom, with the weather that made it, for whoever meets windows with each other.
struct BloomForecast {
    Season season;                                       ///< the one forecast
    Hemisphere hemisphere = Hemisphere::north;           ///< of the station
    Day as_of;                                           ///< notes made and trees planted later have no say
    BloomMethod method = BloomMethod::averaged;          ///< of the model that forecast
    std::vector<Season> members;                         ///< the past seasons lent, moved to today's climate
    std::map<double, std::vector<SeasonCurves>> curves;  ///< by offset in degrees: one a member
    std::vector<BloomWindow> windows;                    ///< accession at each of its trees' offsets
    std::vector<TreeBloom> trees;                        ///< every living tree with an accession
    std::map<std::string, std::size_t> of_accession;     ///< the window that stands for the accession

    Day day_of(double season_day) const;  ///< the calendar day that a fractional season day falls on
};

/// Equally likely standardised residuals (mean 0, sd 1; Student's t with 4 degrees of freedom, scaled),
/// used wherever a spread is added: no random draws.
std::span<const double> residual_nodes();

/// Season day at which a member's flowers stand `after_full` degree-days on the ladder from full bloom on
/// season day `full_day`.
double ladder_day(const SeasonCurves& curves, double full_day, DegreeDays after_full);

/// What a forecast is made from. All of it must outlive the call, `trees` the forecast as well.
struct ForecastGround {
    const weather::CurrentSeason& current;         ///< forecast days in it are taken as they stand
    Day as_of;                                     ///< the day from which one looks ahead
    std::span<const weather::SeasonWeather> past;  ///< the nearest lend their remainders to the ensemble
    Latitude latitude;                             ///< of the station
    const Station& station;                        ///< by whose height the trees' temperatures move
    std::span<const Tree> trees;                   ///< of the book, gone ones too
    std::span<const Accession> accessions;         ///< of the book
    std::span<const StageSeen> seen{};  ///< stages noted; those of this season up to as_of move the windows
    std::span<const NotYet> not_yet{};  ///< in the same way: what has not bloomed by a day blooms later
    Ladders ladders{};                  ///< what is not in it goes by the usual ladder of its species
    CurveStore* store = nullptr;        ///< the past seasons' curves, where many forecasts share them
};

/// Observed days, forecast days, then each past season's remainder as one member; the model's spreads on top.
/// Living trees are those that stand on as_of; an accession without one stands at the station's height.
/// Stages seen move the windows of their own accession most and all others by what they tell of the season. A
/// missing note tells nothing. Throws Error (input) without any past season to lend its remainder.
BloomForecast forecast_bloom(const BloomModel& model, const ForecastGround& ground);

}  // namespace pipward::bloom
