// SPDX-License-Identifier: MIT
#pragma once

#include <fmt/format.h>

#include <array>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"

/// A made-up orchard of any size with every kind of record that leads to a tree. All names are invented;
/// those of rootstocks are the trade's.
namespace pipward::testing {

inline const std::array<std::string, 20> block_names{
    "Upper",       "Lower",       "Knoll",     "Mill Field", "Long Acre", "Brook Side",  "Hill Top",
    "Old Orchard", "Far Meadow",  "Ash Piece", "East Wall",  "Nursery",   "Quarry Bank", "Sandpit",
    "Tithe Barn",  "Ridge Close", "Deep Lane", "Wind Gap",   "Fox Cover", "Gravel Hole"};
inline const std::array<std::string, 20> block_codes{"UP", "LO", "KN", "MF", "LA", "BS", "HT",
                                                     "OO", "FM", "AP", "EW", "NU", "QB", "SP",
                                                     "TB", "RC", "DL", "WG", "FC", "GH"};
inline const std::array<std::string, 5> stock_names{"M9", "M26", "MM106", "Quince A", "Pyrodwarf"};

inline std::string cultivar_name(int number) {
    static constexpr std::array first{"Lark",  "Wren",  "Dapple",  "Kettle",  "Marl",   "Tansy", "Owl",
                                      "Ridge", "Grey",  "Thorn",   "Bramble", "Sorrel", "Heron", "Copper",
                                      "Amber", "Flint", "Juniper", "Hazel",   "Linnet", "Plover"};
    static constexpr std::array second{"fold", "lea",  "stead", "fen",  "combe", "wether", "mere",   "bury",
                                       "wick", "holt", "garth", "dale", "ford",  "wold",   "thwaite"};
    static constexpr std::array third{"", " Red", " Late", " Early", " Russet"};
    const auto n = static_cast<std::size_t>(number);
    return std::string(first[n % first.size()]) + second[n / first.size() % second.size()] +
           third[n % third.size()];
}

/// How large the orchard is.
struct LargeForm {
    int blocks = 10;      ///< at most 20
    int rows = 20;        ///< of each block
    int positions = 25;   ///< of each row
    int cultivars = 200;  ///< at most 300
    int family = 40;      ///< seedlings of one cross
};

/// The digits that rows and positions have on labels.
inline int label_digits(const LargeForm& form) {
    return form.rows > 99 || form.positions > 99 ? 3 : 2;
}

inline Tree large_tree(const LargeForm& form, int i) {
    const int position = i % form.positions;
    const int row = i / form.positions % form.rows;
    const int block = i / form.positions / form.rows;
    Tree tree;
    tree.fid = i + 1;
    tree.label = fmt::format("{}-{:0{}}-{:0{}}", block_codes[static_cast<std::size_t>(block)], row + 1,
                             label_digits(form), position + 1, label_digits(form));
    tree.block = block_names[static_cast<std::size_t>(block)];
    tree.row = std::to_string(row + 1);
    tree.position = position + 1;
    tree.rootstock = stock_names[static_cast<std::size_t>((i / 7) % 5)];
    tree.planted_on = make_day({2001 + (i / form.positions * 5) % 23, 3, 20});
    tree.at = MapPoint{
        522000.0 + 2000 * (block % 5) + 2.5 * position, 5331000.0 + 2000 * (block / 5) + 4.0 * row, {}};
    return tree;
}

// Half of the trees are seedlings of crosses, the others grafted.
inline void give_seedling(Orchard& orchard, Tree& tree, int number, const LargeForm& form) {
    const int family = number / form.family;
    if (number % form.family == 0) {
        CrossGoal goal;
        goal.code = fmt::format("{:02}-{:02}", 1 + family % 24, 1 + family / 24);
        goal.season = Season{2001 + family % 24};
        goal.seed_parent = orchard.accessions[static_cast<std::size_t>(family * 7 % form.cultivars)].name;
        goal.pollen_parent = orchard
                                 .accessions[static_cast<std::size_t>(
                                     (family * 11 + 3 + family / form.cultivars) % form.cultivars)]
                                 .name;
        goal.seedlings_wanted = form.family;
        orchard.goals.push_back(goal);
    }
    Accession seedling;
    seedling.name = fmt::format("{}-{:03}", orchard.goals.back().code, number % form.family + 1);
    seedling.kind = AccessionKind::seedling;
    seedling.seed_parent = orchard.goals.back().seed_parent;
    seedling.pollen_parent = orchard.goals.back().pollen_parent;
    tree.accession = seedling.name;
    tree.rootstock.reset();
    orchard.accessions.push_back(std::move(seedling));
}

inline std::string nickname(int number) {
    static constexpr std::array first{"Bumble", "Giggle", "Moon",   "Pepper",
                                      "Snuff",  "Tumble", "Wiggle", "Zig"};
    static constexpr std::array second{"wump", "kins", "zag", "pott", "bang"};
    const auto n = static_cast<std::size_t>(number);
    return std::string(first[n % first.size()]) + second[n / first.size() % second.size()];
}

inline void pollinate(Orchard& orchard) {
    for (std::size_t i = 0; i < orchard.goals.size(); i += 3) {
        const auto& goal = orchard.goals[i];
        for (const auto& tree : orchard.trees) {
            if (tree.accession == goal.seed_parent) {
                Pollination work;
                work.tag = goal.code + "-a";
                work.cross = goal.code;
                work.tree = tree.label;
                work.lot = "P-" + goal.code;
                orchard.pollinations.push_back(work);
                break;
            }
        }
    }
}

inline Orchard large_orchard(const LargeForm& form = {}) {
    Orchard orchard;
    orchard.crs = "EPSG:25832";
    for (int i = 0; i < form.cultivars; ++i) {
        Accession accession;
        accession.fid = i + 1;
        accession.name = cultivar_name(i);
        accession.kind = AccessionKind::cultivar;
        if (i < 40) {
            accession.remark = "Called " + nickname(i) + " by the pickers.";
        }
        orchard.accessions.push_back(accession);
    }
    const int count = form.blocks * form.rows * form.positions;
    for (int i = 0; i < count; ++i) {
        auto tree = large_tree(form, i);
        if (i % 2 == 0) {
            give_seedling(orchard, tree, i / 2, form);
        } else {
            tree.accession =
                orchard.accessions[static_cast<std::size_t>((i / 2 * 7 + i / 50) % form.cultivars)].name;
        }
        orchard.trees.push_back(std::move(tree));
    }
    pollinate(orchard);
    for (std::size_t i = 1; i < orchard.goals.size(); i += 3) {
        SeedLot lot;
        lot.code = "S-" + orchard.goals[i].code;
        lot.cross = orchard.goals[i].code;
        orchard.seed_lots.push_back(lot);
    }
    return orchard;
}

}  // namespace pipward::testing
