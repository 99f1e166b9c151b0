// SPDX-License-Identifier: MIT
#include "pipward/seed/family_scores.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "pipward/record/orchard_index.h"
#include "pipward/record/presence.h"

namespace pipward::seed {
namespace {

struct TreeScore {
    double sum = 0;
    int number = 0;

    double mean() const { return sum / number; }
};

using Parents = std::pair<std::string, std::string>;
using ByTree = std::map<std::string, TreeScore>;

struct Collected {
    std::map<std::string, ByTree> of_trait;      ///< trees of one accession or family
    std::map<std::string, std::set<int>> years;  ///< by trait
};

std::optional<Parents> parents_of(const OrchardIndex& book, const std::optional<std::string>& name) {
    const auto* accession = book.accession(name.value_or(""));
    return accession != nullptr && accession->seed_parent && accession->pollen_parent
               ? std::optional{Parents{*accession->seed_parent, *accession->pollen_parent}}
               : std::nullopt;
}

void collect(Collected& into, const TraitScore& score) {
    auto& tree = into.of_trait[score.trait][score.tree];
    tree.sum += score.score;
    ++tree.number;
    into.years[score.trait].insert(parts_of(score.scored_on).year);
}

double mean_of(const ByTree& trees) {
    double sum = 0;
    for (const auto& [label, score] : trees) {
        sum += score.mean();
    }
    return sum / static_cast<double>(trees.size());
}

std::optional<double> spread_of(const ByTree& trees, double mean) {
    if (trees.size() < 2) {
        return std::nullopt;
    }
    double squares = 0;
    for (const auto& [label, score] : trees) {
        squares += (score.mean() - mean) * (score.mean() - mean);
    }
    return std::sqrt(squares / static_cast<double>(trees.size() - 1));
}

void tell_scores(FamilyScores& family, const ByTree& trees) {
    family.scored = static_cast<int>(trees.size());
    family.mean = mean_of(trees);
    family.spread = spread_of(trees, family.mean);
    const auto by_mean = [](const auto& entry) { return entry.second.mean(); };
    const auto [least, most] = std::ranges::minmax_element(trees, {}, by_mean);
    family.least = least->second.mean();
    family.most = most->second.mean();
    family.highest = std::ranges::max_element(trees, {}, by_mean)->first;
}

std::optional<double> own_mean(const std::map<std::string, Collected>& own, const std::string& accession,
                               const std::string& trait) {
    const auto found = own.find(accession);
    if (found == own.end() || !found->second.of_trait.contains(trait)) {
        return std::nullopt;
    }
    return mean_of(found->second.of_trait.at(trait));
}

std::map<Parents, int> family_sizes(const OrchardIndex& book, Day as_of) {
    std::map<Parents, std::set<std::string>> members;
    for (const auto& tree : book.orchard().trees) {
        const auto parents = parents_of(book, tree.accession);
        if (parents && planted_by(tree, as_of)) {
            members[*parents].insert(*tree.accession);
        }
    }
    std::map<Parents, int> sizes;
    for (const auto& [parents, accessions] : members) {
        sizes[parents] = static_cast<int>(accessions.size());
    }
    return sizes;
}

}  // namespace

std::vector<FamilyScores> family_scores(const Orchard& orchard, Day as_of) {
    const OrchardIndex book(orchard);
    std::map<std::string, Collected> own;
    std::map<Parents, Collected> families;
    for (const auto& score : orchard.trait_scores) {
        const auto* tree = book.tree(score.tree);
        if (score.scored_on > as_of || tree == nullptr || !tree->accession) {
            continue;
        }
        collect(own[*tree->accession], score);
        if (const auto parents = parents_of(book, tree->accession)) {
            collect(families[*parents], score);
        }
    }
    const auto sizes = family_sizes(book, as_of);
    std::vector<FamilyScores> all;
    for (const auto& [parents, collected] : families) {
        for (const auto& [trait, trees] : collected.of_trait) {
            FamilyScores family;
            family.seed_parent = parents.first;
            family.pollen_parent = parents.second;
            family.trait = trait;
            tell_scores(family, trees);
            const auto size = sizes.find(parents);
            family.seedlings = size == sizes.end() ? family.scored : size->second;
            family.years = static_cast<int>(collected.years.at(trait).size());
            family.seed_parent_mean = own_mean(own, parents.first, trait);
            family.pollen_parent_mean = own_mean(own, parents.second, trait);
            all.push_back(std::move(family));
        }
    }
    return all;
}

}  // namespace pipward::seed
