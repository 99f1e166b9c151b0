// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "pipward/book/detail/check.h"
#include "pipward/record/descent.h"
#include "pipward/record/presence.h"
#include "pipward/value/season.h"

namespace pipward::book::detail {
namespace {

// No orchard raises so many seedlings of one cross: a slip of the pen is likelier. Common practice, no
// source.
constexpr int many_seedlings = 20000;

using WithTrees = std::set<std::string>;  // accessions that have a tree or are to have one

void check_protection(const CrossGoal& goal, const Accession& parent, std::string_view field, Day as_of,
                      Findings& findings) {
    if (parent.protected_until && *parent.protected_until >= as_of) {
        findings.push_back(
            notice({"cross_goal", goal.code, field, parent.name},
                   say("{} is protected until {}.", parent.name, to_iso(*parent.protected_until)),
                   say("Check the licence before crossing.")));
    }
}

void check_donors(const CrossGoal& goal, const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& giving : book.donors(goal.pollen_parent)) {
        const auto* donor = book.accession(giving.donor);
        if (donor == nullptr) {
            continue;
        }
        check_protection(goal, *donor, "pollen_parent", as_of, findings);
        if (donor->ploidy == 3) {
            findings.push_back(notice({"cross_goal", goal.code, "pollen_parent", donor->name},
                                      say("{} is triploid: most of its pollen is not viable.", donor->name),
                                      say("Pollinate more flowers, or do not use it as a parent.")));
        }
    }
}

void check_selfing(const CrossGoal& goal, const OrchardIndex& book, Findings& findings) {
    const auto donors = book.donors(goal.pollen_parent);
    if (std::ranges::find(donors, goal.seed_parent, &DonorShare::donor) != donors.end()) {
        findings.push_back(
            warning({"cross_goal", goal.code, "pollen_parent", goal.pollen_parent},
                    say("The seed parent is to be pollinated with its own pollen."),
                    say("Correct it if selfing is not meant; most pome fruits set no seed by it.")));
    }
}

void check_genera(const CrossGoal& goal, const OrchardIndex& book, Findings& findings) {
    const auto seed = genus_of(book, goal.seed_parent);
    for (const auto& giving : book.donors(goal.pollen_parent)) {
        const auto donor = genus_of(book, giving.donor);
        if (!seed.empty() && !donor.empty() && seed != donor) {
            findings.push_back(
                warning({"cross_goal", goal.code, "pollen_parent", giving.donor},
                        say("{} is of another genus ({}) than {} ({}): hardly any seed is to be expected.",
                            giving.donor, donor, goal.seed_parent, seed),
                        say("Correct the parents or their species if a wide cross is not meant.")));
        }
    }
}

void check_seed_parent(const CrossGoal& goal, const OrchardIndex& book, const WithTrees& with_trees,
                       Day as_of, Findings& findings) {
    const auto* parent = book.accession(goal.seed_parent);
    if (parent == nullptr) {
        return;
    }
    check_protection(goal, *parent, "seed_parent", as_of, findings);
    if (!with_trees.contains(goal.seed_parent)) {
        findings.push_back(warning({"cross_goal", goal.code, "seed_parent", goal.seed_parent},
                                   say("No living tree of the seed parent is in the book."),
                                   say("Enter its tree, or correct the name.")));
    }
}

void check_number(const CrossGoal& goal, Findings& findings) {
    if (goal.seedlings_wanted > many_seedlings) {
        findings.push_back(
            warning({"cross_goal", goal.code, "seedlings_wanted", std::to_string(goal.seedlings_wanted)},
                    say("This is an implausible number of seedlings from one cross."),
                    say("Correct the number if it has a digit too many.")));
    }
}

WithTrees accessions_with_trees(const Orchard& orchard, const Names& names, Day as_of) {
    if (names.unread.contains("tree") || orchard.trees.empty()) {
        return names.of("accession", "name");
    }
    WithTrees accessions;
    for (const auto& tree : orchard.trees) {
        if (tree.accession && !removed_by(tree, as_of)) {
            accessions.insert(*tree.accession);
        }
    }
    return accessions;
}

}  // namespace

// Past goals are history: only those of this season and later can still be acted upon.
void check_goals(const OrchardIndex& book, const Names& names, Day as_of, Findings& findings) {
    const auto with_trees = accessions_with_trees(book.orchard(), names, as_of);
    for (const auto& goal : book.orchard().goals) {
        check_selfing(goal, book, findings);
        check_genera(goal, book, findings);
        if (goal.season.year >= parts_of(as_of).year) {
            check_number(goal, findings);
            check_seed_parent(goal, book, with_trees, as_of, findings);
            check_donors(goal, book, as_of, findings);
        }
    }
}

}  // namespace pipward::book::detail
