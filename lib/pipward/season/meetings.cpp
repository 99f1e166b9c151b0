// SPDX-License-Identifier: MIT
#include "pipward/season/meetings.h"

#include <fmt/format.h>

#include <algorithm>

namespace pipward::season {
namespace {

std::string code_of(std::size_t pair, bool turned) {
    return fmt::format("{}{}", pair, turned ? "b" : "a");
}

CrossGoal goal_of(const std::string& code, Season season, const std::string& seed_parent,
                  const std::string& pollen_parent, int seedlings) {
    CrossGoal goal;
    goal.code = code;
    goal.season = season;
    goal.seed_parent = seed_parent;
    goal.pollen_parent = pollen_parent;
    goal.seedlings_wanted = seedlings;
    return goal;
}

/// The first way that is followed, with the flowers of all: lots and what makes up for them share them.
std::optional<cross::CrossWay> way_of(const cross::SeasonPlan& plan, const std::string& code) {
    std::optional<cross::CrossWay> all;
    for (const auto& way : plan.ways) {
        if (way.best && way.cross == code) {
            if (all) {
                all->flowers += way.flowers;
            } else {
                all = way;
            }
        }
    }
    return all;
}

bool is_better(const std::optional<cross::CrossWay>& a, const std::optional<cross::CrossWay>& b) {
    if (!a || !b) {
        return a.has_value();
    }
    return std::pair(a->verdict, -a->chance.value) < std::pair(b->verdict, -b->chance.value);
}

/// Lends the place other goals, and gives back its own whatever happens.
class OtherGoals {
  public:
    OtherGoals(Orchard& orchard, std::vector<CrossGoal> goals) : orchard_(orchard), own_(std::move(goals)) {
        std::swap(orchard_.goals, own_);
    }
    ~OtherGoals() { std::swap(orchard_.goals, own_); }
    OtherGoals(const OtherGoals&) = delete;
    OtherGoals& operator=(const OtherGoals&) = delete;

  private:
    Orchard& orchard_;
    std::vector<CrossGoal> own_;
};

}  // namespace

std::vector<CrossMeeting> meetings_of(const std::vector<std::pair<std::string, std::string>>& pairs,
                                      const std::vector<int>& seedlings, Place& place,
                                      const bloom::BloomForecast& forecast,
                                      const cross::CrossingAssumptions& assumptions) {
    std::vector<CrossGoal> goals;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const auto& [one, other] = pairs[i];
        goals.push_back(goal_of(code_of(i, false), place.season, one, other, seedlings[i]));
        goals.push_back(goal_of(code_of(i, true), place.season, other, one, seedlings[i]));
    }
    const OtherGoals lent(place.orchard, std::move(goals));
    const auto plan = cross::plan_season(forecast, place.orchard, assumptions);
    std::vector<CrossMeeting> meetings;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const auto straight = way_of(plan, code_of(i, false));
        const auto turned = way_of(plan, code_of(i, true));
        const bool turn = is_better(turned, straight);
        const auto& [one, other] = pairs[i];
        meetings.push_back({turn ? other : one, turn ? one : other, turn ? turned : straight});
    }
    return meetings;
}

}  // namespace pipward::season
