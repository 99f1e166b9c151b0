// SPDX-License-Identifier: MIT
#include "pipward/seed/first_fruiting.h"

#include <algorithm>
#include <map>

#include "pipward/record/presence.h"
#include "pipward/seed/detail/rootstock.h"
#include "pipward/seed/detail/trait_kind.h"

namespace pipward::seed {
namespace {

int year_of(Day day) {
    return parts_of(day).year;
}

struct Seen {
    std::map<std::string, int> counted;  ///< year of the first germinated seed of a cross
    std::map<std::string, int> at_tree;  ///< year of the first bloom, or score of bloom or fruit, at a tree
};

void see(std::map<std::string, int>& years, const std::string& name, Day day) {
    const auto [found, is_new] = years.try_emplace(name, year_of(day));
    found->second = std::min(found->second, year_of(day));
}

Seen seen_until(const OrchardIndex& book, Day as_of) {
    const auto& orchard = book.orchard();
    Seen seen;
    for (const auto& count : orchard.germination_counts) {
        const auto* lot = book.seed_lot(count.lot);
        if (count.germinated > 0 && count.counted_on <= as_of && lot != nullptr) {
            see(seen.counted, lot->cross, count.counted_on);
        }
    }
    for (const auto& observation : orchard.bloom_observations) {
        if (observation.tree && observation.bbch >= first_bloom && observation.observed_on <= as_of) {
            see(seen.at_tree, *observation.tree, observation.observed_on);
        }
    }
    for (const auto& score : orchard.trait_scores) {
        if (score.scored_on <= as_of && detail::shows_bloom(detail::kind_of_trait(orchard, score.trait))) {
            see(seen.at_tree, score.tree, score.scored_on);
        }
    }
    return seen;
}

/// Sown in the spring after the crossing; sooner known from the counts of its lots. A seedling without a
/// cross was planted in the year in which it was sown, or the next.
bool tell_sowing(FirstFruit& fruit, const OrchardIndex& book, const Seen& seen) {
    if (const auto counted = seen.counted.find(fruit.cross); counted != seen.counted.end()) {
        fruit.sown = counted->second;
        fruit.sown_by = SownBy::lot_counts;
    } else if (const auto* goal = book.goal(fruit.cross)) {
        fruit.sown = goal->season.year + years_from_cross_to_sowing;
        fruit.sown_by = SownBy::cross;
    } else if (fruit.tree->planted_on) {
        fruit.sown = year_of(*fruit.tree->planted_on);
        fruit.sown_by = SownBy::planting;
    } else {
        return false;
    }
    return true;
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

}  // namespace

FirstFruits first_fruits(const Orchard& orchard, int year, Day as_of) {
    const OrchardIndex book(orchard);
    const auto seen = seen_until(book, as_of);
    FirstFruits all;
    for (const auto& tree : orchard.trees) {
        if (tree.purpose != TreePurpose::seedling || !stands_on(tree, as_of)) {
            continue;
        }
        FirstFruit fruit;
        fruit.tree = &tree;
        fruit.accession = book.accession(tree.accession.value_or(""));
        const auto* goal = fruit.accession == nullptr ? nullptr : cross_of_seedling(book, *fruit.accession);
        fruit.cross = goal == nullptr ? "" : goal->code;
        if (const auto found = seen.at_tree.find(tree.label); found != seen.at_tree.end()) {
            fruit.seen = found->second;
        }
        fruit.pear = genus_of(book, tree.accession.value_or("")).starts_with("Pyrus");
        fruit.dwarfed = detail::is_dwarfing(tree.rootstock.value_or(""));
        if (tell_sowing(fruit, book, seen)) {
            tell_years(fruit, year);
            all.seedlings.push_back(fruit);
        } else {
            ++all.unknown;
        }
    }
    return all;
}

}  // namespace pipward::seed
