// SPDX-License-Identifier: MIT
#include "pipward/season/plan_replay.h"

#include <algorithm>
#include <set>

#include "pipward/bloom/observed_stages.h"
#include "pipward/record/orchard_index.h"
#include "pipward/value/complaint.h"

namespace pipward::season {
namespace {

// From mid-February in the north on: the first branches are cut then.
constexpr SeasonDay first_look = 45;
constexpr int springs_before = 3;
constexpr double replay_begins = 0.15;  // of the work; before it the book is read

Day day_in(const Place& place, SeasonDay day) {
    return anchor_of(place.season, place.hemisphere) + day;
}

std::vector<CrossGoal> goals_moved_to(const Orchard& orchard, Season from, Season to, Day standing) {
    const OrchardIndex index(orchard);
    const auto stands = [&](const std::string& parent) {
        const auto donors = index.donors(parent);
        return !donors.empty() && std::ranges::all_of(donors, [&](const DonorShare& donor) {
            return index.has_tree(donor.donor, standing);
        });
    };
    std::vector<CrossGoal> goals;
    for (auto goal : orchard.goals) {
        if (goal.season == from && index.has_tree(goal.seed_parent, standing) && stands(goal.pollen_parent)) {
            goal.season = to;
            goals.push_back(std::move(goal));
        }
    }
    return goals;
}

void empty_the_book(Orchard& orchard) {
    orchard.pollen_lots.clear();
    orchard.pollen_tests.clear();
    orchard.pollen_moves.clear();
    orchard.branch_works.clear();
    orchard.pollinations.clear();
    orchard.fruit_set_counts.clear();
    orchard.fruits.clear();
}

/// The orchard as it was in one past spring.
class PastSpring {
  public:
    PastSpring(const Place& now, Season season, Season goals_of, const PlanWish& wish)
        : place_(now), whole_(now.series) {
        place_.season = season;
        assumptions_ = assumptions_of(wish, now.orchard, day_in(place_, season_first - 1));
        place_.orchard.goals = goals_moved_to(now.orchard, goals_of, season, day_in(place_, first_look));
        empty_the_book(place_.orchard);
        place_.as_of = day_in(place_, season_last);
        notes_ = read_past(place_);
        place_.as_of = day_in(place_, season_first - 1);
        past_ = read_past(place_);
        model_ = fit_past(place_, past_, wish.method).model;
    }

    bloom::BloomForecast forecast_on(Day day) {
        place_.as_of = day;
        place_.series = whole_;
        place_.series.days.resize(static_cast<std::size_t>(
            std::clamp(day - whole_.first + 1, 0, static_cast<int>(whole_.days.size()))));
        const auto current =
            weather::current_season(place_.series, place_.season, place_.hemisphere, place_.as_of);
        return bloom::forecast_bloom(
            model_, {current, day, past_.seasons, place_.latitude, place_.station, place_.orchard.trees,
                     place_.orchard.accessions, notes_.stages, notes_.not_yet, past_.ladders});
    }

    cross::SpringReplay replay(int days_between_looks) {
        const auto truth = what_bloomed();
        std::vector<Day> looks;
        for (SeasonDay day = first_look; day <= season_last; day += days_between_looks) {
            looks.push_back(day_in(place_, day));
        }
        return cross::replay({place_.orchard, truth, looks, [this](Day day) { return forecast_on(day); },
                              usual_full_bloom(), observed_, assumptions_});
    }

    bool has_goals() const { return !place_.orchard.goals.empty(); }

  private:
    bloom::BloomForecast what_bloomed() {
        auto truth = forecast_on(day_in(place_, season_last));
        truth.as_of = day_in(place_, season_first);
        const auto observed = bloom::observed_stages(notes_.stages, place_.hemisphere);
        for (auto& window : truth.windows) {
            window.season_sd_days = 0;
            window.own_sd_days = 0;
            window.ladder.first_sd_days = 0;
            window.ladder.end_sd_days = 0;
            const auto found = observed.find({place_.season, window.accession});
            if (found != observed.end() && found->second.contains(full_bloom)) {
                observed_[window.accession] = true;
                std::ranges::fill(window.full_bloom, found->second.at(full_bloom));
            }
        }
        return truth;
    }

    std::map<std::string, Day> usual_full_bloom() const {
        std::map<std::string, Day> usual;
        for (const auto& row : need_rows(place_, past_, model_)) {
            if (row.usual_full_bloom) {
                const Season latest = past_.seasons.back().season;
                usual[row.need->accession] =
                    day_in(place_, *row.usual_full_bloom - anchor_of(latest, place_.hemisphere));
            }
        }
        return usual;
    }

    Place place_;
    weather::DailySeries whole_;
    Past notes_;
    Past past_;
    bloom::BloomModel model_;
    std::map<std::string, bool> observed_;
    cross::CrossingAssumptions assumptions_;
};

std::optional<Season> season_of_goals(const Place& place) {
    std::optional<Season> latest;
    for (const auto& goal : place.orchard.goals) {
        if (goal.season <= place.season && (!latest || *latest < goal.season)) {
            latest = goal.season;
        }
    }
    return latest;
}

std::vector<Season> springs_of(Place place, const std::optional<int>& first) {
    std::set<Season> noted;
    const auto past = read_past(place);
    for (const auto& [spring, stages] : bloom::observed_stages(past.stages, place.hemisphere)) {
        if (std::ranges::any_of(past.seasons,
                                [&](const auto& whole) { return whole.season == spring.season; })) {
            noted.insert(spring.season);
        }
    }
    std::vector<Season> springs(noted.begin(), noted.end());
    const std::ptrdiff_t least = first ? 1 : springs_before;
    springs.erase(springs.begin(), springs.begin() + std::min(least, std::ssize(springs)));
    std::erase_if(springs, [&](Season season) { return first && season.year < *first; });
    return springs;
}

}  // namespace

std::vector<cross::SpringReplay> replay_springs(const Place& place, const ReplayRequest& request,
                                                const Step& step) {
    std::vector<cross::SpringReplay> replays;
    const auto goals_of = season_of_goals(place);
    const auto springs = goals_of ? springs_of(place, request.first_season) : std::vector<Season>{};
    for (std::size_t i = 0; i < springs.size(); ++i) {
        const double done = static_cast<double>(i) / static_cast<double>(springs.size());
        step(replay_begins + (1 - replay_begins) * done, say("Replaying the spring of {}", springs[i].year));
        PastSpring spring(place, springs[i], *goals_of, request.wish);
        if (spring.has_goals()) {
            replays.push_back(spring.replay(request.days_between_looks));
        }
    }
    if (replays.empty()) {
        throw Error(Trouble::input,
                    {about_table(Level::error, "bloom_observation",
                                 say("No past spring has both observations of bloom, with others before it, "
                                     "and crosses whose parents stood then."),
                                 say("Note bloom for some springs, or enter crosses of this season."))});
    }
    return replays;
}

}  // namespace pipward::season
