// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/structures.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/math/squared.h"

namespace pipward::bloom {
namespace {

constexpr std::array heat_curves{detail::Summed::sigmoid, detail::Summed::arrhenius,
                                 detail::Summed::linear_4_25, detail::Summed::linear_6_25};
constexpr std::array calendar_starts{0.0, 14.0, 31.0, 45.0, 59.0};      // season days
constexpr std::array chill_starts{30.0, 40.0, 50.0, 60.0, 70.0, 80.0};  // chill portions
constexpr std::array overlaps{0.0, 0.03, 0.06};  // a share less heat for 10 portions more

constexpr double usual_chill = 60;  // portions; amounts are those of a winter with so much

// What 76 springs of cherries, 62 of apples and 62 of pears taught, as if they had been four of the orchard's
// own: starts in early February are likeliest; of chill starts those near 68 portions, each less than those.
constexpr double likely_start = 35;  // 5 February, as a season day
constexpr double start_scale = 20;   // days
constexpr double likely_chill = 68;
constexpr double chill_scale = 18;  // portions
constexpr double chill_penalty = 1;

double start_penalty(const detail::Structure& structure) {
    return structure.start_by == detail::StartBy::chill
               ? math::squared((structure.start - likely_chill) / chill_scale) + chill_penalty
               : math::squared((structure.start - likely_start) / start_scale);
}

// Little overlap, and heat curves that rise ever faster, are likelier too.
double penalty_of(const detail::Structure& structure) {
    const bool convex =
        structure.summed == detail::Summed::sigmoid || structure.summed == detail::Summed::arrhenius;
    return start_penalty(structure) + 20 * structure.overlap - (convex ? 0.7 : 0.0);
}

void add_structure(std::vector<detail::Structure>& into, detail::Structure structure) {
    structure.penalty = penalty_of(structure);
    into.push_back(structure);
}

std::vector<detail::Structure> make_averaged() {
    std::vector<detail::Structure> made;
    for (const auto curve : heat_curves) {
        for (const double overlap : overlaps) {
            for (const double day : calendar_starts) {
                add_structure(made, {curve, detail::StartBy::season_day, day, overlap});
            }
            for (const double portions : chill_starts) {
                add_structure(made, {curve, detail::StartBy::chill, portions, overlap});
            }
        }
    }
    return made;
}

std::vector<detail::Structure> make_chill_then_heat() {
    std::vector<detail::Structure> made;
    for (const auto curve : heat_curves) {
        for (const double portions : chill_starts) {
            made.push_back({curve, detail::StartBy::chill, portions});
        }
    }
    return made;
}

std::span<const double> sums_of(detail::Summed summed, const SeasonCurves& curves) {
    switch (summed) {
        case detail::Summed::calendar:
            return {};
        case detail::Summed::degree_days:
            return curves.degree_days;
        default:
            return curves.heat[static_cast<std::size_t>(summed)];
    }
}

double start_day(const detail::Structure& structure, const SeasonCurves& curves) {
    if (structure.start_by == detail::StartBy::season_day) {
        return structure.start - 0.5;  // the first hour of the day, sums being read at noon
    }
    return std::min<double>(day_reaching(curves.chill, structure.start), detail::latest_start);
}

// Chill and heat overlap: a winter richer in chill asks for less heat. The form is ours, F exp(-k (CP - 60) /
// 10); that overlap does better than strict sequence: Darbyshire et al. 2017, Agric. For. Meteorol. 240:67,
// apple at 14 sites (abstract seen, volume from memory).
double overlap_factor(double overlap, const SeasonCurves& curves) {
    const double chill = value_at(curves.chill, detail::chill_read_on);
    return std::exp(-overlap * (chill - usual_chill) / 10);
}

detail::StructureRun run_of(const detail::Structure& structure, const SeasonCurves& curves,
                            CelsiusStep offset) {
    detail::StructureRun run;
    run.sums = sums_of(structure.summed, curves);
    if (run.sums.empty()) {
        run.later = -detail::days_later_per_kelvin * offset.degrees;
        return run;
    }
    run.at_start = value_at(run.sums, start_day(structure, curves));
    run.factor = structure.overlap > 0 ? overlap_factor(structure.overlap, curves) : 1;
    return run;
}

Sentence curve_name(detail::Summed summed) {
    switch (summed) {
        case detail::Summed::sigmoid:
            return say("sigmoid heat");
        case detail::Summed::arrhenius:
            return say("Arrhenius heat");
        case detail::Summed::linear_4_25:
            return say("heat above 4 °C");
        case detail::Summed::linear_6_25:
            return say("heat above 6 °C");
        case detail::Summed::degree_days:
            return say("degree-days");
        case detail::Summed::calendar:
            break;
    }
    return say("mean date");
}

Sentence from_calendar(std::size_t which, const Sentence& curve) {
    switch (which) {
        case 0:
            return say("{} from 1 January (south: 2 July)", curve);
        case 1:
            return say("{} from 15 January (south: 16 July)", curve);
        case 2:
            return say("{} from 1 February (south: 2 August)", curve);
        case 3:
            return say("{} from 15 February (south: 16 August)", curve);
        default:
            return say("{} from 1 March (south: 30 August)", curve);
    }
}

Sentence without_overlap(const detail::Structure& structure) {
    const auto curve = curve_name(structure.summed);
    if (structure.start_by == detail::StartBy::chill) {
        return say("{} from {:.0f} chill portions", curve, structure.start);
    }
    const auto which = std::ranges::find(calendar_starts, structure.start) - calendar_starts.begin();
    return from_calendar(static_cast<std::size_t>(which), curve);
}

}  // namespace

std::span<const detail::Structure> detail::structures_of(BloomMethod method) {
    static const auto averaged = make_averaged();
    static const auto chill_then_heat = make_chill_then_heat();
    static const std::array degree_days{detail::Structure{detail::Summed::degree_days}};
    static const std::array mean_day{detail::Structure{detail::Summed::calendar}};
    switch (method) {
        case BloomMethod::mean_day:
        case BloomMethod::recent_mean:
            return mean_day;
        case BloomMethod::degree_days:
            return degree_days;
        case BloomMethod::chill_then_heat:
            return chill_then_heat;
        case BloomMethod::averaged:
            break;
    }
    return averaged;
}

std::vector<detail::StructureRun> detail::runs_of(BloomMethod method, const SeasonCurves& curves,
                                                  CelsiusStep offset) {
    std::vector<detail::StructureRun> runs;
    const auto structures = detail::structures_of(method);
    runs.reserve(structures.size());
    for (const auto& structure : structures) {
        runs.push_back(run_of(structure, curves, offset));
    }
    return runs;
}

double detail::amount_by(const detail::StructureRun& run, double season_day) {
    if (run.sums.empty()) {
        return season_day - run.later;
    }
    return (value_at(run.sums, season_day) - run.at_start) / run.factor;
}

double detail::day_of(const detail::StructureRun& run, double amount) {
    if (run.sums.empty()) {
        return amount + run.later;
    }
    return day_reaching(run.sums, run.at_start + amount * run.factor);
}

Sentence structure_name(BloomMethod method, int structure) {
    const auto structures = detail::structures_of(method);
    if (structure < 0 || structure >= static_cast<int>(structures.size())) {
        return {};
    }
    const auto& named = structures[static_cast<std::size_t>(structure)];
    if (named.summed == detail::Summed::calendar) {
        return curve_name(named.summed);
    }
    const auto name = without_overlap(named);
    return named.overlap > 0 ? say("{}, overlap {:.2f}", name, named.overlap) : name;
}

}  // namespace pipward::bloom
