// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/agreement.h"

#include <algorithm>
#include <set>

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/how.h"
#include "pipward/cross/detail/insurance.h"
#include "pipward/cross/detail/way_outlook.h"

namespace pipward::cross::detail {
namespace {

struct Days {
    Day from;
    Day to;
};

// Days on which one or another of these has pollen.
Days union_of(const std::vector<WayOutlook*>& ways) {
    Days days{*ways.front()->row.use_from, *ways.front()->row.use_to};
    for (const auto* way : ways) {
        days.from = std::min(days.from, *way->row.use_from);
        days.to = std::max(days.to, *way->row.use_to);
    }
    return days;
}

// Days on which every donor has pollen; nothing where there are none.
std::optional<Days> common_days(GoalPlan& plan) {
    std::optional<Days> common;
    for (auto& donor : plan.donors) {
        if (const auto ways = followed(donor); !ways.empty()) {
            const auto days = union_of(ways);
            common = common ? Days{std::max(common->from, days.from), std::min(common->to, days.to)} : days;
        }
    }
    return common && common->from <= common->to ? common : std::nullopt;
}

void use_lot_until(const Bench& bench, DonorPlan& donor, WayOutlook& way) {
    way.lot = lot_outlook(bench.stock, *way.lot->lot, *way.row.use_to, bench.assumptions);
    way.germination = way.lot->at_use.mean;
    way.row.chance = {way.meets * way.lot->usable};
    fill_amounts(way, donor.need);
    tell_how_again(way, bench.assumptions.usable_germination);
}

// Days from collecting or cutting to the first use.
int days_to_ready(const WayOutlook& way) {
    if (way.row.way == PollenWay::forced_branch) {
        return way.days_in_the_room + drying_days;
    }
    return way.row.store == Store::room ? fresh_from_days : drying_days;
}

// What is collected after this is too late for the days of use, and fresh pollen collected before them is
// old.
void narrow_collecting(WayOutlook& way) {
    if (!way.row.collect_to) {
        return;
    }
    way.row.collect_to = std::min(*way.row.collect_to, *way.row.use_to - days_to_ready(way));
    if (way.row.store == Store::room) {
        way.row.collect_from = std::max(*way.row.collect_from, *way.row.use_from - fresh_to_days);
    }
    way.row.collect_from = std::min(*way.row.collect_from, *way.row.collect_to);
}

// A way of a blend's member that has pollen on none of the common days keeps its own: another way of the same
// member covers these.
void narrow(const Bench& bench, DonorPlan& donor, WayOutlook& way, Days common) {
    const Days days{std::max(*way.row.use_from, common.from), std::min(*way.row.use_to, common.to)};
    if (days.from > days.to) {
        return;
    }
    way.row.use_from = days.from;
    way.row.use_to = days.to;
    narrow_collecting(way);
    if (way.lot) {
        use_lot_until(bench, donor, way);
    }
}

// A blend is brought as one, so its members' pollen must be there on the same days.
void agree_on_days(const Bench& bench, GoalPlan& plan) {
    const auto common = common_days(plan);
    plan.together = common.has_value();
    if (!common || plan.donors.size() < 2) {
        return;
    }
    for (auto& donor : plan.donors) {
        for (auto* way : followed(donor)) {
            narrow(bench, donor, *way, *common);
        }
    }
}

bool stores_now(const WayOutlook& way) {
    return !way.lot && way.collected_now && way.row.way == PollenWay::kept_this_spring && way.row.collect_to;
}

std::set<std::string> stored_anyway(std::vector<GoalPlan>& goals) {
    std::set<std::string> donors;
    for (auto& plan : goals) {
        for (auto& donor : plan.donors) {
            const auto ways = followed(donor);
            if (std::ranges::any_of(ways, [](const auto* way) { return stores_now(*way); })) {
                donors.insert(donor.crossing.donor);
            }
        }
    }
    return donors;
}

// Where pollen of the donor is stored for another cross, it is collected once for both.
void take_from_store(DonorPlan& donor) {
    auto* fresh = way_that(donor.ways, [](const WayOutlook& way) {
        return worth_doing(way) && !way.lot && way.row.way == PollenWay::same_day;
    });
    auto* stored =
        way_that(donor.ways, [](const WayOutlook& way) { return !way.row.best && stores_now(way); });
    if (fresh != nullptr && stored != nullptr &&
        stored->row.chance.value >= fresh->row.chance.value - as_good) {
        stored->sentences.push_back(
            say("Pollen of {} is stored for another cross anyway: it is collected once for both.",
                donor.crossing.donor));
        follow_instead(donor.ways, *fresh, *stored);
    }
}

void collect_once(std::vector<GoalPlan>& goals) {
    const auto stored = stored_anyway(goals);
    for (auto& plan : goals) {
        for (auto& donor : plan.donors) {
            if (!plan.next_season && stored.contains(donor.crossing.donor)) {
                take_from_store(donor);
            }
        }
    }
}

}  // namespace

std::vector<Collection> agree(const Bench& bench, std::vector<GoalPlan>& goals) {
    collect_once(goals);
    for (auto& plan : goals) {
        agree_on_days(bench, plan);
        insure(bench, plan);
    }
    auto collections = collections_of(bench, goals);
    for (auto& plan : goals) {
        finish_plan(plan);
    }
    return collections;
}

}  // namespace pipward::cross::detail
