// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <optional>
#include <span>

#include "pipward/book/check.h"

namespace pipward::book {
namespace {

/// Sown the year after the cross, an apple or pear rarely flowers before its third year in the ground
/// (yvapplebreeders.com, Shortening the juvenile phase, citing Zimmerman 1973 and Hanke et al. 2007, looked
/// up).
constexpr int sowing_to_first_flower = 3;
constexpr int cross_to_first_flower = 1 + sowing_to_first_flower;

using Crossed = std::map<std::string, const CrossGoal*>;  // by accession: the cross that it came from

// A seedling's name begins with the code of its cross, and it has the parents of the cross: "16-01-04".
const CrossGoal* cross_of(const Accession& accession, std::span<const CrossGoal> goals) {
    for (const auto& goal : goals) {
        const bool named = accession.name.size() > goal.code.size() &&
                           accession.name.starts_with(goal.code) && accession.name[goal.code.size()] == '-';
        if (named && accession.seed_parent == goal.seed_parent &&
            accession.pollen_parent == goal.pollen_parent) {
            return &goal;
        }
    }
    return nullptr;
}

Crossed crossed_in(const Orchard& orchard) {
    Crossed crossed;
    for (const auto& accession : orchard.accessions) {
        if (const auto* goal = cross_of(accession, orchard.goals)) {
            crossed.emplace(accession.name, goal);
        }
    }
    return crossed;
}

// The accession, or the members of the blend, of that name.
std::vector<std::string> donors_of(const Orchard& orchard, const std::string& name) {
    std::vector<std::string> members;
    for (const auto& member : orchard.blend_members) {
        if (member.name == name) {
            members.push_back(member.member);
        }
    }
    return members.empty() ? std::vector{name} : members;
}

void check_age(const CrossGoal& goal, std::string_view field, const std::string& parent,
               const Crossed& crossed, Findings& findings) {
    const auto born = crossed.find(parent);
    if (born == crossed.end()) {
        return;
    }
    const int season = born->second->season.year;
    const Whereabouts place{"cross_goal", goal.code, field, parent};
    if (goal.season.year <= season) {
        findings.push_back(error(
            place,
            say("The parent is younger than its child: it came from cross {} of {}, and this cross is of {}.",
                born->second->code, season, goal.season.year),
            say("Correct the parent, the season of one of the crosses, or the parent's name.")));
    } else if (goal.season.year < season + cross_to_first_flower) {
        findings.push_back(
            warning(place,
                    say("The parent came from cross {} of {}: the earliest known first fruit is three years "
                        "after sowing, in {}.",
                        born->second->code, season, season + cross_to_first_flower),
                    say("Look whether it has flowers; correct the parent or the season if it cannot be.")));
    }
}

void check_ages_of_crosses(const Orchard& orchard, const Crossed& crossed, Findings& findings) {
    for (const auto& goal : orchard.goals) {
        check_age(goal, "seed_parent", goal.seed_parent, crossed, findings);
        for (const auto& donor : donors_of(orchard, goal.pollen_parent)) {
            check_age(goal, "pollen_parent", donor, crossed, findings);
        }
    }
}

// Trees are grafted anew, so the last planting proves nothing; the first one proves that it was there.
std::map<std::string, const Tree*> first_trees(const Orchard& orchard) {
    std::map<std::string, const Tree*> first;
    for (const auto& tree : orchard.trees) {
        if (tree.accession && tree.planted_on) {
            auto& earliest = first[*tree.accession];
            earliest = earliest == nullptr || *tree.planted_on < *earliest->planted_on ? &tree : earliest;
        }
    }
    return first;
}

void check_planted_before_parent(const Orchard& orchard, const Crossed& crossed, Findings& findings) {
    const auto first = first_trees(orchard);
    for (const auto& accession : orchard.accessions) {
        const auto tree = first.find(accession.name);
        if (tree == first.end() || crossed.contains(accession.name)) {
            continue;
        }
        for (const auto& parent : {accession.seed_parent, accession.pollen_parent}) {
            const auto born = parent ? crossed.find(*parent) : crossed.end();
            const auto planted = *tree->second->planted_on;
            if (born != crossed.end() && parts_of(planted).year <= born->second->season.year) {
                findings.push_back(warning(
                    {"accession", accession.name,
                     *parent == accession.seed_parent ? "seed_parent" : "pollen_parent", *parent},
                    say("Its tree {} was planted on {}, before its parent's cross {} of {} had borne seed.",
                        tree->second->label, to_iso(planted), born->second->code, born->second->season.year),
                    say("Correct the parent, or the day of planting.")));
            }
        }
    }
}

bool differs(const std::optional<std::string>& own, const std::optional<std::string>& original) {
    return own && own != original;
}

// A sport has the genes of its original, and so its parents.
void check_sports(const Orchard& orchard, Findings& findings) {
    std::map<std::string, const Accession*> by_name;
    for (const auto& accession : orchard.accessions) {
        by_name.emplace(accession.name, &accession);
    }
    for (const auto& sport : orchard.accessions) {
        const auto original = sport.sport_of ? by_name.find(*sport.sport_of) : by_name.end();
        if (original == by_name.end() || original->second == &sport) {
            continue;
        }
        const bool seed = differs(sport.seed_parent, original->second->seed_parent);
        if (seed || differs(sport.pollen_parent, original->second->pollen_parent)) {
            findings.push_back(warning(
                {"accession", sport.name, seed ? "seed_parent" : "pollen_parent",
                 seed ? *sport.seed_parent : *sport.pollen_parent},
                say("It is a sport of {}, which has other parents or none: its own are passed over.",
                    original->second->name),
                say("Clear its parents and write them with {}; or clear sport_of if it was raised from seed.",
                    original->second->name)));
        }
    }
}

}  // namespace

void check_descent(const Orchard& orchard, Findings& findings) {
    const auto crossed = crossed_in(orchard);
    check_ages_of_crosses(orchard, crossed, findings);
    check_planted_before_parent(orchard, crossed, findings);
    check_sports(orchard, findings);
}

}  // namespace pipward::book
