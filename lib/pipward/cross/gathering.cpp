// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/gathering.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/how.h"
#include "pipward/cross/detail/way_view.h"

namespace pipward::cross::detail {
namespace {

// A way that asks for pollen from a tree.
struct Asker {
    WayOutlook* way = nullptr;
    const PollenNeed* need = nullptr;
    Season season_of_use;
};

struct Draft {
    Gathering gathering;
    std::vector<Asker> askers;
};

struct GatheringKey {
    std::string donor;
    int season = 0;
    PollenWork work = PollenWork::collect;

    auto operator<=>(const GatheringKey&) const = default;
};

PollenWork work_of(const WayOutlook& way) {
    return way.row.way == PollenWay::forced_branch ? PollenWork::cut_branch : PollenWork::collect;
}

// The store that asks least of luck: colder goes before warmer.
Store colder(Store a, Store b) {
    return std::max(a, b);
}

// A branch that is cut already asks for nothing more.
bool asks(const WayOutlook& way) {
    return !way.lot && way.collected_now && way.tree != nullptr && way.row.collect_to;
}

std::vector<Asker> askers_of(std::vector<GoalPlan>& goals) {
    std::vector<Asker> askers;
    for (auto& plan : goals) {
        for (auto& donor : plan.donors) {
            for (auto& way : donor.ways) {
                if (worth_doing(way) || way.row.insurance) {
                    askers.push_back({&way, &donor.need, plan.goal->season});
                }
            }
            if (donor.for_next_spring) {
                askers.push_back({&*donor.for_next_spring, &donor.need, {plan.goal->season.year + 1}});
            }
        }
    }
    std::erase_if(askers, [](const Asker& asker) { return !asks(*asker.way); });
    std::ranges::stable_sort(askers, {}, [](const Asker& asker) {
        const auto& row = asker.way->row;
        return std::tuple(row.collect_to, row.use_to);
    });
    return askers;
}

bool is_fresh(Store store) {
    return store == Store::room;
}

// Kept pollen is collected once for all; fresh pollen must still be fresh for every cross.
bool can_serve(const Gathering& gathering, const CrossWay& row) {
    if (is_fresh(gathering.store) || is_fresh(*row.store)) {
        const Day from = std::max(gathering.from, *row.collect_from);
        const Day to = std::min(gathering.to, *row.collect_to);
        return is_fresh(gathering.store) && is_fresh(*row.store) && from <= to &&
               std::max(gathering.keep_until, *row.use_to) - to <= fresh_to_days;
    }
    return true;
}

Draft& draft_for(std::vector<Draft>& drafts, const Asker& asker) {
    const auto& row = asker.way->row;
    const auto found =
        std::ranges::find_if(drafts, [&](const Draft& draft) { return can_serve(draft.gathering, row); });
    if (found != drafts.end()) {
        return *found;
    }
    auto& gathering = drafts.emplace_back().gathering;
    gathering.work = work_of(*asker.way);
    gathering.donor = row.donor;
    gathering.season_of_use = asker.season_of_use;
    gathering.from = *row.collect_from;
    gathering.to = *row.collect_to;
    gathering.by_median = row.collect_by_median;
    gathering.store = *row.store;
    gathering.keep_until = *row.use_to;
    return drafts.back();
}

void place_at(Gathering& gathering, const WayOutlook& way) {
    gathering.tree = way.tree;
    gathering.early_tree = way.early_tree;
    gathering.balloon_from = way.row.balloon_from;
    gathering.balloon_to = way.row.balloon_to;
}

void join(Draft& draft, const Asker& asker) {
    auto& gathering = draft.gathering;
    const auto& row = asker.way->row;
    if (gathering.tree == nullptr || (asker.way->early_tree && !gathering.early_tree)) {
        place_at(gathering, *asker.way);
    }
    gathering.from = is_fresh(gathering.store) ? std::max(gathering.from, *row.collect_from)
                                               : std::min(gathering.from, *row.collect_from);
    if (*row.collect_to < gathering.to) {
        gathering.to = *row.collect_to;
        gathering.by_median = row.collect_by_median;
    }
    gathering.keep_until = std::max(gathering.keep_until, *row.use_to);
    gathering.store = colder(gathering.store, *row.store);
    gathering.insurance = gathering.insurance && row.insurance;
    gathering.crosses.push_back(row.cross);
    draft.askers.push_back(asker);
}

// Pollen that is collected earlier for one cross waits longer for another.
void choose_store(Gathering& gathering, Share usable) {
    if (!is_fresh(gathering.store)) {
        gathering.store = colder(gathering.store, store_for(gathering.keep_until - gathering.from, usable));
    }
}

// The day on which pollen of the first collected flowers comes into the store.
Day stored_on(const Gathering& gathering, const WayOutlook& way) {
    return gathering.work == PollenWork::cut_branch ? gathering.from + way.days_in_the_room + drying_days
                                                    : gathering.from;
}

void decide(const Gathering& gathering, const Asker& asker, Share usable) {
    auto& way = *asker.way;
    way.tree = gathering.tree;
    way.early_tree = gathering.early_tree;
    way.row.collect_from = gathering.from;
    way.row.collect_to = gathering.to;
    way.row.collect_by_median = gathering.by_median;
    way.row.balloon_from = gathering.balloon_from;
    way.row.balloon_to = gathering.balloon_to;
    way.row.store = gathering.store;
    keep_until_use(way, stored_on(gathering, way), usable);
    fill_amounts(way, *asker.need);
    tell_how_again(way, usable);
}

Gathering finished(Draft& draft, Share usable) {
    auto& gathering = draft.gathering;
    choose_store(gathering, usable);
    for (const auto& asker : draft.askers) {
        decide(gathering, asker, usable);
        gathering.flowers += asker.way->row.donor_flowers;
        gathering.mass.value += asker.way->row.pollen.value;
    }
    std::ranges::sort(gathering.crosses);
    const auto again = std::ranges::unique(gathering.crosses);
    gathering.crosses.erase(again.begin(), again.end());
    return std::move(gathering);
}

}  // namespace

std::vector<Gathering> gather(const Bench& bench, std::vector<GoalPlan>& goals) {
    std::map<GatheringKey, std::vector<Draft>> drafts;
    for (const auto& asker : askers_of(goals)) {
        const GatheringKey key{asker.way->row.donor, asker.season_of_use.year, work_of(*asker.way)};
        join(draft_for(drafts[key], asker), asker);
    }
    std::vector<Gathering> gatherings;
    for (auto& [key, of_donor] : drafts) {
        for (auto& draft : of_donor) {
            gatherings.push_back(finished(draft, bench.assumptions.usable_germination));
        }
    }
    return gatherings;
}

}  // namespace pipward::cross::detail
