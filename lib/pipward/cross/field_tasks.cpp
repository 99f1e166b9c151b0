// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <iterator>
#include <tuple>

#include "pipward/cross/detail/tasks.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

// So many flowers are pollinated on one tree before a second is taken; bags are hung within so many days
// before the first flower opens and may stay on for so many days after the last petal. Common practice, no
// source.
constexpr int flowers_a_tree = 100;
constexpr int bagging_days = 7;
constexpr int unbagging_days = 14;

struct PollinatedTree {
    bloom::TreeBloom bloom;
    int flowers = 0;
};

struct GoalWork {
    const Bench* bench = nullptr;
    const GoalPlan* plan = nullptr;
    std::vector<const WayOutlook*> ways;  // those that the plan follows
    Day from;
    Day to;
    bool together = true;  // one pass serves every member of a blend
};

struct Days {
    Day from;
    Day to;
};

std::vector<const WayOutlook*> followed(const DonorPlan& donor) {
    std::vector<const WayOutlook*> ways;
    for (const auto& way : donor.ways) {
        if (worth_doing(way)) {
            ways.push_back(&way);
        }
    }
    return ways;
}

std::vector<const WayOutlook*> followed(const GoalPlan& plan) {
    std::vector<const WayOutlook*> ways;
    for (const auto& donor : plan.donors) {
        const auto of_donor = followed(donor);
        ways.insert(ways.end(), of_donor.begin(), of_donor.end());
    }
    return ways;
}

// Days on which one or another of these has pollen.
Days union_of(const std::vector<const WayOutlook*>& ways) {
    Days days{*ways.front()->row.use_from, *ways.front()->row.use_to};
    for (const auto* way : ways) {
        days.from = std::min(days.from, *way->row.use_from);
        days.to = std::max(days.to, *way->row.use_to);
    }
    return days;
}

// Days on which every donor has pollen, as a blend needs it; backwards where there are none.
Days common_days(const GoalPlan& plan, Days all) {
    for (const auto& donor : plan.donors) {
        if (const auto ways = followed(donor); !ways.empty()) {
            const auto days = union_of(ways);
            all.from = std::max(all.from, days.from);
            all.to = std::min(all.to, days.to);
        }
    }
    return all;
}

// Each donor of a blend is in every flower; a lot and what makes up for it share the flowers of one donor.
int flowers_of(const GoalPlan& plan) {
    int most = 0;
    for (const auto& donor : plan.donors) {
        int flowers = 0;
        for (const auto& way : donor.ways) {
            flowers += worth_doing(way) ? way.row.flowers : 0;
        }
        most = std::max(most, flowers);
    }
    return most;
}

std::vector<PollinatedTree> pollinated_trees(const std::vector<bloom::TreeBloom>& trees, int flowers) {
    const int wanted = (flowers + flowers_a_tree - 1) / flowers_a_tree;
    const int count = std::clamp(wanted, 1, static_cast<int>(trees.size()));
    std::vector<PollinatedTree> pollinated;
    pollinated.reserve(count);
    for (int i = 0; i < count; ++i) {
        pollinated.push_back({trees[i], flowers / count + (i < flowers % count ? 1 : 0)});
    }
    return pollinated;
}

Sentence pollen_of(const WayOutlook& way) {
    if (way.lot) {
        return say("lot {}", way.lot->lot->code);
    }
    switch (way.row.way) {
        case PollenWay::same_day:
            return say("fresh");
        case PollenWay::forced_branch:
            return say("from a forced branch");
        case PollenWay::kept_this_spring:
        case PollenWay::kept_from_last_year:
            break;
    }
    return way.row.store == Store::freezer ? say("collected this spring, freezer")
                                           : say("collected this spring, refrigerator");
}

/// Of several donors each by its name, unless the same is true of all.
Sentence pollen_text(const GoalWork& work) {
    std::vector<Sentence> pollen;
    std::ranges::transform(work.ways, std::back_inserter(pollen),
                           [](const WayOutlook* way) { return pollen_of(*way); });
    if (std::ranges::adjacent_find(pollen, std::not_equal_to{}) == pollen.end()) {
        return pollen.empty() ? Sentence{} : pollen.front();
    }
    if (work.plan->donors.size() > 1) {
        for (std::size_t i = 0; i < pollen.size(); ++i) {
            pollen[i] = verbatim(work.ways[i]->row.donor + ": ") + pollen[i];
        }
    }
    return joined(pollen, verbatim("; "));
}

FieldTask begin_task(const GoalWork& work, const PollinatedTree& tree, FieldWork what) {
    FieldTask task;
    task.work = what;
    task.cross = work.plan->goal->code;
    task.seed_parent = work.plan->goal->seed_parent;
    task.donor = work.plan->goal->pollen_parent;
    task.tree = tree.bloom.tree->label;
    task.at = tree.bloom.tree->at;
    task.flowers = tree.flowers;
    task.pollen = pollen_text(work);
    return task;
}

void set_days(FieldTask& task, const GoalWork& work, Day from, Day to) {
    const Day as_of = work.bench->stock.as_of;
    task.do_to = to;
    task.do_from = to >= as_of ? std::max(from, as_of) : from;
    task.urgency = urgency_of(to, as_of);
}

FieldTask bag_task(const GoalWork& work, const PollinatedTree& tree) {
    const auto& window = work.bench->forecast->windows[tree.bloom.window];
    auto task = begin_task(work, tree, FieldWork::bag);
    const Day last = window.first.p10 - 1;
    set_days(task, work, last - bagging_days, last);
    task.why =
        task.urgency == Urgency::too_late
            ? say("First flowers may be open since {}: bag only clusters that are still closed.",
                  to_iso(window.first.p10))
            : say("Bag closed clusters before the first flower opens (not before {} in 9 springs in 10).",
                  to_iso(window.first.p10));
    return task;
}

Sentence when_text(const GoalWork& work) {
    const bool by_median = std::ranges::any_of(work.ways, &WayOutlook::by_median);
    const auto from = to_iso(work.from);
    const auto to = to_iso(work.to);
    return by_median
               ? say("Flowers are receptive from about {} to {}: medians, still too uncertain for a safe "
                     "day.",
                     from, to)
               : say("Flowers are receptive from about {}; after {} the risk of being too late is above {}.",
                     from, to, percent_text(work.bench->assumptions.risk));
}

FieldTask pollinate_task(const GoalWork& work, const PollinatedTree& tree) {
    auto task = begin_task(work, tree, FieldWork::pollinate);
    set_days(task, work, work.from, work.to);
    task.why = say("Open the bag, pollinate every stigma, close it again; tag with cross, date and number of "
                   "flowers.") +
               verbatim(" ") + when_text(work);
    if (!work.together) {
        task.why += verbatim(" ") + say("The donors' pollen is not available on the same day: pollinate some "
                                        "flowers with each, and tag them separately.");
    }
    return task;
}

FieldTask unbag_task(const GoalWork& work, const PollinatedTree& tree) {
    const auto& window = work.bench->forecast->windows[tree.bloom.window];
    auto task = begin_task(work, tree, FieldWork::unbag);
    set_days(task, work, window.end.p90, window.end.p90 + unbagging_days);
    task.why = say("Petals have fallen: remove the bags, count the fruit set.");
    return task;
}

std::optional<GoalWork> work_of(const Bench& bench, const GoalPlan& plan) {
    GoalWork work{&bench, &plan, followed(plan), {}, {}, true};
    if (plan.next_season || work.ways.empty()) {
        return std::nullopt;
    }
    const auto all = union_of(work.ways);
    const auto common = common_days(plan, all);
    work.together = common.from <= common.to;
    work.from = work.together ? common.from : all.from;
    work.to = work.together ? common.to : all.to;
    return work;
}

// Flowers that were pollinated are in their bags.
bool is_bagged(const GoalWork& work, const std::string& tree) {
    const auto& done = work.bench->stock.done;
    const auto& cross = work.plan->goal->code;
    return is_in(done.bagged, cross, tree) || done.pollinated.contains({cross, tree});
}

void add_unbagging(std::vector<FieldTask>& tasks, const GoalWork& work, const PollinatedTree& tree) {
    if (!is_in(work.bench->stock.done.unbagged, work.plan->goal->code, tree.bloom.tree->label)) {
        tasks.push_back(unbag_task(work, tree));
    }
}

void add_tasks(std::vector<FieldTask>& tasks, const GoalWork& work) {
    const auto& trees = work.bench->stock.trees.at(work.plan->goal->seed_parent);
    for (const auto& tree : pollinated_trees(trees, flowers_of(*work.plan))) {
        if (!is_bagged(work, tree.bloom.tree->label)) {
            tasks.push_back(bag_task(work, tree));
        }
        tasks.push_back(pollinate_task(work, tree));
        add_unbagging(tasks, work, tree);
    }
}

// Trees that were pollinated wait for their bags to be taken off, whether or not there is more to pollinate.
void add_left_unbagging(std::vector<FieldTask>& tasks, const Bench& bench, const GoalPlan& plan) {
    const auto trees = bench.stock.trees.find(plan.goal->seed_parent);
    if (plan.next_season || trees == bench.stock.trees.end()) {
        return;
    }
    const GoalWork work{&bench, &plan, {}, {}, {}, true};
    for (const auto& bloom : trees->second) {
        const bool told = std::ranges::any_of(tasks, [&](const FieldTask& task) {
            return task.work == FieldWork::unbag && task.cross == plan.goal->code &&
                   task.tree == bloom.tree->label;
        });
        const bool over = bench.forecast->windows[bloom.window].end.p90 + unbagging_days < bench.stock.as_of;
        if (!told && !over && bench.stock.done.pollinated.contains({plan.goal->code, bloom.tree->label})) {
            add_unbagging(tasks, work, {bloom, 0});
        }
    }
}

}  // namespace

std::vector<FieldTask> field_tasks(const Bench& bench, const std::vector<GoalPlan>& goals) {
    std::vector<FieldTask> tasks;
    for (const auto& plan : goals) {
        if (const auto work = work_of(bench, plan)) {
            add_tasks(tasks, *work);
        }
        add_left_unbagging(tasks, bench, plan);
    }
    std::ranges::sort(tasks, [](const FieldTask& a, const FieldTask& b) {
        return std::tie(a.do_from, a.do_to, a.cross, a.work, a.tree) <
               std::tie(b.do_from, b.do_to, b.cross, b.work, b.tree);
    });
    return tasks;
}

}  // namespace pipward::cross::detail
