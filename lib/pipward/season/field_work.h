// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/season/hazards.h"
#include "pipward/seed/harvest.h"

/// The work of the breeder's year in one form, whatever it is done to: for calendars and sheets.
namespace pipward::season {

/// What work is done to.
enum class WorkKind {
    pollen,   ///< collected, forced or tested
    flowers,  ///< bagged, worked, unbagged
    fruit,    ///< harvested
    seed,     ///< from washing to planting
};

/// One piece of work. Texts are empty where there is nothing to tell.
struct FieldWorkItem {
    WorkKind kind = WorkKind::flowers;  ///< what it is done to
    std::string key;           ///< tells this work from all other, and stays the same when its days move
    std::optional<Day> from;   ///< empty where nothing tells it
    std::optional<Day> to;     ///< the last day; never before `from`
    std::string tree;          ///< its label; empty for work on the bench
    Sentence title;            ///< "Pollinate LO-02-08 for cross 26-01: 40 flowers"
    std::string cross;         ///< its code, or several
    std::string tags;          ///< what hangs at the branches
    Sentence with;             ///< the pollen lot, the seed lot
    Sentence amount;           ///< "40 flowers"
    Sentence why;              ///< whole sentences, for people
    Sentence mind;             ///< what to take care of at this very piece
    std::set<Hazard> hazards;  ///< what can hurt at it
    bool by_median = false;    ///< `to` is no safe day, but a median
    bool late = false;         ///< its last day is past and it is still to do
    bool possible = true;      ///< false where it was missed and cannot be done any more
};

/// Pollen work and work at the flowers.
std::vector<FieldWorkItem> flower_work(const cross::SeasonPlan& plan);
/// Fruit to pick, by tree and cross.
std::vector<FieldWorkItem> fruit_work(const std::vector<seed::TagToHarvest>& tags, Day as_of);
/// Seed to wash, cool, look at, pot and plant, by lot.
std::vector<FieldWorkItem> seed_work(const Orchard& orchard, Day as_of);

/// One word for people: "pollen".
Sentence kind_words(WorkKind kind);

}  // namespace pipward::season
