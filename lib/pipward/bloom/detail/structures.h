// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/model.h"
#include "pipward/bloom/season_curves.h"

/// The structures that the methods are made of: each says what is summed and from when, and leaves one
/// number free, the amount an accession needs.
namespace pipward::bloom::detail {

/// What a structure sums: one of the season's curves, or days alone.
enum class Summed {
    sigmoid,      ///< HeatCurve::sigmoid; the first four are numbered as there
    arrhenius,    ///< HeatCurve::arrhenius
    linear_4_25,  ///< HeatCurve::linear_4_25
    linear_6_25,  ///< HeatCurve::linear_6_25
    degree_days,  ///< single-sine degree-days above degree_day_base
    calendar,     ///< nothing: the amount is the season day itself
};
/// What tells when a sum begins.
enum class StartBy {
    season_day,  ///< the same day every season
    chill,       ///< the day on which so much chill is reached
};

/// One way to calculate full bloom with one number left free.
struct Structure {
    Summed summed = Summed::sigmoid;         ///< what is summed
    StartBy start_by = StartBy::season_day;  ///< how `start` is meant
    double start = 0;                        ///< a season day (its first hour), or chill portions
    double overlap = 0;                      ///< k: how much less heat a winter richer in chill asks for
    double penalty = 0;                      ///< -2 log of the prior weight
};

/// A chill start that a winter has not reached by 1 March begins there. The calendar starts end there too,
/// and by then a tree short of chill is no longer asleep but slow, which the overlap stands for.
inline constexpr SeasonDay latest_start = 59;
/// Where the overlap reads the winter's chill: 1 March.
inline constexpr SeasonDay chill_read_on = 59;
/// A tree higher up blooms later by so many days a kelvin: 3.28 days a 100 m (Hopkins 1918; Swiss cherries
/// 1951-2025: 3.2 to 3.4, recomputed) at 6.5 kelvin a kilometre.
inline constexpr double days_later_per_kelvin = 5.05;

/// Shape: averaged 132 (4 heat curves x 5 calendar and 6 chill starts x 3 overlaps), chill_then_heat 24
/// (4 heat curves x 6 chill starts), degree_days 1, mean_day and recent_mean 1.
std::span<const Structure> structures_of(BloomMethod method);

/// One structure in one season at one place, made ready for many questions.
struct StructureRun {
    std::span<const double> sums;  ///< into the season's curves; empty for the calendar
    double at_start = 0;           ///< the sum at the structure's start
    double factor = 1;             ///< overlap: the season asks for amount x factor
    double later = 0;              ///< days that the calendar adds for the offset
};

/// Shape: one a structure. `curves` must outlive it.
std::vector<StructureRun> runs_of(BloomMethod method, const SeasonCurves& curves, CelsiusStep offset);
/// What the structure had collected by `season_day`, as the amount of a season of usual chill.
double amount_by(const StructureRun& run, double season_day);
/// The season day on which `amount` is collected.
double day_of(const StructureRun& run, double amount);

}  // namespace pipward::bloom::detail
