// SPDX-License-Identifier: MIT
#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <tuple>

#include "pipward/cross/detail/tasks.h"
#include "pipward/cross/detail/tree_shares.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

// Bags are hung within so many days before the first flower opens and may stay on for so many days after the
// last petal. Common practice, no source.
constexpr int bagging_days = 7;
constexpr int unbagging_days = 14;

struct GoalWork {
    const Bench* bench = nullptr;
    const GoalPlan* plan = nullptr;
    std::vector<const WayOutlook*> ways;  // those that the plan follows
    Day from;
    Day to;
};

std::vector<const WayOutlook*> followed(const GoalPlan& plan) {
    std::vector<const WayOutlook*> ways;
    for (const auto& donor : plan.donors) {
        const auto of_donor = detail::followed(donor);
        ways.insert(ways.end(), of_donor.begin(), of_donor.end());
    }
    return ways;
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

PollenShare share_of(const WayOutlook& way) {
    return {way.row.donor,   way.row.lot,      way.row.way, way.row.store.value_or(Store::room),
            way.row.flowers, way.row.insurance};
}

struct SharesOfDonor {
    std::vector<PollenShare> left;         // in the order of use
    std::optional<PollenShare> insurance;  // for what is not in hand
};

SharesOfDonor shares_of(const DonorPlan& donor) {
    SharesOfDonor shares;
    for (const auto& way : donor.ways) {
        if (worth_doing(way)) {
            shares.left.push_back(share_of(way));
        } else if (way.row.insurance) {
            shares.insurance = share_of(way);
        }
    }
    return shares;
}

// Flowers of one tree are served one donor after the other, each from its lots in the order of their use.
class PollenShares {
  public:
    explicit PollenShares(const GoalPlan& plan) {
        for (const auto& donor : plan.donors) {
            donors_.push_back(shares_of(donor));
        }
    }

    std::vector<PollenShare> take(int flowers) {
        std::vector<PollenShare> taken;
        for (auto& donor : donors_) {
            take_of(donor, flowers, taken);
        }
        return taken;
    }

  private:
    static void take_of(SharesOfDonor& donor, int flowers, std::vector<PollenShare>& taken) {
        int doubtful = 0;
        for (auto& share : donor.left) {
            const int now = std::min(share.flowers, flowers);
            if (now > 0) {
                taken.push_back(share);
                taken.back().flowers = now;
                share.flowers -= now;
                flowers -= now;
                doubtful += share.lot ? 0 : now;
            }
        }
        if (donor.insurance && doubtful > 0) {
            taken.push_back(*donor.insurance);
            taken.back().flowers = doubtful;
        }
    }

    std::vector<SharesOfDonor> donors_;
};

Sentence pollen_of(const PollenShare& share) {
    if (share.lot) {
        return say("lot {}", *share.lot);
    }
    if (share.way == PollenWay::forced_branch) {
        return say("from a forced branch");
    }
    switch (share.store) {
        case Store::room:
            return say("fresh");
        case Store::refrigerator:
            return say("collected this spring, refrigerator");
        case Store::freezer:
        case Store::deep_freezer:
            break;
    }
    return say("collected this spring, freezer");
}

bool has_one_share(const std::vector<PollenShare>& shares, const std::string& donor) {
    return std::ranges::count_if(shares, [&](const PollenShare& share) {
               return share.donor == donor && !share.insurance;
           }) == 1;
}

Sentence share_text(const PollenShare& share, const std::vector<PollenShare>& shares, bool blend) {
    auto text = pollen_of(share);
    if (share.insurance) {
        text = say("if that fails: {}", text);
    } else if (!has_one_share(shares, share.donor)) {
        text =
            share.flowers == 1 ? say("{} for 1 flower", text) : say("{} for {} flowers", text, share.flowers);
    }
    return (blend ? verbatim(share.donor + ": ") : Sentence{}) + text;
}

std::vector<Sentence> share_texts(const std::vector<PollenShare>& shares, bool named) {
    std::vector<Sentence> texts;
    for (const auto& share : shares) {
        texts.push_back(share_text(share, shares, named));
    }
    return texts;
}

/// Of a blend's donors each by its name, unless the same is true of all.
Sentence pollen_text(const std::vector<PollenShare>& shares, bool blend) {
    const auto plain = share_texts(shares, false);
    if (std::ranges::adjacent_find(plain, std::not_equal_to{}) == plain.end()) {
        return plain.empty() ? Sentence{} : plain.front();
    }
    return joined(share_texts(shares, blend), verbatim("; "));
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

bool by_median(const GoalWork& work) {
    return std::ranges::any_of(work.ways, [](const auto* way) { return way->row.use_by_median; });
}

Sentence when_text(const GoalWork& work) {
    const auto from = to_iso(work.from);
    const auto to = to_iso(work.to);
    return by_median(work)
               ? say("Flowers are receptive from about {} to {}: medians, still too uncertain for a safe "
                     "day.",
                     from, to)
               : say("Flowers are receptive from about {}; after {} the risk of being too late is above {}.",
                     from, to, percent_text(work.bench->assumptions.risk));
}

FieldTask pollinate_task(const GoalWork& work, const PollinatedTree& tree, PollenShares& pollen) {
    auto task = begin_task(work, tree, FieldWork::pollinate);
    task.shares = pollen.take(tree.flowers);
    task.pollen = pollen_text(task.shares, work.plan->donors.size() > 1);
    task.by_median = by_median(work);
    set_days(task, work, work.from, work.to);
    task.why = say("Open the bag, pollinate every stigma, close it again; tag with cross, date and number of "
                   "flowers.") +
               verbatim(" ") + when_text(work);
    if (!work.plan->together) {
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
    GoalWork work{&bench, &plan, followed(plan), {}, {}};
    if (plan.next_season || work.ways.empty()) {
        return std::nullopt;
    }
    work.from = *work.ways.front()->row.use_from;
    work.to = *work.ways.front()->row.use_to;
    for (const auto* way : work.ways) {
        work.from = std::min(work.from, *way->row.use_from);
        work.to = std::max(work.to, *way->row.use_to);
    }
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

BegunTrees begun_trees(const GoalWork& work) {
    const auto& cross = work.plan->goal->code;
    BegunTrees begun;
    for (const auto& bloom : work.bench->stock.trees.at(work.plan->goal->seed_parent)) {
        const auto& label = bloom.tree->label;
        if (work.bench->stock.done.pollinated.contains({cross, label})) {
            begun.pollinated.insert(label);
        } else if (is_bagged(work, label)) {
            begun.bagged.insert(label);
        }
    }
    return begun;
}

// What was pollinated in this spring cannot be pollinated for another cross.
std::map<std::string, int> flowers_taken(const Bench& bench) {
    const Day first = anchor_of(bench.forecast->season, bench.forecast->hemisphere) + season_first;
    std::map<std::string, int> taken;
    for (const auto& work : bench.orchard->pollinations) {
        if (work.pollinated_on >= first && work.pollinated_on <= bench.stock.as_of &&
            work.pass.value_or(1) == 1) {
            taken[work.tree] += work.flowers;
        }
    }
    return taken;
}

void add_tasks(std::vector<FieldTask>& tasks, const GoalWork& work, std::map<std::string, int>& planned) {
    const auto& stock = work.bench->stock;
    const auto& trees = stock.trees.at(work.plan->goal->seed_parent);
    PollenShares pollen(*work.plan);
    for (const auto& tree :
         spread_over_trees(trees, flowers_of(*work.plan), stock.as_of, begun_trees(work), planned)) {
        if (!is_bagged(work, tree.bloom.tree->label)) {
            tasks.push_back(bag_task(work, tree));
        }
        tasks.push_back(pollinate_task(work, tree, pollen));
        add_unbagging(tasks, work, tree);
    }
}

// Trees that were pollinated wait for their bags to be taken off, whether or not there is more to pollinate.
void add_left_unbagging(std::vector<FieldTask>& tasks, const Bench& bench, const GoalPlan& plan) {
    const auto trees = bench.stock.trees.find(plan.goal->seed_parent);
    if (plan.next_season || trees == bench.stock.trees.end()) {
        return;
    }
    const GoalWork work{&bench, &plan, {}, {}, {}};
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
    auto planned = flowers_taken(bench);
    for (const auto& plan : goals) {
        if (const auto work = work_of(bench, plan)) {
            add_tasks(tasks, *work, planned);
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
