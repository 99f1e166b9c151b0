// SPDX-License-Identifier: MIT
#include "seedlings.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "parents.h"
#include "planting.h"
#include "random_source.h"

namespace pipward::larkfold {
namespace {

struct Family {
    std::string cross;
    std::string seed_parent;
    std::string pollen_parent;
    std::string planted_on;
    int row = 4;
    int first_position = 1;
    int trees = 0;
    int fruit_from = 0;  ///< the first autumn with fruit to taste
};

const std::vector<Family>& families() {
    static const std::vector<Family> all{
        {"16-01", "Tansy Lane", "Wrenlea", "2018-04-14", 4, 1, 10, 2022},
        {"17-01", "Larkfold Red", "Larkfold Mix", "2019-04-13", 5, 1, 8, 2023},
        {"17-02", "Dapplestead", "Greywether", "2019-04-13", 5, 9, 4, 2024},
    };
    return all;
}

const std::vector<std::string>& culled() {
    static const std::vector<std::string> all{"16-01-07", "17-01-03", "17-01-08"};
    return all;
}

constexpr auto culled_on = "2024-11-16";
constexpr auto favourite = "16-01-04";

std::string seedling_name(const Family& family, int number) {
    return fmt::format("{}-{:02}", family.cross, number);
}

Tree tree_in(int row, int position) {
    const auto block = block_plans()[1];
    const auto place = place_of(block, row, position);
    Tree tree;
    tree.label = fmt::format("{}-{:02}-{:02}", block.letters, row, position);
    tree.block = block.name;
    tree.row = std::to_string(row);
    tree.position = position;
    tree.elevation = elevation_at(place);
    tree.at = map_point(place);
    return tree;
}

Tree seedling_tree(const Family& family, int number) {
    Tree tree = tree_in(family.row, family.first_position + number - 1);
    tree.accession = seedling_name(family, number);
    tree.rootstock = "own roots";
    tree.planted_on = parse_iso_day(family.planted_on);
    tree.purpose = TreePurpose::seedling;
    tree.placed_by = PlacedBy::computed;
    tree.accuracy = Metres{0.5};
    if (std::ranges::count(culled(), *tree.accession) > 0) {
        tree.removed_on = parse_iso_day(culled_on);
        tree.remark = "Culled: scab every year.";
    }
    return tree;
}

Tree unrecorded_tree(int position) {
    Tree tree = tree_in(4, position);
    tree.placed_by = PlacedBy::estimated;
    tree.accuracy = Metres{3};
    tree.remark = "Stood here when the block was taken over.";
    return tree;
}

struct Trait {
    std::string name;
    double usual = 5;
    double between_seedlings = 1.5;
    double between_years = 0.7;
    double best_plus = 0;  ///< how far the favourite is above the rest
    double low = 1;
    double high = 9;
};

const std::array<Trait, 3>& traits() {
    static const std::array<Trait, 3> all{{
        {"taste", 5.0, 1.4, 0.7, 2.5, 1, 9},
        {"fruit_mass_g", 150, 32, 14, 25, 40, 350},
        {"scab", 3.5, 1.6, 0.8, -2.0, 1, 9},
    }};
    return all;
}

double score_of(const std::string& seedling, const Trait& trait, int year) {
    RandomSource own("trait " + trait.name + " " + seedling);
    RandomSource spring(fmt::format("trait {} {} {}", trait.name, seedling, year));
    const double culled_for_scab =
        trait.name == "scab" && std::ranges::count(culled(), seedling) > 0 ? 4.0 : 0.0;
    const double value = trait.usual + trait.between_seedlings * own.normal() +
                         trait.between_years * spring.normal() +
                         (seedling == favourite ? trait.best_plus : 0.0) + culled_for_scab;
    return std::clamp(rounded(value, 1), trait.low, trait.high);
}

std::vector<TraitScore> scores_of(const Tree& tree, int year) {
    const Day scored_on = *make_day({year, 9, RandomSource("scored " + tree.label).whole(18, 28)});
    std::vector<TraitScore> scores;
    for (const auto& trait : traits()) {
        TraitScore score;
        score.tree = tree.label;
        score.scored_on = scored_on;
        score.trait = trait.name;
        score.score = score_of(*tree.accession, trait, year);
        scores.push_back(score);
    }
    return scores;
}

}  // namespace

std::vector<Accession> seedling_accessions() {
    std::vector<Accession> accessions;
    for (const auto& family : families()) {
        for (int number = 1; number <= family.trees; ++number) {
            Accession accession;
            accession.name = seedling_name(family, number);
            accession.kind = AccessionKind::seedling;
            accession.seed_parent = family.seed_parent;
            accession.pollen_parent = family.pollen_parent;
            accession.ploidy = 2;
            accession.species = "Malus domestica";
            if (accession.name != favourite) {
                accessions.push_back(accession);
            }
        }
    }
    return accessions;
}

std::vector<Tree> seedling_trees() {
    std::vector<Tree> trees;
    for (const auto& family : families()) {
        for (int number = 1; number <= family.trees; ++number) {
            trees.push_back(seedling_tree(family, number));
        }
        if (family.row == 4) {
            trees.push_back(unrecorded_tree(11));
            trees.push_back(unrecorded_tree(12));
        }
    }
    return trees;
}

std::vector<TraitScore> seedling_scores(const std::vector<Tree>& trees) {
    std::vector<TraitScore> scores;
    for (const auto& family : families()) {
        for (const auto& tree : trees) {
            if (!tree.accession || !tree.accession->starts_with(family.cross + "-")) {
                continue;
            }
            for (int year = family.fruit_from; year <= 2025; ++year) {
                if (!tree.removed_on || year <= parts_of(*tree.removed_on).year) {
                    const auto more = scores_of(tree, year);
                    scores.insert(scores.end(), more.begin(), more.end());
                }
            }
        }
    }
    return scores;
}

}  // namespace pipward::larkfold
