// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "pipward/cross/detail/tasks.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

struct TaskKey {
    std::string donor;
    int season = 0;
    PollenWork work = PollenWork::collect;
    std::string lot;

    auto operator<=>(const TaskKey&) const = default;
};

struct Draft {
    PollenTask task;
    bool by_median = false;  // the last day is
};
using Tasks = std::map<TaskKey, std::vector<Draft>>;

struct Job {
    const Bench* bench = nullptr;
    const WayOutlook* way = nullptr;
    const CrossGoal* goal = nullptr;
    Season season;
};

PollenWork work_of(const WayOutlook& way) {
    return way.row.way == PollenWay::forced_branch ? PollenWork::cut_branch : PollenWork::collect;
}

// The store that asks least of luck: colder goes before warmer.
Store colder(Store a, Store b) {
    return std::max(a, b);
}

void place_at(PollenTask& task, const WayOutlook& way) {
    task.tree = way.tree->label;
    task.at = way.tree->at;
}

void add_cross(PollenTask& task, const std::string& cross) {
    if (std::ranges::find(task.for_crosses, cross) == task.for_crosses.end()) {
        task.for_crosses.push_back(cross);
    }
}

// Pollen that is kept can be collected once for all; fresh pollen must still be fresh for every cross.
bool can_serve(const PollenTask& task, const CrossWay& row) {
    const bool kept = task.store != Store::room || row.store != Store::room;
    const Day do_to = std::min(task.do_to, *row.collect_to);
    const Day do_from = std::max(task.do_from, *row.collect_from);
    return kept || (do_from <= do_to && std::max(*task.keep_until, *row.use_to) - do_to <= fresh_to_days);
}

Draft& collecting_for(std::vector<Draft>& collectings, const CrossWay& row) {
    const auto found =
        std::ranges::find_if(collectings, [&](const Draft& draft) { return can_serve(draft.task, row); });
    if (found != collectings.end()) {
        return *found;
    }
    auto& task = collectings.emplace_back().task;
    task.do_from = *row.collect_from;
    task.do_to = *row.collect_to;
    task.store = *row.store;
    task.keep_until = row.use_to;
    return collectings.back();
}

void add_collecting(Tasks& tasks, const Job& job) {
    const auto& row = job.way->row;
    const auto work = work_of(*job.way);
    auto& draft = collecting_for(tasks[{row.donor, job.season.year, work, ""}], row);
    auto& task = draft.task;
    if (*row.collect_to <= task.do_to) {
        draft.by_median = job.way->by_median && work == PollenWork::collect;
    }
    if (task.tree.empty() || job.way->early_tree) {
        place_at(task, *job.way);
    }
    task.do_from = std::min(task.do_from, *row.collect_from);
    task.do_to = std::min(task.do_to, *row.collect_to);
    task.keep_until = std::max(task.keep_until, row.use_to);
    task.store = colder(task.store, *row.store);
    task.work = work;
    task.donor = row.donor;
    task.season_of_use = job.season;
    task.flowers += row.donor_flowers;
    task.mass.value += row.pollen.value;
    add_cross(task, job.goal->code);
    if (job.way->early_tree) {
        task.why =
            say("{} blooms before the other trees of {}.", job.way->tree->label, row.donor) + verbatim(" ");
    }
}

bool needs_test(const LotOutlook& lot, Day use) {
    return !lot.tested || use - *lot.tested > test_holds_days;
}

void add_test(Tasks& tasks, const Job& job) {
    const auto& row = job.way->row;
    const auto& lot = *job.way->lot;
    const Day as_of = job.bench->stock.as_of;
    if (!needs_test(lot, *row.use_from)) {
        return;
    }
    auto& drafts = tasks[{row.donor, job.season.year, PollenWork::test_lot, lot.lot->code}];
    const bool added = drafts.empty();
    auto& task = added ? drafts.emplace_back().task : drafts.front().task;
    const Day last = std::max(as_of, *row.use_from - test_ahead_days);
    task.work = PollenWork::test_lot;
    task.donor = lot.lot->donor;
    task.do_to = added ? last : std::min(task.do_to, last);
    task.do_from = std::max(as_of, task.do_to - test_holds_days + test_ahead_days);
    task.store = lot.store;
    task.keep_until = added ? row.use_to : std::max(task.keep_until, row.use_to);
    task.season_of_use = job.season;
    add_cross(task, job.goal->code);
    task.why = lot.tested ? say("Lot {} has no test since {}: sow 100 grains or more and count.",
                                lot.lot->code, to_iso(*lot.tested))
                          : say("Lot {} has no test: sow 100 grains or more and count.", lot.lot->code);
    task.why += verbatim(" ");
}

// A branch of the donor that stands in water already is not cut again.
bool has_collecting(const Job& job) {
    const auto& way = *job.way;
    const bool cut =
        work_of(way) == PollenWork::cut_branch && job.bench->stock.done.cut_from.contains(way.row.donor);
    return !cut && way.collected_now && way.tree != nullptr && way.row.collect_to;
}

void add_way(Tasks& tasks, const Job& job) {
    const bool next = job.season != job.bench->forecast->season;
    if (job.way->lot && !next) {
        add_test(tasks, job);
    } else if (has_collecting(job)) {
        add_collecting(tasks, job);
    }
}

Sentence keeping_text(const PollenTask& task, const Bench& bench) {
    const bool next = task.season_of_use != bench.forecast->season;
    if (task.store == Store::room) {
        return say("Dry for a day or two and use within three days.");
    }
    const auto store = store_text(task.store);
    const auto until = to_iso(*task.keep_until);
    return next ? say("Dry for a day or two, store in {} until {}, for {}.", store, until,
                      task.season_of_use.year)
                : say("Dry for a day or two, store in {} until {}.", store, until);
}

Sentence deadline_text(const Draft& draft, const Bench& bench) {
    if (draft.by_median) {
        return say("These are medians, still too uncertain for a safe day: watch the buds.");
    }
    return say("After {} the risk of being too late is above {}.", to_iso(draft.task.do_to),
               percent_text(bench.assumptions.risk));
}

Sentence work_text(const Draft& draft, const Bench& bench) {
    const auto when =
        verbatim(" ") + deadline_text(draft, bench) + verbatim(" ") + keeping_text(draft.task, bench);
    switch (draft.task.work) {
        case PollenWork::collect:
            return say("Collect closed flowers at balloon stage (BBCH 59).") + when;
        case PollenWork::cut_branch:
            return say("Cut branches with as many flower buds; re-cut stems and change the water every two "
                       "days.") +
                   when;
        case PollenWork::test_lot:
            break;
    }
    return say("A poor result leaves time for another way.");
}

PollenTask finished(Draft& draft, const Bench& bench) {
    auto& task = draft.task;
    std::ranges::sort(task.for_crosses);
    task.why += work_text(draft, bench);
    task.urgency = urgency_of(task.do_to, bench.stock.as_of);
    return std::move(task);
}

// What is kept goes first, so that fresh pollen can be taken from it, then by last day.
bool is_placed_before(const Job& a, const Job& b) {
    const auto rank = [](const Job& job) {
        const auto& row = job.way->row;
        return std::tuple(row.store == Store::room, row.collect_to, row.use_to);
    };
    return rank(a) < rank(b);
}

std::vector<Job> jobs_of(const Bench& bench, const std::vector<GoalPlan>& goals) {
    std::vector<Job> jobs;
    for (const auto& plan : goals) {
        for (const auto& donor : plan.donors) {
            for (const auto& way : donor.ways) {
                if (worth_doing(way)) {
                    jobs.push_back({&bench, &way, plan.goal, plan.goal->season});
                }
            }
            if (donor.for_next_spring) {
                jobs.push_back({&bench, &*donor.for_next_spring, plan.goal, {plan.goal->season.year + 1}});
            }
        }
    }
    std::ranges::stable_sort(jobs, is_placed_before);
    return jobs;
}

bool comes_before(const PollenTask& a, const PollenTask& b) {
    return std::tie(a.do_to, a.do_from, a.donor, a.season_of_use, a.work, a.why.text()) <
           std::tie(b.do_to, b.do_from, b.donor, b.season_of_use, b.work, b.why.text());
}

}  // namespace

std::vector<PollenTask> pollen_tasks(const Bench& bench, const std::vector<GoalPlan>& goals) {
    Tasks tasks;
    for (const auto& job : jobs_of(bench, goals)) {
        add_way(tasks, job);
    }
    std::vector<PollenTask> sorted;
    for (auto& [key, drafts] : tasks) {
        for (auto& draft : drafts) {
            sorted.push_back(finished(draft, bench));
        }
    }
    std::ranges::sort(sorted, comes_before);
    return sorted;
}

}  // namespace pipward::cross::detail
