// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/collection.h"

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
    Collection collection;
    std::vector<Asker> askers;
};

struct CollectionKey {
    std::string donor;
    int season = 0;
    PollenWork work = PollenWork::collect;

    auto operator<=>(const CollectionKey&) const = default;
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
bool can_serve(const Collection& collection, const CrossWay& row) {
    if (is_fresh(collection.store) || is_fresh(*row.store)) {
        const Day from = std::max(collection.from, *row.collect_from);
        const Day to = std::min(collection.to, *row.collect_to);
        return is_fresh(collection.store) && is_fresh(*row.store) && from <= to &&
               std::max(collection.keep_until, *row.use_to) - to <= fresh_to_days;
    }
    return true;
}

Draft& draft_for(std::vector<Draft>& drafts, const Asker& asker) {
    const auto& row = asker.way->row;
    const auto found =
        std::ranges::find_if(drafts, [&](const Draft& draft) { return can_serve(draft.collection, row); });
    if (found != drafts.end()) {
        return *found;
    }
    auto& collection = drafts.emplace_back().collection;
    collection.work = work_of(*asker.way);
    collection.donor = row.donor;
    collection.season_of_use = asker.season_of_use;
    collection.from = *row.collect_from;
    collection.to = *row.collect_to;
    collection.by_median = row.collect_by_median;
    collection.store = *row.store;
    collection.keep_until = *row.use_to;
    return drafts.back();
}

void place_at(Collection& collection, const WayOutlook& way) {
    collection.tree = way.tree;
    collection.early_tree = way.early_tree;
    collection.balloon_from = way.row.balloon_from;
    collection.balloon_to = way.row.balloon_to;
}

void join(Draft& draft, const Asker& asker) {
    auto& collection = draft.collection;
    const auto& row = asker.way->row;
    if (collection.tree == nullptr || (asker.way->early_tree && !collection.early_tree)) {
        place_at(collection, *asker.way);
    }
    collection.from = is_fresh(collection.store) ? std::max(collection.from, *row.collect_from)
                                                 : std::min(collection.from, *row.collect_from);
    if (*row.collect_to < collection.to) {
        collection.to = *row.collect_to;
        collection.by_median = row.collect_by_median;
    }
    collection.keep_until = std::max(collection.keep_until, *row.use_to);
    collection.store = colder(collection.store, *row.store);
    collection.insurance = collection.insurance && row.insurance;
    collection.crosses.push_back(row.cross);
    draft.askers.push_back(asker);
}

// Pollen that is collected earlier for one cross waits longer for another.
void choose_store(Collection& collection, Share usable) {
    if (!is_fresh(collection.store)) {
        collection.store =
            colder(collection.store, store_for(collection.keep_until - collection.from, usable));
    }
}

// The day on which pollen of the first collected flowers comes into the store.
Day stored_on(const Collection& collection, const WayOutlook& way) {
    return collection.work == PollenWork::cut_branch ? collection.from + way.days_in_the_room + drying_days
                                                     : collection.from;
}

void decide(const Collection& collection, const Asker& asker, Share usable) {
    auto& way = *asker.way;
    way.tree = collection.tree;
    way.early_tree = collection.early_tree;
    way.row.collect_from = collection.from;
    way.row.collect_to = collection.to;
    way.row.collect_by_median = collection.by_median;
    way.row.balloon_from = collection.balloon_from;
    way.row.balloon_to = collection.balloon_to;
    way.row.store = collection.store;
    keep_until_use(way, stored_on(collection, way), usable);
    fill_amounts(way, *asker.need);
    tell_how_again(way, usable);
}

Collection finished(Draft& draft, Share usable) {
    auto& collection = draft.collection;
    choose_store(collection, usable);
    for (const auto& asker : draft.askers) {
        decide(collection, asker, usable);
        collection.flowers += asker.way->row.donor_flowers;
        collection.mass.value += asker.way->row.pollen.value;
    }
    std::ranges::sort(collection.crosses);
    const auto again = std::ranges::unique(collection.crosses);
    collection.crosses.erase(again.begin(), again.end());
    return std::move(collection);
}

}  // namespace

std::vector<Collection> collections_of(const Bench& bench, std::vector<GoalPlan>& goals) {
    std::map<CollectionKey, std::vector<Draft>> drafts;
    for (const auto& asker : askers_of(goals)) {
        const CollectionKey key{asker.way->row.donor, asker.season_of_use.year, work_of(*asker.way)};
        join(draft_for(drafts[key], asker), asker);
    }
    std::vector<Collection> collections;
    for (auto& [key, of_donor] : drafts) {
        for (auto& draft : of_donor) {
            collections.push_back(finished(draft, bench.assumptions.usable_germination));
        }
    }
    return collections;
}

}  // namespace pipward::cross::detail
