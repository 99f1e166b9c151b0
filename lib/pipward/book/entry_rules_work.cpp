// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_rules.h"
#include "pipward/record/name_index.h"
#include "pipward/value/season.h"

namespace pipward::book::detail {
namespace {

// Most apples have 5 cells of 2 ovules, some cultivars up to 30 seeds (Jackson, Biology of Apples and Pears,
// 2003, chapter 2).
constexpr int most_seeds_of_a_fruit = 30;
// Seed is sound some time before the day that a book gives it; harvest earlier than this costs seed. Common
// practice, no source.
constexpr int early_harvest_days = 14;

void check_season_of(const Pollination& work, const CrossGoal& goal, const Orchard& orchard,
                     Findings& findings) {
    const auto season = season_of(work.pollinated_on, hemisphere_in(orchard));
    if (season != goal.season) {
        findings.push_back(
            warning({"pollination", work.tag, "cross", work.cross},
                    say("The cross is wanted in season {}, and this is {}.", goal.season.year, season.year),
                    say("Correct the cross or the day, if one is wrong.")));
    }
}

void check_store_of(const Pollination& work, const PollenLot& lot, Findings& findings) {
    if (lot.used_up_on && work.pollinated_on > *lot.used_up_on) {
        findings.push_back(warning({"pollination", work.tag, "lot", lot.code},
                                   say("The lot was used up on {}.", to_iso(*lot.used_up_on)),
                                   say("Correct the lot, or the day on which it was used up.")));
    }
}

void check_seeds_of(const Fruit& harvested, Findings& findings) {
    const int seeds = harvested.seeds_sound.value_or(0) + harvested.seeds_empty.value_or(0);
    if (seeds > most_seeds_of_a_fruit * harvested.fruits) {
        findings.push_back(warning({"fruit", new_row, "seeds_sound", std::to_string(seeds)},
                                   say("{} fruits cannot have {} seeds: ten each is usual, {} the maximum.",
                                       harvested.fruits, seeds, most_seeds_of_a_fruit),
                                   say("Count again.")));
    }
}

void check_ripeness(const Fruit& harvested, const Pollination& work, const Orchard& orchard,
                    Findings& findings) {
    const auto* goal = first_named(orchard.goals, &CrossGoal::code, work.cross);
    const auto* mother =
        goal == nullptr ? nullptr : first_named(orchard.accessions, &Accession::name, goal->seed_parent);
    if (mother == nullptr || !mother->seed_ripe_days) {
        return;
    }
    const int days = harvested.harvested_on - work.pollinated_on;
    if (days >= 0 && days + early_harvest_days < *mother->seed_ripe_days) {
        findings.push_back(
            warning({"fruit", new_row, "harvested_on", to_iso(harvested.harvested_on)},
                    say("Harvested {} days after pollination, but seed of {} is ripe after about {}.", days,
                        mother->name, *mother->seed_ripe_days),
                    say("Store the fruit until its seeds are brown, or correct the date.")));
    }
}

void check_standing(const Whereabouts& place, const std::string& label, Day day, const Orchard& orchard,
                    Findings& findings) {
    if (const auto* tree = first_named(orchard.trees, &Tree::label, label)) {
        check_tree_stands(place, *tree, day, findings);
    }
}

}  // namespace

void judge(const Pollination& work, const Orchard& orchard, Findings& findings) {
    check_standing({"pollination", work.tag, "pollinated_on", to_iso(work.pollinated_on)}, work.tree,
                   work.pollinated_on, orchard, findings);
    if (const auto* goal = first_named(orchard.goals, &CrossGoal::code, work.cross)) {
        check_season_of(work, *goal, orchard, findings);
    }
    const auto* lot = work.lot ? first_named(orchard.pollen_lots, &PollenLot::code, *work.lot) : nullptr;
    if (lot != nullptr) {
        check_store_of(work, *lot, findings);
    }
    if (work.flowers == 0) {
        findings.push_back(warning({"pollination", work.tag, "flowers", "0"},
                                   say("No flowers were pollinated."), say("Correct the number.")));
    }
}

void judge(const BranchWork& work, const Orchard& orchard, Findings& findings) {
    check_standing({"branch_work", new_row, "done_on", to_iso(work.done_on)}, work.tree.value_or(""),
                   work.done_on, orchard, findings);
}

void judge(const Fruit& harvested, const Orchard& orchard, Findings& findings) {
    check_seeds_of(harvested, findings);
    if (const auto* work = first_named(orchard.pollinations, &Pollination::tag, harvested.tag)) {
        check_ripeness(harvested, *work, orchard, findings);
    }
}

void judge(const TraitScore& score, const Orchard& orchard, Findings& findings) {
    check_standing({"trait_score", new_row, "scored_on", to_iso(score.scored_on)}, score.tree,
                   score.scored_on, orchard, findings);
}

}  // namespace pipward::book::detail
