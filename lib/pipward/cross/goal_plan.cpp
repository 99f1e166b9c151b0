// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/goal_plan.h"

#include <algorithm>

#include "pipward/cross/detail/flowers_needed.h"
#include "pipward/cross/detail/why.h"
#include "pipward/record/descent.h"

namespace pipward::cross::detail {
namespace {

double best_chance(const std::vector<WayOutlook>& ways) {
    double best = 0;
    for (const auto& way : ways) {
        best = std::max(best, way.row.chance.value);
    }
    return best;
}

bool has_chance(const DonorPlan& donor) {
    return best_chance(donor.ways) >= worth_working && donor.crossing.share.value > 0;
}

std::vector<DonorPlan> open_donors(Bench& bench, const CrossGoal& goal) {
    std::vector<DonorPlan> donors;
    for (const auto& share : donors_of(bench.book, goal)) {
        auto& donor = donors.emplace_back();
        donor.crossing = crossing_of(bench, goal, share);
        donor.ways = way_outlooks(bench, donor.crossing);
    }
    return donors;
}

// Of those that have a chance, or of all where none has one.
double total_share(const std::vector<DonorPlan>& donors) {
    double all = 0;
    double with_chance = 0;
    for (const auto& donor : donors) {
        all += donor.crossing.share.value;
        with_chance += has_chance(donor) ? donor.crossing.share.value : 0;
    }
    return with_chance > 0 ? with_chance : all;
}

// One number of flowers serves all donors of a goal, so what ploidy costs is averaged by their shares.
double mean_attrition(const std::vector<DonorPlan>& donors) {
    const double total = total_share(donors);
    const bool any = std::ranges::any_of(donors, has_chance);
    double mean = 0;
    for (const auto& donor : donors) {
        if (!any || has_chance(donor)) {
            mean += donor.crossing.ploidy.factor * donor.crossing.share.value / std::max(total, 1e-12);
        }
    }
    return mean;
}

int flowers_for(const Bench& bench, const CrossGoal& goal, double attrition) {
    const auto& assume = bench.assumptions;
    const auto set = fruit_set_of(assume, genus_of(bench.book, goal.seed_parent));
    const FlowerFate fate{set.value, assume.seeds_per_fruit, assume.seeds_per_fruit_variance,
                          assume.seed_to_seedling.value * attrition, assume.fruit_set_sd};
    return std::max(0, flowers_needed(goal.seedlings_wanted, fate, assume.confidence));
}

PollenNeed need_of(const Bench& bench, const DonorPlan& donor, int flowers, double total) {
    const auto& crossing = donor.crossing;
    const auto pollinated = bench.stock.pollinated_for_cross.find(crossing.goal->code);
    PollenNeed need;
    need.pollinated = pollinated == bench.stock.pollinated_for_cross.end() ? 0 : pollinated->second;
    need.flowers = std::max(0, flowers - need.pollinated);
    need.share = {total > 0 ? std::min(1.0, crossing.share.value / total) : 0};
    need.compatible = crossing.compatibility.pollen_share;
    need.per_flower = pollen_per_flower(bench.stock, crossing.donor, bench.assumptions.pollen_per_flower);
    need.serves = bench.assumptions.flowers_per_donor_flower;
    need.triploid = crossing.ploidy.triploid;
    const auto trees = bench.stock.trees.find(crossing.goal->seed_parent);
    need.trees = trees == bench.stock.trees.end() ? 1 : static_cast<int>(trees->second.size());
    return need;
}

void say_who_stands_in(std::vector<DonorPlan>& donors) {
    const bool any = std::ranges::any_of(donors, has_chance);
    for (auto& donor : donors) {
        if (donor.crossing.blend && any && !has_chance(donor)) {
            for (auto& way : donor.ways) {
                way.sentences.push_back(say("The other members of the blend take over its share."));
            }
        }
    }
}

// The same goal a year on: only where keeping pollen from now is what it takes.
std::optional<WayOutlook> next_spring(Bench& bench, const DonorPlan& donor) {
    const auto& crossing = donor.crossing;
    const bool refused = crossing.compatibility.match == lineage::SMatch::none;
    if (crossing.next_season || refused || crossing.donors.empty() ||
        donor.need.flowers <= 0 || best_chance(donor.ways) >= doubtful_chance) {
        return std::nullopt;
    }
    CrossGoal goal = *crossing.goal;
    goal.season.year += 1;
    const auto then = crossing_of(bench, goal, {crossing.donor, crossing.share});
    auto ways = way_outlooks(bench, then);
    LotLedger unused;
    choose_ways(ways, donor.need, unused, unused);
    finish_ways(ways, donor.need);
    auto& best = ways.front();
    const bool frozen = best.collected_now && best.row.chance.value >= fair_chance;
    return frozen ? std::optional{std::move(best)} : std::nullopt;
}

void advise_next_spring(DonorPlan& donor) {
    const auto& row = donor.for_next_spring->row;
    for (auto& way : donor.ways) {
        if (way.row.way == PollenWay::kept_from_last_year) {
            way.sentences.push_back(
                say("Collect pollen of {} by {} this spring and freeze it: the cross can then be made next "
                    "year.",
                    row.donor, to_iso(*row.collect_to)));
        }
    }
}

}  // namespace

bool worth_doing(const WayOutlook& way) {
    return way.row.best && way.row.chance.value >= worth_working && way.row.flowers > 0;
}

GoalPlan plan_goal(Bench& bench, const CrossGoal& goal, LotLedger& ledger) {
    GoalPlan plan;
    plan.goal = &goal;
    plan.donors = open_donors(bench, goal);
    plan.next_season = goal.season.year == bench.forecast->season.year + 1;
    const double total = total_share(plan.donors);
    const int flowers = flowers_for(bench, goal, mean_attrition(plan.donors));
    say_who_stands_in(plan.donors);
    const LotLedger before = ledger;
    for (auto& donor : plan.donors) {
        donor.need = need_of(bench, donor, flowers, total);
        choose_ways(donor.ways, donor.need, before, ledger);
        donor.for_next_spring = next_spring(bench, donor);
    }
    return plan;
}

std::vector<WayOutlook*> followed(DonorPlan& donor) {
    std::vector<WayOutlook*> ways;
    for (auto& way : donor.ways) {
        if (worth_doing(way)) {
            ways.push_back(&way);
        }
    }
    return ways;
}

std::vector<const WayOutlook*> followed(const DonorPlan& donor) {
    std::vector<const WayOutlook*> ways;
    for (const auto& way : donor.ways) {
        if (worth_doing(way)) {
            ways.push_back(&way);
        }
    }
    return ways;
}

void finish_plan(GoalPlan& plan) {
    for (auto& donor : plan.donors) {
        if (donor.for_next_spring) {
            advise_next_spring(donor);
        }
        finish_ways(donor.ways, donor.need);
    }
}

}  // namespace pipward::cross::detail
