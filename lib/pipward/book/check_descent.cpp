// SPDX-License-Identifier: MIT
#include <map>
#include <optional>

#include "pipward/book/detail/check.h"
#include "pipward/record/descent.h"

namespace pipward::book::detail {
namespace {

using Crossed = std::map<std::string, const CrossGoal*>;  // by accession: the cross that it came from

Crossed crossed_in(const OrchardIndex& book) {
    Crossed crossed;
    for (const auto& accession : book.orchard().accessions) {
        if (const auto* goal = cross_of_seedling(book, accession)) {
            crossed.emplace(accession.name, goal);
        }
    }
    return crossed;
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
        findings.push_back(
            error(place,
                  say("The parent is younger than its offspring: it came from cross {} of {}, and this cross "
                      "is of {}.",
                      born->second->code, season, goal.season.year),
                  say("Correct the parent, the season of one of the crosses, or the parent's name.")));
    } else if (goal.season.year < first_flower_of_cross(born->second->season)) {
        findings.push_back(
            warning(place,
                    say("The parent came from cross {} of {}: the earliest known first fruit is three years "
                        "after sowing, in {}.",
                        born->second->code, season, first_flower_of_cross(born->second->season)),
                    say("Check whether it has flowers; correct the parent or the season if it cannot.")));
    }
}

void check_ages_of_crosses(const OrchardIndex& book, const Crossed& crossed, Findings& findings) {
    for (const auto& goal : book.orchard().goals) {
        check_age(goal, "seed_parent", goal.seed_parent, crossed, findings);
        for (const auto& giving : book.donors(goal.pollen_parent)) {
            check_age(goal, "pollen_parent", giving.donor, crossed, findings);
        }
    }
}

// Trees are grafted again, so the last planting proves nothing; the first one proves that it was there.
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
void check_sports(const OrchardIndex& book, Findings& findings) {
    for (const auto& sport : book.orchard().accessions) {
        const auto* original = book.accession(sport.sport_of.value_or(""));
        if (original == nullptr || original == &sport) {
            continue;
        }
        const bool seed = differs(sport.seed_parent, original->seed_parent);
        if (seed || differs(sport.pollen_parent, original->pollen_parent)) {
            findings.push_back(warning(
                {"accession", sport.name, seed ? "seed_parent" : "pollen_parent",
                 seed ? *sport.seed_parent : *sport.pollen_parent},
                say("It is a sport of {}, which has other parents or none: its own are not used.",
                    original->name),
                say("Clear its parents and write them with {}; or clear sport_of if it was raised from seed.",
                    original->name)));
        }
    }
}

}  // namespace

void check_descent(const OrchardIndex& book, Findings& findings) {
    const auto crossed = crossed_in(book);
    check_ages_of_crosses(book, crossed, findings);
    check_planted_before_parent(book.orchard(), crossed, findings);
    check_sports(book, findings);
}

}  // namespace pipward::book::detail
