// SPDX-License-Identifier: MIT
#include "pipward/seed/first_fruit.h"

#include <algorithm>
#include <map>

#include "pipward/seed/cold_need.h"
#include "pipward/seed/cross_tally.h"

namespace pipward::seed {
namespace {

int year_of(Day day) {
    return parts_of(day).year;
}

struct Index {
    std::map<std::string, const Accession*> accessions;
    std::map<std::string, const CrossGoal*> goals;
    std::map<std::string, int> counted;  ///< year of the first sprouts of a cross
    std::map<std::string, int> seen;     ///< year of the first bloom or score at a tree
};

void see(std::map<std::string, int>& years, const std::string& name, Day day) {
    const auto [found, is_new] = years.try_emplace(name, year_of(day));
    found->second = std::min(found->second, year_of(day));
}

Index index_of(const Orchard& orchard, Day as_of) {
    Index index;
    for (const auto& accession : orchard.accessions) {
        index.accessions.emplace(accession.name, &accession);
    }
    for (const auto& goal : orchard.goals) {
        index.goals.emplace(goal.code, &goal);
    }
    std::map<std::string, std::string> cross_of_lot;
    for (const auto& lot : orchard.seed_lots) {
        cross_of_lot.emplace(lot.code, lot.cross);
    }
    for (const auto& count : orchard.sprout_counts) {
        if (count.sprouted > 0 && count.counted_on <= as_of && cross_of_lot.contains(count.lot)) {
            see(index.counted, cross_of_lot[count.lot], count.counted_on);
        }
    }
    for (const auto& note : orchard.bloom_notes) {
        if (note.tree && note.bbch >= first_bloom && note.noted_on <= as_of) {
            see(index.seen, *note.tree, note.noted_on);
        }
    }
    for (const auto& score : orchard.trait_scores) {
        if (score.scored_on <= as_of) {
            see(index.seen, score.tree, score.scored_on);
        }
    }
    return index;
}

/// Sown in the spring after the crossing; sooner known from the counts of its lots. A seedling without a
/// cross was planted in the year in which it was sown, or the next.
bool tell_sowing(FirstFruit& fruit, const Index& index) {
    if (const auto counted = index.counted.find(fruit.cross); counted != index.counted.end()) {
        fruit.sown = counted->second;
        fruit.sown_by = SownBy::lot_counts;
    } else if (const auto goal = index.goals.find(fruit.cross); goal != index.goals.end()) {
        fruit.sown = goal->second->season.year + 1;
        fruit.sown_by = SownBy::cross;
    } else if (fruit.tree->planted_on) {
        fruit.sown = year_of(*fruit.tree->planted_on);
        fruit.sown_by = SownBy::planting;
    } else {
        return false;
    }
    return true;
}

bool is_pear(const FirstFruit& fruit, const Orchard& orchard) {
    const auto species = fruit.accession == nullptr ? std::nullopt
                         : fruit.accession->species ? fruit.accession->species
                         : fruit.accession->seed_parent
                             ? species_of_seed(orchard, *fruit.accession->seed_parent)
                             : std::nullopt;
    return species && species->starts_with("Pyrus");
}

/// Quince keeps a pear small as dwarfing stocks do an apple.
bool is_dwarfing(const std::optional<std::string>& rootstock) {
    return rootstock &&
           (rootstock->find("dwarf") != std::string::npos || rootstock->find("quince") != std::string::npos ||
            rootstock->find("Quince") != std::string::npos || rootstock->find("Dwarf") != std::string::npos);
}

FruitState state_in(int year, const FirstFruit& fruit) {
    if (fruit.seen) {
        return FruitState::bloomed;
    }
    if (year < fruit.from) {
        return FruitState::young;
    }
    if (year <= fruit.expected) {
        return year == fruit.expected ? FruitState::due : FruitState::possible;
    }
    return year > fruit.to ? FruitState::overdue : FruitState::waiting;
}

void tell_years(FirstFruit& fruit, int year) {
    const int usual = fruit.pear ? pear_years : apple_years;
    const int off = fruit.dwarfed ? years_off_on_dwarfing_stock : 0;
    fruit.from = fruit.sown + fewest_years;
    fruit.expected = fruit.sown + std::max(fewest_years, usual - off);
    fruit.to = fruit.sown + most_years;
    fruit.state = state_in(year, fruit);
}

bool stands(const Tree& tree, Day as_of) {
    return tree.purpose == TreePurpose::seedling && (!tree.removed_on || *tree.removed_on > as_of) &&
           (!tree.planted_on || *tree.planted_on <= as_of);
}

}  // namespace

FirstFruits first_fruits(const Orchard& orchard, int year, Day as_of) {
    const auto index = index_of(orchard, as_of);
    FirstFruits all;
    for (const auto& tree : orchard.trees) {
        if (!stands(tree, as_of)) {
            continue;
        }
        FirstFruit fruit;
        fruit.tree = &tree;
        const auto accession = index.accessions.find(tree.accession.value_or(""));
        fruit.accession = accession == index.accessions.end() ? nullptr : accession->second;
        fruit.cross = fruit.accession == nullptr ? "" : cross_of_seedling(*fruit.accession, orchard.goals);
        if (const auto seen = index.seen.find(tree.label); seen != index.seen.end()) {
            fruit.seen = seen->second;
        }
        fruit.pear = is_pear(fruit, orchard);
        fruit.dwarfed = is_dwarfing(tree.rootstock);
        if (tell_sowing(fruit, index)) {
            tell_years(fruit, year);
            all.seedlings.push_back(fruit);
        } else {
            ++all.unknown;
        }
    }
    return all;
}

}  // namespace pipward::seed
