// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/book/check.h"
#include "pipward/value/season.h"

namespace pipward::book {
namespace {

using AccessionByName = std::map<std::string, const Accession*>;
using Members = std::map<std::string, std::vector<std::string>>;

// No orchard raises so many seedlings of one cross: a slip of the pen is likelier. Common practice, no
// source.
constexpr int many_seedlings = 20000;

struct Pedigree {
    AccessionByName accessions;
    Members members;
    std::set<std::string> with_trees;  ///< accessions that have a living tree
};

// The accession itself, or a blend's members.
std::vector<const Accession*> donors_of(const Pedigree& pedigree, const std::string& name) {
    std::vector<const Accession*> donors;
    std::vector<std::string> names{name};
    if (const auto blend = pedigree.members.find(name); blend != pedigree.members.end()) {
        names = blend->second;
    }
    for (const auto& donor : names) {
        if (const auto found = pedigree.accessions.find(donor); found != pedigree.accessions.end()) {
            donors.push_back(found->second);
        }
    }
    return donors;
}

void check_protection(const CrossGoal& goal, const Accession& parent, std::string_view field, Day as_of,
                      Findings& findings) {
    if (parent.protected_until && *parent.protected_until >= as_of) {
        findings.push_back(
            note({"cross_goal", goal.code, field, parent.name},
                 say("{} is protected until {}.", parent.name, to_iso(*parent.protected_until)),
                 say("Check the licence before crossing.")));
    }
}

void check_donors(const CrossGoal& goal, const Pedigree& pedigree, Day as_of, Findings& findings) {
    for (const auto* donor : donors_of(pedigree, goal.pollen_parent)) {
        check_protection(goal, *donor, "pollen_parent", as_of, findings);
        if (donor->ploidy == 3) {
            findings.push_back(note({"cross_goal", goal.code, "pollen_parent", donor->name},
                                    say("{} is triploid: most of its pollen is bad.", donor->name),
                                    say("Work more flowers, or use it as neither parent.")));
        }
    }
}

void check_selfing(const CrossGoal& goal, const Pedigree& pedigree, Findings& findings) {
    const auto blend = pedigree.members.find(goal.pollen_parent);
    const bool in_blend = blend != pedigree.members.end() &&
                          std::ranges::find(blend->second, goal.seed_parent) != blend->second.end();
    if (in_blend || goal.pollen_parent == goal.seed_parent) {
        findings.push_back(
            warning({"cross_goal", goal.code, "pollen_parent", goal.pollen_parent},
                    say("The seed parent is to be pollinated with its own pollen."),
                    say("Correct it if selfing is not meant; most pome fruits set no seed by it.")));
    }
}

void check_seed_parent(const CrossGoal& goal, const Pedigree& pedigree, Day as_of, Findings& findings) {
    const auto found = pedigree.accessions.find(goal.seed_parent);
    if (found == pedigree.accessions.end()) {
        return;
    }
    check_protection(goal, *found->second, "seed_parent", as_of, findings);
    if (!pedigree.with_trees.contains(goal.seed_parent)) {
        findings.push_back(warning({"cross_goal", goal.code, "seed_parent", goal.seed_parent},
                                   say("No living tree of the seed parent is in the book."),
                                   say("Enter its tree, or correct the name.")));
    }
}

void check_number(const CrossGoal& goal, Findings& findings) {
    if (goal.seedlings_wanted > many_seedlings) {
        findings.push_back(
            warning({"cross_goal", goal.code, "seedlings_wanted", std::to_string(goal.seedlings_wanted)},
                    say("So many seedlings are hardly wanted from one cross."),
                    say("Correct the number if it has a digit too many.")));
    }
}

Pedigree pedigree_of(const Orchard& orchard, Day as_of) {
    Pedigree pedigree;
    for (const auto& accession : orchard.accessions) {
        pedigree.accessions.emplace(accession.name, &accession);
    }
    for (const auto& member : orchard.blend_members) {
        pedigree.members[member.name].push_back(member.member);
    }
    for (const auto& tree : orchard.trees) {
        if (tree.accession && (!tree.removed_on || *tree.removed_on > as_of)) {
            pedigree.with_trees.insert(*tree.accession);
        }
    }
    return pedigree;
}

}  // namespace

// Past goals are history: only those of this season and later can still be acted upon.
void check_goals(const Orchard& orchard, const Names& names, Day as_of, Findings& findings) {
    auto pedigree = pedigree_of(orchard, as_of);
    if (names.unread.contains("tree") || orchard.trees.empty()) {
        pedigree.with_trees = names.accessions;
    }
    for (const auto& goal : orchard.goals) {
        if (goal.seedlings_wanted <= 0) {
            findings.push_back(
                error({"cross_goal", goal.code, "seedlings_wanted", std::to_string(goal.seedlings_wanted)},
                      say("The number of seedlings wanted is not above zero."),
                      say("Say how many seedlings shall stand at the end.")));
        }
        check_selfing(goal, pedigree, findings);
        if (goal.season.year >= parts_of(as_of).year) {
            check_number(goal, findings);
            check_seed_parent(goal, pedigree, as_of, findings);
            check_donors(goal, pedigree, as_of, findings);
        }
    }
}

}  // namespace pipward::book
