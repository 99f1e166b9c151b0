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

Sentence keeping_text(const Gathering& gathering, const Bench& bench) {
    if (gathering.store == Store::room) {
        return say("Dry for a day or two and use within three days.");
    }
    const bool next = gathering.season_of_use != bench.forecast->season;
    const auto store = store_text(gathering.store);
    const auto until = to_iso(gathering.keep_until);
    return next ? say("Dry for a day or two, store in {} until {}, for {}.", store, until,
                      gathering.season_of_use.year)
                : say("Dry for a day or two, store in {} until {}.", store, until);
}

Sentence deadline_text(const Gathering& gathering, const Bench& bench) {
    if (gathering.by_median) {
        return say("These are medians, still too uncertain for a safe day: watch the buds.");
    }
    return say("After {} the risk of being too late is above {}.", to_iso(gathering.to),
               percent_text(bench.assumptions.risk));
}

// The last safe day may come before the donor is ready: then the buds, not the calendar, tell the day.
Sentence balloon_text(const Gathering& gathering) {
    if (!gathering.balloon_from || gathering.work != PollenWork::collect) {
        return {};
    }
    const auto from = to_iso(*gathering.balloon_from);
    const auto to = to_iso(*gathering.balloon_to);
    return gathering.to < *gathering.balloon_from
               ? say("Balloon stage is likely from {} to {}, after the last safe day: in many springs this "
                     "comes too late.",
                     from, to)
               : say("Balloon stage is likely from {} to {}.", from, to);
}

Sentence work_text(const Gathering& gathering) {
    return gathering.work == PollenWork::cut_branch
               ? say("Cut branches with as many flower buds; re-cut stems and change the water every two "
                     "days.")
               : say("Collect closed flowers at balloon stage (BBCH 59).");
}

Sentence why_of(const Gathering& gathering, const Bench& bench) {
    std::vector<Sentence> parts;
    if (gathering.early_tree) {
        parts.push_back(
            say("{} blooms before the other trees of {}.", gathering.tree->label, gathering.donor));
    }
    if (gathering.insurance) {
        parts.push_back(say("A second way, in case the first fails."));
    }
    parts.push_back(work_text(gathering));
    parts.push_back(balloon_text(gathering));
    parts.push_back(deadline_text(gathering, bench));
    parts.push_back(keeping_text(gathering, bench));
    std::erase_if(parts, [](const Sentence& part) { return part.empty(); });
    return joined(parts, verbatim(" "));
}

PollenTask task_of(const Gathering& gathering, const Bench& bench) {
    PollenTask task;
    task.work = gathering.work;
    task.donor = gathering.donor;
    task.tree = gathering.tree->label;
    task.at = gathering.tree->at;
    task.do_from = gathering.from;
    task.do_to = gathering.to;
    task.by_median = gathering.by_median;
    task.insurance = gathering.insurance;
    task.balloon_from = gathering.balloon_from;
    task.balloon_to = gathering.balloon_to;
    task.flowers = gathering.flowers;
    task.mass = gathering.mass;
    task.store = gathering.store;
    task.keep_until = gathering.keep_until;
    task.season_of_use = gathering.season_of_use;
    task.for_crosses = gathering.crosses;
    task.why = why_of(gathering, bench);
    return task;
}

bool comes_before(const PollenTask& a, const PollenTask& b) {
    return std::tie(a.do_to, a.do_from, a.donor, a.season_of_use, a.work, a.lot, a.why.text()) <
           std::tie(b.do_to, b.do_from, b.donor, b.season_of_use, b.work, b.lot, b.why.text());
}

}  // namespace

Urgency urgency_of(Day last_day, Day as_of) {
    constexpr int a_week = 7;
    if (last_day < as_of) {
        return Urgency::too_late;
    }
    if (last_day == as_of) {
        return Urgency::today;
    }
    return last_day - as_of <= a_week ? Urgency::this_week : Urgency::later;
}

std::vector<PollenTask> pollen_tasks(const Bench& bench, const std::vector<GoalPlan>& goals,
                                     const std::vector<Gathering>& gatherings) {
    std::vector<PollenTask> tasks;
    for (const auto& gathering : gatherings) {
        tasks.push_back(task_of(gathering, bench));
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
