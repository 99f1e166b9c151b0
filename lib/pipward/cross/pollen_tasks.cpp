// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <tuple>

#include "pipward/cross/detail/tasks.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

using Tests = std::map<std::pair<std::string, int>, PollenTask>;  // by lot and season of use

struct TestDays {
    Day from;
    Day to;
};

// After some days in the store, and early enough to do without the lot. Nothing for pollen that is used soon.
std::optional<TestDays> test_days(const LotOutlook& lot, Day use, Day as_of) {
    const Day stored = lot.lot->collected_on + untested_days;
    const bool holds = lot.tested && use - *lot.tested <= test_holds_days;
    if (holds || use <= stored) {
        return std::nullopt;
    }
    const Day to = std::max({use - test_ahead_days, stored, as_of});
    const Day from = std::max({stored, to - test_holds_days + test_ahead_days, as_of});
    return TestDays{std::min(from, to), to};
}

Sentence test_text(const LotOutlook& lot) {
    const auto what = lot.tested
                          ? say("Lot {} has no test since {}: sow 100 grains or more and count.",
                                lot.lot->code, to_iso(*lot.tested))
                          : say("Lot {} has no test: sow 100 grains or more and count.", lot.lot->code);
    return what + verbatim(" ") + say("A poor result leaves time for another way.");
}

PollenTask begin_test(const LotOutlook& lot, TestDays days, Season season) {
    PollenTask task;
    task.work = PollenWork::test_lot;
    task.donor = lot.lot->donor;
    task.lot = lot.lot->code;
    task.do_from = days.from;
    task.do_to = days.to;
    task.store = lot.store;
    task.season_of_use = season;
    task.why = test_text(lot);
    return task;
}

void add_test(Tests& tests, const Bench& bench, const WayOutlook& way, Season season) {
    const auto days = test_days(*way.lot, *way.row.use_from, bench.stock.as_of);
    if (!days) {
        return;
    }
    auto& task = tests.try_emplace({way.lot->lot->code, season.year}, begin_test(*way.lot, *days, season))
                     .first->second;
    task.do_to = std::min(task.do_to, days->to);
    task.do_from = std::min(task.do_from, days->from);
    task.keep_until = std::max(task.keep_until, way.row.use_to);
    if (std::ranges::find(task.for_crosses, way.row.cross) == task.for_crosses.end()) {
        task.for_crosses.push_back(way.row.cross);
    }
}

// Lots for the season to come are tested in it.
Tests tests_of(const Bench& bench, const std::vector<GoalPlan>& goals) {
    Tests tests;
    for (const auto& plan : goals) {
        for (const auto& donor : plan.donors) {
            for (const auto* way : followed(donor)) {
                if (way->lot && !plan.next_season) {
                    add_test(tests, bench, *way, plan.goal->season);
                }
            }
        }
    }
    return tests;
}

Sentence keeping_text(const Collection& collection, const Bench& bench) {
    if (collection.store == Store::room) {
        return say("Dry for a day or two and use within three days.");
    }
    const bool next = collection.season_of_use != bench.forecast->season;
    const auto store = store_text(collection.store);
    const auto until = to_iso(collection.keep_until);
    return next ? say("Dry for a day or two, store in {} until {}, for {}.", store, until,
                      collection.season_of_use.year)
                : say("Dry for a day or two, store in {} until {}.", store, until);
}

Sentence deadline_text(const Collection& collection, const Bench& bench) {
    if (collection.by_median) {
        return say("These are medians, still too uncertain for a safe day: watch the buds.");
    }
    return say("After {} the risk of being too late is above {}.", to_iso(collection.to),
               percent_text(bench.assumptions.risk));
}

// The last safe day may come before the donor is ready: then the buds, not the calendar, tell the day.
Sentence balloon_text(const Collection& collection) {
    if (!collection.balloon_from || collection.work != PollenWork::collect) {
        return {};
    }
    const auto from = to_iso(*collection.balloon_from);
    const auto to = to_iso(*collection.balloon_to);
    return collection.to < *collection.balloon_from
               ? say("Balloon stage is likely from {} to {}, after the last safe day: in many springs this "
                     "comes too late.",
                     from, to)
               : say("Balloon stage is likely from {} to {}.", from, to);
}

Sentence work_text(const Collection& collection) {
    return collection.work == PollenWork::cut_branch
               ? say("Cut branches with as many flower buds; re-cut stems and change the water every two "
                     "days.")
               : say("Collect closed flowers at balloon stage (BBCH 59).");
}

Sentence why_of(const Collection& collection, const Bench& bench) {
    std::vector<Sentence> parts;
    if (collection.early_tree) {
        parts.push_back(
            say("{} blooms before the other trees of {}.", collection.tree->label, collection.donor));
    }
    if (collection.insurance) {
        parts.push_back(say("A second way, in case the first fails."));
    }
    parts.push_back(work_text(collection));
    parts.push_back(balloon_text(collection));
    parts.push_back(deadline_text(collection, bench));
    parts.push_back(keeping_text(collection, bench));
    std::erase_if(parts, [](const Sentence& part) { return part.empty(); });
    return joined(parts, verbatim(" "));
}

PollenTask task_of(const Collection& collection, const Bench& bench) {
    PollenTask task;
    task.work = collection.work;
    task.donor = collection.donor;
    task.tree = collection.tree->label;
    task.at = collection.tree->at;
    task.do_from = collection.from;
    task.do_to = collection.to;
    task.by_median = collection.by_median;
    task.insurance = collection.insurance;
    task.balloon_from = collection.balloon_from;
    task.balloon_to = collection.balloon_to;
    task.flowers = collection.flowers;
    task.mass = collection.mass;
    task.store = collection.store;
    task.keep_until = collection.keep_until;
    task.season_of_use = collection.season_of_use;
    task.for_crosses = collection.crosses;
    task.why = why_of(collection, bench);
    return task;
}

bool comes_before(const PollenTask& a, const PollenTask& b) {
    return std::tie(a.do_to, a.do_from, a.donor, a.season_of_use, a.work, a.lot, a.why.text()) <
           std::tie(b.do_to, b.do_from, b.donor, b.season_of_use, b.work, b.lot, b.why.text());
}

}  // namespace

std::vector<PollenTask> pollen_tasks(const Bench& bench, const std::vector<GoalPlan>& goals,
                                     const std::vector<Collection>& collections) {
    std::vector<PollenTask> tasks;
    for (const auto& collection : collections) {
        tasks.push_back(task_of(collection, bench));
    }
    for (auto& [key, test] : tests_of(bench, goals)) {
        std::ranges::sort(test.for_crosses);
        tasks.push_back(test);
    }
    for (auto& task : tasks) {
        task.urgency = urgency_of(task.do_to, bench.stock.as_of);
    }
    std::ranges::sort(tasks, comes_before);
    return tasks;
}

}  // namespace pipward::cross::detail
