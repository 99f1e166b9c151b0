// SPDX-License-Identifier: MIT
#include "pipward/seed/cross_tally.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>

#include "pipward/record/descent.h"
#include "pipward/record/presence.h"

namespace pipward::seed {
namespace {

constexpr std::array all_steps{
    SeedStep::pollinated, SeedStep::fruits,  SeedStep::sound_seed, SeedStep::in_stratification,
    SeedStep::germinated, SeedStep::planted, SeedStep::alive};

using ByCross = std::map<std::string, CrossTally*, std::less<>>;

ByCross by_code(std::vector<CrossTally>& tallies) {
    ByCross crosses;
    for (auto& tally : tallies) {
        crosses.emplace(tally.goal->code, &tally);
    }
    return crosses;
}

CrossTally* find(const ByCross& crosses, std::string_view code) {
    const auto found = crosses.find(code);
    return found == crosses.end() ? nullptr : found->second;
}

std::map<std::string, CrossTally*> add_flowers(const ByCross& crosses, const Orchard& orchard, Day as_of) {
    std::map<std::string, CrossTally*> tags;
    const auto passes = passes_of(orchard.pollinations);
    for (std::size_t i = 0; i < passes.size(); ++i) {
        const auto& work = orchard.pollinations[i];
        auto* tally = find(crosses, work.cross);
        if (tally == nullptr || work.pollinated_on > as_of) {
            continue;
        }
        // Flowers pollinated twice are the same flowers.
        if (passes[i] == 1) {
            tally->flowers.add(work.flowers);
            tally->tags.push_back(&work);
        }
        tags.emplace(work.tag, tally);
    }
    return tags;
}

void add_fruit(const std::map<std::string, CrossTally*>& tags, const Orchard& orchard, Day as_of) {
    std::map<CrossTally*, std::set<std::string>> harvested;
    for (const auto& fruit : orchard.fruits) {
        const auto found = tags.find(fruit.tag);
        if (found == tags.end() || fruit.harvested_on > as_of) {
            continue;
        }
        auto& tally = *found->second;
        tally.fruits.add(fruit.fruits);
        tally.harvested.push_back(fruit.harvested_on);
        if (fruit.seeds_sound) {
            tally.sound_seed.add(*fruit.seeds_sound);
        } else if (fruit.fruits > 0) {
            tally.sound_seed.whole = false;
        }
        harvested[&tally].insert(fruit.tag);
    }
    for (auto& [tally, of_tags] : harvested) {
        tally->fruits.whole = of_tags.size() >= tally->tags.size();
        tally->sound_seed.whole = tally->sound_seed.whole && tally->fruits.whole;
        std::ranges::sort(tally->harvested);
    }
}

void add_lot(CrossTally& tally, const LotCourse& course, Day as_of) {
    tally.lots.push_back(course);
    tally.seed_in_lots += course.lot->seeds;
    if (course.lot->stratified_from && *course.lot->stratified_from <= as_of) {
        tally.in_stratification.add(course.lot->seeds);
    }
    if (course.germinated) {
        tally.germinated.add(*course.germinated);
    } else {
        tally.germinated.whole = false;
    }
}

/// A lot exists from the day it was washed, else stratified; without either it always did.
bool is_there(const SeedLot& lot, Day as_of) {
    const auto since = lot.washed_on ? lot.washed_on : lot.stratified_from;
    return !since || *since <= as_of;
}

void add_lots(const ByCross& crosses, const Orchard& orchard, Day as_of) {
    for (const auto& course : lot_courses(orchard, as_of)) {
        if (auto* tally = find(crosses, course.lot->cross);
            tally != nullptr && is_there(*course.lot, as_of)) {
            add_lot(*tally, course, as_of);
        }
    }
    for (const auto& [code, tally] : crosses) {
        tally->in_stratification.whole = tally->in_stratification.count == tally->seed_in_lots;
        if (!tally->sound_seed.count && !tally->lots.empty()) {
            tally->sound_seed = {tally->seed_in_lots, true};
        }
    }
}

void add_seedlings(const ByCross& crosses, const Orchard& orchard, Day as_of) {
    const OrchardIndex book(orchard);
    std::map<std::string_view, CrossTally*> seedlings;
    for (const auto& accession : orchard.accessions) {
        if (const auto* goal = cross_of_seedling(book, accession)) {
            seedlings.emplace(accession.name, find(crosses, goal->code));
        }
    }
    // A seedling that was grafted stands on several trees and is still one seedling.
    std::map<std::string_view, bool> standing;
    for (const auto& tree : orchard.trees) {
        const bool is_known = tree.accession && seedlings.contains(*tree.accession);
        if (is_known && planted_by(tree, as_of)) {
            standing[*tree.accession] = standing[*tree.accession] || stands_on(tree, as_of);
        }
    }
    for (const auto& [name, stands] : standing) {
        seedlings[name]->planted.add(1);
        seedlings[name]->alive.add(stands ? 1 : 0);
    }
}

}  // namespace

StepCount CrossTally::at(SeedStep step) const {
    switch (step) {
        case SeedStep::pollinated:
            return flowers;
        case SeedStep::fruits:
            return fruits;
        case SeedStep::sound_seed:
            return sound_seed;
        case SeedStep::in_stratification:
            return in_stratification;
        case SeedStep::germinated:
            return germinated;
        case SeedStep::planted:
            return planted;
        case SeedStep::alive:
            break;
    }
    return alive;
}

std::vector<CrossTally> tally_crosses(const Orchard& orchard, Day as_of) {
    std::vector<CrossTally> tallies(orchard.goals.size());
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        tallies[i].goal = &orchard.goals[i];
    }
    const auto crosses = by_code(tallies);
    add_fruit(add_flowers(crosses, orchard, as_of), orchard, as_of);
    add_lots(crosses, orchard, as_of);
    add_seedlings(crosses, orchard, as_of);
    return tallies;
}

int seedlings_without_place(const CrossTally& tally) {
    return std::max(0, tally.germinated.count.value_or(0) - tally.planted.count.value_or(0));
}

int withdrawn_without_place(const CrossTally& tally) {
    int withdrawn = 0;
    for (const auto& course : tally.lots) {
        withdrawn += course.out - course.out_ungerminated;
    }
    return std::max(0, withdrawn - tally.planted.count.value_or(0));
}

std::optional<SeedStep> failed_at(const CrossTally& tally) {
    for (const auto step : all_steps) {
        const auto counted = tally.at(step);
        if (counted.count == 0 && counted.whole) {
            return step;
        }
    }
    return std::nullopt;
}

}  // namespace pipward::seed
