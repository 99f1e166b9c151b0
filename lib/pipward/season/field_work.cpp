// SPDX-License-Identifier: MIT
#include "pipward/season/field_work.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/season/words.h"
#include "pipward/seed/next_work.h"

namespace pipward::season {
namespace {

Sentence pollen_title(const cross::PollenTask& task) {
    const auto where = task.tree.empty() ? task.donor : task.tree;
    switch (task.work) {
        case cross::PollenWork::collect:
            return say("Collect pollen of {} at {}: {}", task.donor, where, flowers_words(task.flowers));
        case cross::PollenWork::cut_branch:
            return say("Cut branches of {} at {} to force", task.donor, where);
        case cross::PollenWork::test_lot:
            break;
    }
    return say("Test stored pollen of {}, lot {}", task.donor, task.lot.value_or(""));
}

Sentence flower_title(const cross::FieldTask& task) {
    switch (task.work) {
        case cross::FieldWork::bag:
            return say("Bag flowers of {} for cross {}", task.tree, task.cross);
        case cross::FieldWork::pollinate:
            return say("Pollinate {} for cross {}: {}", task.tree, task.cross, flowers_words(task.flowers));
        case cross::FieldWork::unbag:
            break;
    }
    return say("Remove the bags from {}, cross {}", task.tree, task.cross);
}

Sentence seed_title(seed::SeedWork work, const std::string& cross) {
    switch (work) {
        case seed::SeedWork::harvest:
            return say("Harvest the fruit of cross {}", cross);
        case seed::SeedWork::wash:
            return say("Wash the seed of cross {}", cross);
        case seed::SeedWork::start_stratification:
            return say("Stratify the seed of cross {}", cross);
        case seed::SeedWork::sow:
            return say("Check germination of cross {}", cross);
        case seed::SeedWork::pot:
            return say("Pot the germinated seed of cross {}", cross);
        case seed::SeedWork::plant:
            return say("Plant the seedlings of cross {}", cross);
        case seed::SeedWork::nothing:
            break;
    }
    return {};
}

std::set<Hazard> hazards_of(seed::SeedWork work) {
    using enum Hazard;
    return work == seed::SeedWork::wash || work == seed::SeedWork::start_stratification
               ? std::set{seeds, peroxide, bleach}
               : std::set{seeds};
}

std::set<Hazard> hazards_of(cross::PollenWork work) {
    using enum Hazard;
    switch (work) {
        case cross::PollenWork::collect:
            return {allergy, ladders, sprays, fire_blight};
        case cross::PollenWork::cut_branch:
            return {ladders, tools, moving};
        case cross::PollenWork::test_lot:
            break;
    }
    return {allergy};
}

std::set<Hazard> hazards_of(cross::FieldWork work) {
    using enum Hazard;
    return work == cross::FieldWork::pollinate
               ? std::set{ladders, allergy, sprays, fire_blight, tools, protected_parents}
               : std::set{ladders, sprays, fire_blight};
}

Sentence mass_and_flowers(const cross::PollenTask& task) {
    const auto mass = milligram_words(task.mass);
    const auto flowers = task.flowers > 0 ? flowers_words(task.flowers) : Sentence{};
    return flowers.empty() || mass.empty() ? flowers + mass : say("{}, {}", flowers, mass);
}

std::string together(const std::vector<std::string>& names) {
    return fmt::format("{}", fmt::join(names, ", "));
}

// Lots are tested each by itself, and fresh pollen of one tree may be collected for several crosses apart.
std::string key_of(const cross::PollenTask& task) {
    auto key =
        fmt::format("{}-{}-{}-{}", cross::to_text(task.work), task.season_of_use.year, task.donor, task.tree);
    if (task.lot) {
        key += "-" + *task.lot;
    } else if (task.store == Store::room && !task.for_crosses.empty()) {
        key += "-" + task.for_crosses.front();
    }
    return key;
}

FieldWorkItem item_of(const cross::PollenTask& task) {
    FieldWorkItem item;
    item.kind = WorkKind::pollen;
    item.key = key_of(task);
    item.from = task.do_from;
    item.to = std::max(task.do_from, task.do_to);
    item.tree = task.work == cross::PollenWork::test_lot ? std::string{} : task.tree;
    item.title = pollen_title(task);
    item.cross = together(task.for_crosses);
    item.with = task.keep_until ? say("{} until {}", in_store_words(task.store), to_iso(*task.keep_until))
                                : in_store_words(task.store);
    item.amount = mass_and_flowers(task);
    item.why = task.why;
    item.by_median = task.by_median;
    item.hazards = hazards_of(task.work);
    item.possible = task.urgency != cross::Urgency::too_late;
    return item;
}

FieldWorkItem item_of(const cross::FieldTask& task, Season season) {
    FieldWorkItem item;
    item.kind = WorkKind::flowers;
    item.key = fmt::format("{}-{}-{}-{}", cross::to_text(task.work), season.year, task.cross, task.tree);
    item.from = task.do_from;
    item.to = std::max(task.do_from, task.do_to);
    item.tree = task.tree;
    item.title = flower_title(task);
    item.cross = task.cross;
    item.with = task.work == cross::FieldWork::pollinate ? task.pollen : Sentence{};
    item.amount = task.flowers > 0 ? flowers_words(task.flowers) : Sentence{};
    item.why = task.why;
    item.by_median = task.by_median;
    item.hazards = hazards_of(task.work);
    item.possible = task.urgency != cross::Urgency::too_late;
    return item;
}

Sentence pick_reason(const seed::TagToHarvest& tag) {
    const auto bloom = tag.bloom.early == tag.bloom.late
                           ? verbatim(to_iso(tag.bloom.early))
                           : say("{} to {}", to_iso(tag.bloom.early), to_iso(tag.bloom.late));
    auto why = tag.bloom_by_work ? say("Full bloom {}, by the date of pollination.", bloom)
                                 : say("Full bloom {}.", bloom);
    why += verbatim(" ");
    why += tag.days.usual ? say("Seed ripe about {} days later, by the general rule: the book has no value "
                                "for this seed parent.",
                                tag.days.ripe_days)
                          : say("Seed ripe about {} days later.", tag.days.ripe_days);
    return why;
}

FieldWorkItem item_of(const seed::TagToHarvest& tag, Day as_of) {
    FieldWorkItem item;
    item.kind = WorkKind::fruit;
    item.key = fmt::format("pick-{}-{}", tag.work->cross, tag.work->tree);
    item.from = tag.days.from;
    item.to = tag.days.to;
    item.tree = tag.work->tree;
    item.title = say("Harvest the fruit of cross {} at {}", tag.work->cross, tag.work->tree);
    item.cross = tag.work->cross;
    item.tags = tag.work->tag;
    item.why = pick_reason(tag);
    item.mind = seed::harvest_caution(tag);
    item.hazards = {Hazard::ladders, Hazard::sprays, Hazard::seeds};
    item.late = tag.days.to < as_of;
    return item;
}

FieldWorkItem item_of(const seed::NextWork& work, const std::string& cross) {
    FieldWorkItem item;
    item.kind = WorkKind::seed;
    item.key = fmt::format("seed-{}-{}{}{}", static_cast<int>(work.work), cross, work.lot.empty() ? "" : "-",
                           work.lot);
    item.from = work.from;
    item.to = work.from ? std::optional{std::max(*work.from, work.to.value_or(*work.from))} : work.to;
    item.title = seed_title(work.work, cross);
    item.cross = cross;
    item.with = work.lot.empty() ? Sentence{} : say("lot {}", work.lot);
    item.why = work.why;
    item.hazards = hazards_of(work.work);
    item.late = work.late;
    return item;
}

void join(FieldWorkItem& all, const FieldWorkItem& more) {
    all.tags += ", " + more.tags;
    all.from = std::min(*all.from, *more.from);
    all.to = std::max(*all.to, *more.to);
    all.late = all.late && more.late;
}

}  // namespace

std::vector<FieldWorkItem> flower_work(const cross::SeasonPlan& plan) {
    std::vector<FieldWorkItem> items;
    for (const auto& task : plan.pollen) {
        items.push_back(item_of(task));
    }
    for (const auto& task : plan.field) {
        items.push_back(item_of(task, plan.season));
    }
    return items;
}

std::vector<FieldWorkItem> fruit_work(const std::vector<seed::TagToHarvest>& tags, Day as_of) {
    std::vector<FieldWorkItem> items;
    std::map<std::string, std::size_t> by_key;
    for (const auto& tag : tags) {
        auto item = item_of(tag, as_of);
        const auto [found, is_new] = by_key.try_emplace(item.key, items.size());
        if (is_new) {
            items.push_back(std::move(item));
        } else {
            join(items[found->second], item);
        }
    }
    return items;
}

std::vector<FieldWorkItem> seed_work(const Orchard& orchard, Day as_of) {
    const OrchardIndex book(orchard);
    std::vector<FieldWorkItem> items;
    for (const auto& tally : seed::tally_crosses(orchard, as_of)) {
        for (const auto& work : seed::work_of_cross(tally, book, as_of)) {
            if (work.work != seed::SeedWork::harvest) {
                items.push_back(item_of(work, tally.goal->code));
            }
        }
    }
    return items;
}

Sentence kind_words(WorkKind kind) {
    switch (kind) {
        case WorkKind::pollen:
            return say("pollen");
        case WorkKind::flowers:
            return say("flowers");
        case WorkKind::fruit:
            return say("fruit");
        case WorkKind::seed:
            break;
    }
    return say("seed");
}

}  // namespace pipward::season
