// SPDX-License-Identifier: MIT
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/record/orchard_index.h"

/// What the lines of one plan tell about the same thing, held against each other.
namespace pipward::testing {

/// Every pair of lines that disagree about dates, stores, amounts, lots or parents; empty where none do.
class PlanReader {
  public:
    PlanReader(const cross::SeasonPlan& plan, const Orchard& orchard) : plan_(plan), book_(orchard) {}

    std::vector<std::string> read() {
        for (const auto& way : plan_.ways) {
            if (is_planned(way)) {
                read_way(way);
            }
        }
        for (const auto& task : plan_.pollen) {
            read_pollen(task);
        }
        for (const auto& task : plan_.field) {
            read_parents(task);
        }
        read_flowers();
        return wrong_;
    }

  private:
    using Way = cross::CrossWay;

    static bool is_planned(const Way& way) {
        return (way.best || way.insurance) && way.chance.value >= 0.10 && way.flowers > 0;
    }

    void need(bool right, const std::string& what) {
        if (!right) {
            wrong_.push_back(what);
        }
    }

    static std::string of(const Way& way) {
        return fmt::format("{} {} {}", way.cross, way.donor, cross::to_text(way.way));
    }

    // The task that collects for the way.
    const cross::PollenTask* collecting(const Way& way) const {
        for (const auto& task : plan_.pollen) {
            const bool cut = task.work == cross::PollenWork::cut_branch;
            const bool serves = std::ranges::find(task.for_crosses, way.cross) != task.for_crosses.end();
            if (task.work != cross::PollenWork::test_lot && task.donor == way.donor && serves &&
                cut == (way.way == cross::PollenWay::forced_branch) && task.season_of_use == way.season) {
                return &task;
            }
        }
        return nullptr;
    }

    void read_way(const Way& way) {
        if (way.lot) {
            read_lot(way);
        } else if (way.collect_to) {
            read_collected(way);
        }
        if (way.season == plan_.season) {
            read_work(way);
        }
    }

    void read_lot(const Way& way) {
        const auto* lot = book_.pollen_lot(*way.lot);
        need(lot != nullptr, of(way) + ": no such lot");
        need(way.why.text().find("Lot " + *way.lot) != std::string::npos,
             of(way) + ": its reason is of another lot");
        need(way.why.text().find(to_iso(*way.use_to)) != std::string::npos,
             of(way) + ": its germination is of another day than the last of use");
        need(way.donor_flowers == 0, of(way) + ": a lot and flowers to collect");
    }

    void read_collected(const Way& way) {
        const auto* task = collecting(way);
        const bool now = way.season == plan_.season || way.way == cross::PollenWay::kept_from_last_year;
        if (task == nullptr) {
            need(!now, of(way) + ": nobody collects for it");
            return;
        }
        need(task->do_from == *way.collect_from && task->do_to == *way.collect_to,
             of(way) + ": collected on other days");
        need(task->store == *way.store, of(way) + ": stored elsewhere");
        need(task->by_median == way.collect_by_median, of(way) + ": a median in one line only");
        need(*task->keep_until >= *way.use_to, of(way) + ": not kept until its use");
        need(way.why.text().find(to_iso(*way.collect_to)) != std::string::npos,
             of(way) + ": its reason tells another day to collect by");
    }

    void read_work(const Way& way) {
        for (const auto& task : plan_.field) {
            if (task.work != cross::FieldWork::pollinate || task.cross != way.cross) {
                continue;
            }
            need(way.insurance || (task.do_from <= *way.use_from && *way.use_to <= task.do_to),
                 of(way) + ": used on days of no work");
            need(!way.use_by_median || way.insurance || task.by_median,
                 of(way) + ": a median in one line only");
        }
    }

    static bool names(const cross::FieldTask& task, const cross::PollenShare& share) {
        const auto& text = task.pollen.text();
        if (share.lot) {
            return text.find("lot " + *share.lot) != std::string::npos;
        }
        if (share.way == cross::PollenWay::forced_branch) {
            return text.find("forced branch") != std::string::npos;
        }
        return text.find(share.store == Store::room ? "fresh" : "collected this spring") != std::string::npos;
    }

    void read_share(const cross::FieldTask& task, const cross::PollenShare& share) {
        const auto way = std::ranges::find_if(plan_.ways, [&](const Way& w) {
            return is_planned(w) && w.cross == task.cross && w.donor == share.donor && w.lot == share.lot &&
                   w.way == share.way;
        });
        need(way != plan_.ways.end(), task.cross + " " + task.tree + ": pollen that no way has");
        need(way == plan_.ways.end() || way->store == share.store, task.cross + ": from another store");
        need(names(task, share), task.cross + " " + task.tree + ": its line does not name " + share.donor);
        shared_[{task.cross, share.donor, share.lot.value_or(""), share.way}] += share.flowers;
    }

    void read_parents(const cross::FieldTask& task) {
        const auto* goal = book_.goal(task.cross);
        need(goal != nullptr && goal->seed_parent == task.seed_parent && goal->pollen_parent == task.donor,
             task.cross + ": other parents than its goal");
        const auto* tree = book_.tree(task.tree);
        need(tree != nullptr && tree->accession == task.seed_parent,
             task.tree + " is no tree of the seed parent");
        for (const auto& share : task.shares) {
            read_share(task, share);
        }
    }

    void read_pollen(const cross::PollenTask& task) {
        if (task.work == cross::PollenWork::test_lot) {
            need(task.lot && book_.pollen_lot(*task.lot) != nullptr &&
                     book_.pollen_lot(*task.lot)->donor == task.donor,
                 task.donor + ": a test of no lot of it");
            return;
        }
        int flowers = 0;
        double milligrams = 0;
        for (const auto& way : plan_.ways) {
            if (is_planned(way) && !way.lot && collecting(way) == &task) {
                flowers += way.donor_flowers;
                milligrams += way.pollen.value;
            }
        }
        // A cross of this season for which pollen is frozen now has no row of the next.
        if (task.season_of_use == plan_.season) {
            need(flowers == task.flowers, fmt::format("{}: {} flowers of the ways, {} of the task",
                                                      task.donor, flowers, task.flowers));
            need(std::abs(milligrams - task.mass.value) < 1e-6, task.donor + ": other amounts of pollen");
        }
    }

    void read_flowers() {
        for (const auto& way : plan_.ways) {
            if (is_planned(way) && way.best && way.season == plan_.season) {
                const auto found = shared_.find({way.cross, way.donor, way.lot.value_or(""), way.way});
                const int at_trees = found == shared_.end() ? 0 : found->second;
                need(at_trees == way.flowers,
                     fmt::format("{}: {} flowers, {} at the trees", of(way), way.flowers, at_trees));
            }
        }
    }

    const cross::SeasonPlan& plan_;
    OrchardIndex book_;
    std::vector<std::string> wrong_;
    std::map<std::tuple<std::string, std::string, std::string, cross::PollenWay>, int> shared_;
};

inline std::vector<std::string> disagreements(const cross::SeasonPlan& plan, const Orchard& orchard) {
    return PlanReader(plan, orchard).read();
}

}  // namespace pipward::testing
