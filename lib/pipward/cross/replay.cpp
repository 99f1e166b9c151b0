// SPDX-License-Identifier: MIT
#include "pipward/cross/replay.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>
#include <tuple>

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/meeting.h"
#include "pipward/cross/detail/replay_diary.h"
#include "pipward/record/orchard_index.h"

namespace pipward::cross {
namespace {

// With the usual full bloom as the day of the visit, the donor's first flowers stand at balloon so many days
// before its own. Common practice, no source.
constexpr int balloon_before_full = 5;

const CrossWay* followed_way(const SeasonPlan& plan, const std::string& cross) {
    const auto found =
        std::ranges::find_if(plan.ways, [&](const CrossWay& way) { return way.cross == cross && way.best; });
    return found == plan.ways.end() ? nullptr : &*found;
}

/// What is kept of one cross from look to look.
struct Watch {
    int flowers = 0;  // asked for at the first look
    std::optional<PollenWay> way;
    int flips = 0;
    bool late = false;
    std::vector<double> said;
};

/// The plans of a spring as they follow each other.
class Watcher {
  public:
    void see(const SeasonPlan& plan, const detail::ReplayDiary& diary, const std::vector<CrossGoal>& goals) {
        for (const auto& goal : goals) {
            auto& watch = of[goal.code];
            const auto* way = followed_way(plan, goal.code);
            if (way == nullptr || diary.worked(goal.code) > 0) {
                continue;
            }
            watch.flowers = std::max(watch.flowers, way->flowers);
            // Pollen that was collected or forced as planned lies in a store then: the way is the same.
            const bool in_hand = way->lot.has_value();
            watch.flips += watch.way && !in_hand && *watch.way != way->way ? 1 : 0;
            watch.way = way->way;
            watch.said.push_back(way->chance.value);
        }
        for (const auto& task : plan.field) {
            announce(task.cross, fmt::format("{}", to_text(task.work)), task.do_to < plan.as_of);
        }
        for (const auto& task : plan.pollen) {
            for (const auto& cross : task.for_crosses) {
                announce(cross, fmt::format("{} {}", to_text(task.work), task.donor),
                         task.do_to < plan.as_of);
            }
        }
    }

    std::map<std::string, Watch> of;

  private:
    void announce(const std::string& cross, const std::string& work, bool past_its_last_day) {
        if (announced_.insert({cross, work}).second && past_its_last_day) {
            of[cross].late = true;
        }
    }

    std::set<std::pair<std::string, std::string>> announced_;
};

struct Lived {
    Watcher watcher;
    std::map<std::string, double> done;
};

template <class ForecastOn>
Lived live_through(const ReplaySpring& spring, const detail::TrueBloom& bloom, ForecastOn forecast_on) {
    Lived lived;
    detail::ReplayDiary diary(spring, bloom);
    const Day end = anchor_of(spring.truth.season, spring.truth.hemisphere) + season_last;
    for (std::size_t i = 0; i < spring.looks.size(); ++i) {
        const auto plan = diary.plan(forecast_on(spring.looks[i]));
        lived.watcher.see(plan, diary, spring.orchard.goals);
        diary.work(plan, spring.looks[i], i + 1 < spring.looks.size() ? spring.looks[i + 1] : end);
    }
    for (const auto& goal : spring.orchard.goals) {
        const int asked = lived.watcher.of[goal.code].flowers;
        lived.done[goal.code] =
            asked > 0 ? std::min(1.0, static_cast<double>(diary.worked(goal.code)) / asked) : 0;
    }
    return lived;
}

bool meets_on_usual_days(const ReplaySpring& spring, const detail::TrueBloom& bloom, const CrossGoal& goal,
                         const std::string& donor) {
    const auto visit = spring.usual_full_bloom.find(goal.seed_parent);
    const auto donor_full = spring.usual_full_bloom.find(donor);
    if (visit == spring.usual_full_bloom.end() || donor_full == spring.usual_full_bloom.end()) {
        return false;
    }
    const auto& pollen = *bloom.of({}, donor);
    const auto on = bloom.season_day(visit->second);
    const auto collected = bloom.season_day(donor_full->second) - balloon_before_full;
    return pollen.balloon.first <= collected && collected <= pollen.balloon.last &&
           collected + detail::drying_days <= on &&
           bloom.of({}, goal.seed_parent)->workable.test(on - season_first);
}

// Whom the styles refuse gives no seed, whoever plans.
bool is_refused(const SeasonPlan& plan, const std::string& cross, const std::string& donor) {
    return std::ranges::any_of(plan.ways, [&](const CrossWay& way) {
        return way.cross == cross && way.donor == donor && way.s_match == lineage::SMatch::none;
    });
}

void fill_rivals(ReplayedCross& row, const ReplaySpring& spring, const detail::TrueBloom& bloom,
                 const CrossGoal& goal, const SeasonPlan& plan) {
    const OrchardIndex index(spring.orchard);
    const auto* seed_parent = bloom.of({}, goal.seed_parent);
    row.observed = spring.observed.contains(goal.seed_parent);
    for (const auto& [donor, share] : index.donors(goal.pollen_parent)) {
        const auto* pollen = bloom.of({}, donor);
        row.observed = row.observed && spring.observed.contains(donor);
        if (seed_parent == nullptr || pollen == nullptr || is_refused(plan, goal.code, donor)) {
            continue;
        }
        row.done[2] += detail::can_use_fresh(*seed_parent, *pollen) ? share.value : 0;
        row.done[3] += meets_on_usual_days(spring, bloom, goal, donor) ? share.value : 0;
    }
}

}  // namespace

std::string_view to_text(Planner planner) {
    switch (planner) {
        case Planner::as_planned:
            return "as planned";
        case Planner::with_hindsight:
            return "with hindsight";
        case Planner::fresh_only:
            return "fresh only";
        case Planner::fixed_calendar:
            break;
    }
    return "fixed calendar";
}

SpringReplay replay(const ReplaySpring& spring) {
    const detail::TrueBloom bloom(spring.truth);
    const auto planned = live_through(spring, bloom, spring.forecast_on);
    const auto known = [&](Day day) {
        auto forecast = spring.truth;
        forecast.as_of = day;
        return forecast;
    };
    const auto hindsight = live_through(spring, bloom, known);
    const auto first = detail::ReplayDiary(spring, bloom).plan(spring.truth);
    SpringReplay result;
    for (const auto& goal : spring.orchard.goals) {
        const auto& watch = planned.watcher.of.at(goal.code);
        ReplayedCross row{spring.truth.season, goal.code, false, goal.seedlings_wanted, {},
                          watch.flips,         watch.late};
        row.done = {planned.done.at(goal.code), hindsight.done.at(goal.code)};
        fill_rivals(row, spring, bloom, goal, first);
        for (const double chance : watch.said) {
            result.chances.push_back({chance, row.done[0] >= success_from});
        }
        result.crosses.push_back(std::move(row));
    }
    return result;
}

std::vector<Reliability> reliability(std::span<const ChanceSaid> chances) {
    constexpr int tenths = 10;
    std::map<int, Reliability> of_tenth;
    for (const auto& one : chances) {
        const int tenth = std::min(tenths - 1, static_cast<int>(one.chance * tenths));
        auto& row = of_tenth[tenth];
        row.from = static_cast<double>(tenth) / tenths;
        ++row.n;
        row.said += one.chance;
        row.came += one.came ? 1 : 0;
    }
    std::vector<Reliability> rows;
    for (auto& [tenth, row] : of_tenth) {
        row.said /= row.n;
        row.came /= row.n;
        rows.push_back(row);
    }
    return rows;
}

}  // namespace pipward::cross
