// SPDX-License-Identifier: MIT
#include "pipward/bloom/forecast.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "pipward/bloom/detail/climate.h"
#include "pipward/bloom/detail/not_yet.h"
#include "pipward/bloom/detail/row_fit.h"
#include "pipward/bloom/detail/season_update.h"
#include "pipward/bloom/detail/window.h"
#include "pipward/record/presence.h"

namespace pipward::bloom {
namespace {

struct Place {
    std::string accession;
    double offset = 0;  // from the station, kelvin

    auto operator<=>(const Place&) const = default;
};

// The structures of the model in every member's season, by offset.
using MemberRuns = std::map<double, std::vector<std::vector<detail::StructureRun>>>;

struct Work {
    const BloomModel& model;
    const weather::CurrentSeason& current;
    Day as_of;
    Latitude latitude;
    const Ladders& ladders;
    std::vector<detail::LentSeason> past;
    std::vector<const StageSeen*> seen;
    std::vector<const NotYet*> not_yet;  // the last of each accession of which no flower was seen open
    CurveStore* store = nullptr;
    MemberRuns runs;
    BloomForecast forecast;
};

void require_members(const Work& work) {
    if (work.past.empty()) {
        throw Error(Trouble::input,
                    {Level::error, "weather_day", "", "day", "",
                     say("No past season is complete, so nothing can replace the days to come."),
                     say("Add the station's days of at least one past season.")});
    }
}

void choose_members(Work& work, std::span<const weather::SeasonWeather> past) {
    work.past = detail::lent_seasons(past, work.current.weather.season);
    for (const auto& lent : work.past) {
        work.forecast.members.push_back(lent.season);
    }
}

void choose_seen(Work& work, std::span<const StageSeen> seen) {
    for (const auto& stage : seen) {
        if (stage.season == work.forecast.season && stage.observed_on <= work.as_of &&
            work.model.needs.contains(stage.accession)) {
            work.seen.push_back(&stage);
        }
    }
    std::ranges::sort(work.seen, {},
                      [](const StageSeen* s) { return std::tie(s->accession, s->observed_on, s->fid); });
}

bool flowers_were_seen(const Work& work, const std::string& accession) {
    return std::ranges::any_of(work.seen, [&](const StageSeen* seen) {
        return seen->accession == accession && seen->stage >= first_bloom;
    });
}

void choose_not_yet(Work& work, std::span<const NotYet> looks) {
    std::map<std::string, const NotYet*> last;
    for (const auto& look : looks) {
        if (look.season == work.forecast.season && look.observed_on <= work.as_of &&
            work.model.needs.contains(look.accession) && !flowers_were_seen(work, look.accession)) {
            auto& kept = last[look.accession];
            kept = kept == nullptr || kept->observed_on < look.observed_on ? &look : kept;
        }
    }
    for (const auto& [accession, look] : last) {
        work.not_yet.push_back(look);
    }
}

std::set<Place> places_of(const Work& work, const Station& station, std::span<const Tree> trees,
                          std::span<const Accession> accessions) {
    std::set<Place> places;
    std::set<std::string> with_tree;
    for (const auto& tree : trees) {
        if (tree.accession && stands_on(tree, work.as_of) && work.model.needs.contains(*tree.accession)) {
            places.insert({*tree.accession, tree_offset(tree, station).degrees});
            with_tree.insert(*tree.accession);
        }
    }
    for (const auto& accession : accessions) {
        if (!with_tree.contains(accession.name) && work.model.needs.contains(accession.name)) {
            places.insert({accession.name, 0.0});
        }
    }
    return places;
}

void make_curves(Work& work, double offset) {
    if (work.forecast.curves.contains(offset)) {
        return;
    }
    const auto& now = work.current.weather;
    const auto known = season_curves(now.days, now.first, work.latitude, {offset});
    auto& members = work.forecast.curves[offset];
    for (const auto& [season, warmer] : work.past) {
        const auto& lent = *work.store->at(season, offset + warmer.degrees);
        members.push_back(with_remainder(known, lent, known.known_days));
    }
    auto& runs = work.runs[offset];
    for (const auto& member : members) {
        runs.push_back(detail::runs_of(work.model.method, member, {offset}));
    }
}

UsualLevel drift_now(const Work& work) {
    return work.model.drift.at(work.forecast.season.year);
}

double forecast_day(const Work& work, const Need& need, const std::vector<detail::StructureRun>& runs) {
    return detail::weighted_day(work.model.weights, need.amount, runs) - drift_now(work).mean;
}

std::vector<double> member_days(const Work& work, const Need& need, double offset) {
    std::vector<double> days;
    for (const auto& runs : work.runs.at(offset)) {
        days.push_back(forecast_day(work, need, runs));
    }
    return days;
}

double season_spread(const Work& work) {
    return std::hypot(work.model.season_sd_days, drift_now(work).sd);
}

double own_spread(const Need& need) {
    return std::hypot(need.own_sd_days, need.sd_days);
}

// The notes of this spring as one member's weather reads them.
std::vector<detail::ObservationDeparture> departures(const Work& work, std::size_t member) {
    std::vector<detail::ObservationDeparture> told;
    const Day anchor = anchor_of(work.forecast.season, work.forecast.hemisphere);
    for (const auto* seen : work.seen) {
        const auto& need = work.model.needs.at(seen->accession);
        const auto& curves = work.forecast.curves.at(seen->offset.degrees)[member];
        const auto& runs = work.runs.at(seen->offset.degrees)[member];
        const double observed = full_bloom_from(seen->place, seen->observed_on - anchor, curves);
        const double expected = forecast_day(work, need, runs);
        told.push_back(
            {seen->accession, observed - expected, seen->place.sd_days, own_spread(need), need.species});
    }
    return told;
}

// The same of those that had no flower yet.
void add_waiting(std::vector<detail::ObservationDeparture>& told, const Work& work, std::size_t member) {
    const Day anchor = anchor_of(work.forecast.season, work.forecast.hemisphere);
    for (const auto* look : work.not_yet) {
        const auto& need = work.model.needs.at(look->accession);
        const auto& curves = work.forecast.curves.at(look->offset.degrees)[member];
        const auto ladder = work.ladders.of(need.species);
        const double earliest =
            full_bloom_from({ladder.first, ladder.first_sd_days}, look->observed_on - anchor, curves);
        const double expected = forecast_day(work, need, work.runs.at(look->offset.degrees)[member]);
        const double spread = std::hypot(season_spread(work), own_spread(need));
        if (const auto waited = detail::told_by_waiting(earliest - expected, spread, ladder.first_sd_days)) {
            told.push_back({look->accession, waited->departure, waited->sd, own_spread(need), need.species});
        }
    }
}

std::vector<detail::SeasonUpdate> member_updates(const Work& work) {
    std::vector<detail::SeasonUpdate> updates;
    for (std::size_t member = 0; member < work.past.size(); ++member) {
        auto told = departures(work, member);
        add_waiting(told, work, member);
        updates.push_back(detail::update_season(told, season_spread(work)));
    }
    return updates;
}

// Each member's weather reads the notes in its own way; what spread they leave is the members' mean.
void move_window(BloomWindow& window, const std::vector<detail::SeasonUpdate>& updates, const Need& need) {
    double season_sd = 0;
    double left_sd = 0;
    for (std::size_t member = 0; member < updates.size(); ++member) {
        const auto moved = updates[member].of(window.accession, need.species, own_spread(need));
        window.full_bloom[member] += moved.by;
        season_sd += moved.season_sd;
        left_sd += moved.own_sd;
    }
    window.season_sd_days = season_sd / static_cast<double>(updates.size());
    window.own_sd_days = left_sd / static_cast<double>(updates.size());
}

int observations_seen(const Work& work, const std::string& accession) {
    return static_cast<int>(std::ranges::count_if(
        work.seen, [&](const StageSeen* seen) { return seen->accession == accession; }));
}

std::vector<Sentence> borrowing_warnings(const Need& need) {
    switch (need.source) {
        case NeedSource::mid_parent:
            return {say("No bloom observations of its own: forecast between its parents.")};
        case NeedSource::one_parent:
            return {
                say("No bloom observations of its own: forecast between its one known parent and the "
                    "orchard's mean.")};
        case NeedSource::orchard_mean:
            return {
                say("No bloom observations of its own or of its parents: forecast at the orchard's mean.")};
        case NeedSource::own_observations:
            break;
    }
    return need.seasons == 1 ? std::vector{say("Bloom observations of one season only.")}
                             : std::vector<Sentence>{};
}

std::vector<Sentence> warnings_of(const Work& work, const BloomWindow& window, const Need& need) {
    auto warnings = borrowing_warnings(need);
    if (window.full.p90 < work.as_of && observations_seen(work, window.accession) == 0) {
        warnings.push_back(
            say("Full bloom is over by the model (since {}) but no observation of this spring says so.",
                to_iso(window.full.p50)));
    }
    return warnings;
}

BloomWindow window_at(const Work& work, const Place& place,
                      const std::vector<detail::SeasonUpdate>& updates) {
    const auto& need = work.model.needs.at(place.accession);
    BloomWindow window;
    window.accession = place.accession;
    window.offset = {place.offset};
    window.full_bloom = member_days(work, need, place.offset);
    window.source = need.source;
    window.observations_used = need.observations + observations_seen(work, place.accession);
    move_window(window, updates, need);
    window.ladder = work.ladders.of(need.species);
    detail::fill_quantiles(window, work.forecast);
    window.warnings = warnings_of(work, window, need);
    return window;
}

std::map<Place, std::size_t> make_windows(Work& work, const std::set<Place>& places) {
    const auto updates = member_updates(work);
    std::map<Place, std::size_t> index;
    for (const auto& place : places) {
        index.emplace(place, work.forecast.windows.size());
        work.forecast.windows.push_back(window_at(work, place, updates));
    }
    return index;
}

void place_trees(Work& work, const Station& station, std::span<const Tree> trees,
                 const std::map<Place, std::size_t>& index) {
    for (const auto& tree : trees) {
        if (!tree.accession || !stands_on(tree, work.as_of)) {
            continue;
        }
        const auto found = index.find({*tree.accession, tree_offset(tree, station).degrees});
        if (found != index.end()) {
            work.forecast.trees.push_back({&tree, found->second});
        }
    }
}

// The window nearest to the mean offset of the accession's trees stands for it.
void choose_standing(BloomForecast& forecast) {
    struct Sum {
        double degrees = 0;
        int trees = 0;
    };
    std::map<std::string, Sum> sums;
    for (const auto& tree : forecast.trees) {
        auto& sum = sums[forecast.windows[tree.window].accession];
        sum.degrees += forecast.windows[tree.window].offset.degrees;
        ++sum.trees;
    }
    for (std::size_t i = 0; i < forecast.windows.size(); ++i) {
        const auto& window = forecast.windows[i];
        const auto [entry, added] = forecast.of_accession.emplace(window.accession, i);
        if (added) {
            continue;
        }
        const auto& sum = sums[window.accession];
        const double mean = sum.degrees / std::max(1, sum.trees);
        const double before = forecast.windows[entry->second].offset.degrees;
        if (std::abs(window.offset.degrees - mean) < std::abs(before - mean)) {
            entry->second = i;
        }
    }
}

}  // namespace

Day BloomForecast::day_of(double season_day) const {
    return anchor_of(season, hemisphere) + static_cast<int>(std::floor(season_day + 0.5));
}

BloomForecast forecast_bloom(const BloomModel& model, const ForecastGround& ground) {
    static const CurvesOf none;
    CurveStore own(none, ground.past, ground.latitude);
    Work work{model, ground.current, ground.as_of, ground.latitude, ground.ladders, {}, {}, {}, {}, {}, {}};
    work.store = ground.store != nullptr ? ground.store : &own;
    work.forecast.season = ground.current.weather.season;
    work.forecast.hemisphere = hemisphere_of(ground.latitude);
    work.forecast.as_of = ground.as_of;
    work.forecast.method = model.method;
    choose_members(work, ground.past);
    require_members(work);
    choose_seen(work, ground.seen);
    choose_not_yet(work, ground.not_yet);
    const auto places = places_of(work, ground.station, ground.trees, ground.accessions);
    for (const auto& place : places) {
        make_curves(work, place.offset);
    }
    for (const auto* stage : work.seen) {
        make_curves(work, stage->offset.degrees);
    }
    for (const auto* look : work.not_yet) {
        make_curves(work, look->offset.degrees);
    }
    place_trees(work, ground.station, ground.trees, make_windows(work, places));
    choose_standing(work.forecast);
    return std::move(work.forecast);
}

}  // namespace pipward::bloom
