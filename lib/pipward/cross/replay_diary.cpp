// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/replay_diary.h"

#include <fmt/format.h>

#include <cmath>

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/pollen_life.h"

namespace pipward::cross::detail {

TrueBloom::TrueBloom(const bloom::BloomForecast& truth) : truth_(&truth) {
    for (const auto& window : truth.windows) {
        courses_.push_back(bloom_courses(truth, window).each.front());
    }
    for (const auto& tree : truth.trees) {
        of_tree_.emplace(tree.tree->label, tree.window);
    }
}

const BloomCourse* TrueBloom::of(const std::string& tree, const std::string& accession) const {
    if (const auto found = of_tree_.find(tree); found != of_tree_.end()) {
        return &courses_[found->second];
    }
    const auto found = truth_->of_accession.find(accession);
    return found == truth_->of_accession.end() ? nullptr : &courses_[found->second];
}

SeasonDay TrueBloom::season_day(Day day) const {
    return day - anchor_of(truth_->season, truth_->hemisphere);
}

Day TrueBloom::forced_by(Day cut, const std::string& accession) const {
    const auto& window = truth_->windows[truth_->of_accession.at(accession)];
    const auto& ladder = truth_->curves.at(window.offset.degrees).front().ladder;
    const double after_full =
        bloom::value_at(ladder, season_day(cut)) - bloom::value_at(ladder, window.full_bloom.front());
    return cut + static_cast<int>(std::ceil(forcing_days_at({after_full})));
}

ReplayDiary::ReplayDiary(const ReplaySpring& spring, const TrueBloom& bloom)
    : spring_(&spring), bloom_(&bloom), book_(spring.orchard) {}

SeasonPlan ReplayDiary::plan(bloom::BloomForecast forecast) const {
    for (auto& tree : forecast.trees) {
        tree.tree = &book_.trees[static_cast<std::size_t>(tree.tree - spring_->orchard.trees.data())];
    }
    return plan_season(forecast, book_, spring_->assumptions);
}

int ReplayDiary::worked(const std::string& cross) const {
    const auto found = worked_.find(cross);
    return found == worked_.end() ? 0 : found->second;
}

void ReplayDiary::add_lot(const PollenTask& task, Day collected_on, Store store) {
    PollenLot lot;
    lot.code = fmt::format("R-{}", book_.pollen_lots.size() + 1);
    lot.donor = task.donor;
    lot.collected_on = collected_on;
    lot.flowers = task.flowers;
    lot.store = store;
    book_.pollen_lots.push_back(std::move(lot));
}

void ReplayDiary::collect(const PollenTask& task, Day day, bool& done) {
    const auto* donor = bloom_->of(task.tree, task.donor);
    if (done || donor == nullptr || day < task.do_from || day > task.do_to) {
        return;
    }
    if (task.work == PollenWork::cut_branch) {
        BranchWork cut;
        cut.task = BranchTask::cut_branch;
        cut.done_on = day;
        cut.tree = task.tree;
        cut.flowers = task.flowers;
        book_.branch_works.push_back(std::move(cut));
        add_lot(task, bloom_->forced_by(day, task.donor), task.store);
        done = true;
        return;
    }
    const auto today = bloom_->season_day(day);
    if (task.work == PollenWork::collect && donor->balloon.first <= today && today <= donor->balloon.last) {
        add_lot(task, day, task.store);
        done = true;
    }
}

const PollenLot* ReplayDiary::ready(const PollenShare& share, Day day) const {
    for (const auto& lot : book_.pollen_lots) {
        const bool meant = share.lot ? lot.code == *share.lot : lot.donor == share.donor;
        if (meant && lot.collected_on + fresh_from_days <= day &&
            germination_at(lot.store, lot.collected_on, {}, day, day).mean >=
                spring_->assumptions.usable_germination.value) {
            return &lot;
        }
    }
    return nullptr;
}

bool ReplayDiary::give(const FieldTask& task, const PollenShare& share, Day day) {
    const auto* lot = ready(share, day);
    if (lot == nullptr) {
        return false;
    }
    Pollination done;
    done.tag = fmt::format("R-{}", book_.pollinations.size() + 1);
    done.cross = task.cross;
    done.tree = task.tree;
    done.pollinated_on = day;
    done.flowers = share.flowers;
    done.lot = lot->code;
    book_.pollinations.push_back(std::move(done));
    worked_[task.cross] += share.flowers;
    return true;
}

void ReplayDiary::pollinate(const FieldTask& task, Day day, std::vector<bool>& done) {
    const auto* seed_parent = bloom_->of(task.tree, task.seed_parent);
    if (task.work != FieldWork::pollinate || seed_parent == nullptr || day < task.do_from ||
        day > task.do_to || !seed_parent->workable.test(bloom_->season_day(day) - season_first)) {
        return;
    }
    done.resize(task.shares.size());
    bool all = true;
    for (std::size_t i = 0; i < task.shares.size(); ++i) {
        if (!done[i] && !task.shares[i].insurance) {
            done[i] = give(task, task.shares[i], day);
            all = all && done[i];
        }
    }
    for (std::size_t i = 0; i < task.shares.size() && !all && day == task.do_to; ++i) {
        if (!done[i] && task.shares[i].insurance) {
            done[i] = give(task, task.shares[i], day);
        }
    }
}

void ReplayDiary::work(const SeasonPlan& plan, Day from, Day until) {
    std::vector<std::vector<bool>> given(plan.field.size());
    std::map<const PollenTask*, bool> collected;
    for (Day day = from; day < until; day = day + 1) {
        for (const auto& task : plan.pollen) {
            collect(task, day, collected[&task]);
        }
        for (std::size_t i = 0; i < plan.field.size(); ++i) {
            pollinate(plan.field[i], day, given[i]);
        }
    }
}

}  // namespace pipward::cross::detail
