// SPDX-License-Identifier: MIT
#include "pipward/bloom/observation.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "pipward/bloom/detail/ladders.h"
#include "pipward/bloom/detail/observation_findings.h"
#include "pipward/bloom/detail/odd_observations.h"
#include "pipward/math/quantile.h"
#include "pipward/math/robust.h"
#include "pipward/math/squared.h"

namespace pipward::bloom {
namespace {

using detail::Told;

// Notes of one spring on one accession share the observer and the trees: however many, they are not better
// than this.
// These figures: common practice, no source.
constexpr double least_sd_days = 0.7;
constexpr double usual_disagreement = 1.5;  // days, between two notes beyond their own uncertainty
// Of weighing again: a fixed number, so that no threshold decides.
constexpr int rounds = 5;

struct GroupKey {
    std::string accession;
    Season season;
    double offset = 0;  // from the station, kelvin

    auto operator<=>(const GroupKey&) const = default;
};

std::vector<double> days_of(const std::vector<Told>& group) {
    std::vector<double> days;
    days.reserve(group.size());
    for (const auto& told : group) {
        days.push_back(told.full_bloom);
    }
    return days;
}

// Inverse variance, less for a note far from the middle (iteratively reweighted: math/robust.h).
std::vector<double> weights_about(double middle, const std::vector<Told>& group) {
    std::vector<double> weights;
    weights.reserve(group.size());
    for (const auto& told : group) {
        const double sd = told.seen->place.sd_days;
        const double apart = (told.full_bloom - middle) / std::hypot(sd, usual_disagreement);
        weights.push_back(math::student_weight(apart) / math::squared(sd));
    }
    return weights;
}

struct Averaged {
    double day = 0;
    double sd_days = 1;
};

// Begins at the median, which one slip of the pen among several notes cannot move far.
Averaged average_of(const std::vector<Told>& group) {
    Averaged averaged{math::median(days_of(group)), 1};
    for (int round = 0; round < rounds; ++round) {
        const auto weights = weights_about(averaged.day, group);
        double total = 0;
        double sum = 0;
        double squares = 0;
        for (std::size_t i = 0; i < group.size(); ++i) {
            total += weights[i];
            sum += weights[i] * group[i].full_bloom;
            squares += weights[i] * math::squared(group[i].full_bloom - averaged.day);
        }
        averaged.day = sum / total;
        // The variance of a weighted mean is 1 / total where the notes are as good as they say; where they
        // disagree by more than that, squares / n exceeds 1 and widens it.
        averaged.sd_days = std::sqrt((1 + squares / static_cast<double>(group.size())) / total);
    }
    averaged.sd_days = std::max(least_sd_days, averaged.sd_days);
    return averaged;
}

Observation observation_of(const std::vector<Told>& group) {
    const auto averaged = average_of(group);
    const auto& first = *group.front().seen;
    Observation observation{first.accession,  first.season, first.offset, averaged.day,
                            averaged.sd_days, {},           {},           {}};
    for (const auto& told : group) {
        observation.observations.push_back(told.seen->fid);
        observation.observed_on.push_back(told.seen->observed_on);
        observation.told.push_back(told.full_bloom);
    }
    return observation;
}

bool within_season(double full_bloom) {
    return full_bloom > season_first && full_bloom < season_last;
}

}  // namespace

double full_bloom_from(const LadderPlace& place, double season_day, const SeasonCurves& curves) {
    if (place.after_full.value == 0) {
        return season_day;
    }
    const double observed = value_at(curves.ladder, season_day);
    return day_reaching(curves.ladder, observed - place.after_full.value);
}

CurvesOf curves_for_observations(std::span<const StageSeen> stages,
                                 std::span<const weather::SeasonWeather> seasons, Latitude latitude) {
    std::set<double> offsets;
    for (const auto& seen : stages) {
        offsets.insert(seen.offset.degrees);
    }
    CurvesOf curves;
    for (const auto& weather : seasons) {
        for (const double offset : offsets) {
            curves.emplace(CurvesKey{weather.season, offset},
                           season_curves(weather.days, weather.first, latitude, {offset}));
        }
    }
    return curves;
}

ObservationsReport observe(const Orchard& orchard, const Station& station, Hemisphere hemisphere, Day as_of,
                           const CurvesOf& curves) {
    auto placed = stages_seen(orchard, station, hemisphere, as_of);
    ObservationsReport report{
        {}, std::move(placed.stages), std::move(placed.not_yet), {}, std::move(placed.findings)};
    report.ladders = detail::learn_ladders(report.stages, curves, hemisphere, season_of(as_of, hemisphere));
    detail::place_stages(report.stages, report.ladders);
    std::map<GroupKey, std::vector<Told>> groups;
    detail::ObservationsOfSeasons without;
    for (const auto& seen : report.stages) {
        const auto found = curves.find({seen.season, seen.offset.degrees});
        if (found == curves.end()) {
            ++without[seen.season];
            continue;
        }
        const int season_day = seen.observed_on - anchor_of(seen.season, hemisphere);
        const double full = full_bloom_from(seen.place, season_day, found->second);
        if (season_day > season_last || !within_season(full)) {
            report.findings.push_back(detail::out_of_season(seen));
            continue;
        }
        groups[{seen.accession, seen.season, seen.offset.degrees}].push_back({&seen, full});
    }
    std::vector<std::vector<Told>> springs;
    for (const auto& [key, group] : groups) {
        report.observations.push_back(observation_of(group));
        springs.push_back(group);
    }
    detail::add_odd_observations(report.findings, report.stages, springs);
    detail::add_without_weather(report.findings, without, season_of(as_of, hemisphere));
    return report;
}

}  // namespace pipward::bloom
