// SPDX-License-Identifier: MIT
#include "planting.h"

#include <fmt/format.h>

#include <algorithm>

#include "parents.h"

namespace pipward::larkfold {
namespace {

constexpr double between_rows = 4;
constexpr double margin = 3;

struct Run {
    std::string accession;  ///< empty where nobody knows what the trees are
    int trees = 0;
};

/// What stands in a row, from position 1 on.
struct Planting {
    std::size_t block = 0;  ///< into block_plans()
    int row = 1;
    std::string planted_on;
    std::string rootstock;
    PlacedBy placed_by = PlacedBy::surveyed;
    double accuracy = 0;
    std::vector<Run> runs;
};

const std::vector<Planting>& parent_rows() {
    using enum PlacedBy;
    static const std::vector<Planting> all{
        {0,
         1,
         "2007-11-10",
         "dwarfing",
         surveyed,
         0.05,
         {{"Larkfold Early", 4}, {"Owlcombe", 4}, {"Wrenlea", 4}}},
        {0,
         2,
         "2007-11-12",
         "dwarfing",
         surveyed,
         0.05,
         {{"Tansy Lane", 4}, {"LF 08-041", 3}, {"Larkfold Red", 5}}},
        {0,
         3,
         "2008-11-08",
         "dwarfing",
         surveyed,
         0.05,
         {{"Kettlefen", 4}, {"Marlside", 4}, {"Dapplestead", 4}}},
        {0,
         4,
         "2008-11-09",
         "half-dwarfing",
         surveyed,
         0.05,
         {{"Fallowby", 3}, {"Greywether", 3}, {"Mossgate Late", 3}, {"Ridgewhistle", 3}}},
        {0,
         5,
         "2008-03-20",
         "quince",
         surveyed,
         0.05,
         {{"Swanmarsh", 3}, {"Tillowby", 3}, {"Amberwell", 3}, {"Quillet", 3}}},
        {1,
         1,
         "2009-11-14",
         "half-dwarfing",
         computed,
         0.5,
         {{"Larkfold Red", 4}, {"Owlcombe", 2}, {"Wrenlea", 3}, {"Marlside", 3}}},
        {1,
         2,
         "2010-03-27",
         "half-dwarfing",
         computed,
         0.5,
         {{"LF 09-117", 4}, {"LF 11-023", 3}, {"Mirkendell", 2}, {"Mossgate Late", 3}}},
        {1,
         3,
         "2010-03-28",
         "half-dwarfing",
         digitised,
         2,
         {{"Greywether", 3}, {"Ridgewhistle", 3}, {"Kettlefen", 2}, {"Fallowby", 2}, {"Ditch Crab", 2}}},
    };
    return all;
}

/// Accessions that were planted later, or on another stock, than the row that they stand in.
struct Exception {
    std::string accession;
    std::string planted_on;
    std::string rootstock;
};

const std::vector<Exception>& exceptions() {
    static const std::vector<Exception> all{
        {"LF 08-041", "2011-11-19", "dwarfing"},       {"Marlside", "2011-11-20", "dwarfing"},
        {"LF 09-117", "2012-11-24", "half-dwarfing"},  {"LF 11-023", "2022-03-19", "half-dwarfing"},
        {"Mirkendell", "2023-04-01", "half-dwarfing"}, {"Quillet", "2008-03-20", "half-dwarfing"},
        {"Ditch Crab", "2010-03-28", "seedling"},
    };
    return all;
}

struct Removal {
    std::string label;
    std::string removed_on;
    std::string remark;
};

const std::vector<Removal>& removals() {
    static const std::vector<Removal> all{
        {"LO-01-03", "2021-11-18", "Roots eaten by voles."},
        {"LO-03-11", "2019-12-05", "Canker on the stem; planted again as LO-03-11R."},
        {"UP-01-06", "2024-02-20", "Broken by snow."},
    };
    return all;
}

Tree tree_at(const Planting& planting, int position, const std::string& accession) {
    const auto block = block_plans()[planting.block];
    const auto place = place_of(block, planting.row, position);
    Tree tree;
    tree.label = fmt::format("{}-{:02}-{:02}", block.letters, planting.row, position);
    tree.accession = accession;
    tree.block = block.name;
    tree.row = std::to_string(planting.row);
    tree.position = position;
    tree.rootstock = planting.rootstock;
    tree.planted_on = parse_iso_day(planting.planted_on);
    tree.purpose = TreePurpose::parent;
    tree.placed_by = planting.placed_by;
    tree.accuracy = Metres{planting.accuracy};
    tree.elevation = elevation_at(place);
    tree.at = map_point(place);
    return tree;
}

void apply_exceptions(Tree& tree) {
    const auto found = std::ranges::find(exceptions(), *tree.accession, &Exception::accession);
    if (found != exceptions().end()) {
        tree.planted_on = parse_iso_day(found->planted_on);
        tree.rootstock = found->rootstock;
    }
    if (parent_named(*tree.accession).kind == AccessionKind::species) {
        tree.purpose = TreePurpose::pollinizer;
    }
}

void apply_removals(std::vector<Tree>& trees) {
    for (const auto& removal : removals()) {
        auto& tree = *std::ranges::find(trees, removal.label, &Tree::label);
        tree.removed_on = parse_iso_day(removal.removed_on);
        tree.remark = removal.remark;
    }
}

Tree planted_again(const std::vector<Tree>& trees) {
    Tree tree = *std::ranges::find(trees, std::string("LO-03-11"), &Tree::label);
    tree.label += "R";
    tree.planted_on = parse_iso_day("2020-03-28");
    tree.removed_on.reset();
    tree.remark = "In the place of LO-03-11.";
    return tree;
}

}  // namespace

std::vector<BlockPlan> block_plans() {
    return {{"Lower", "LO", {0, 0}, 3.5}, {"Upper", "UP", {10, 300}, 3.0}};
}

SlopePlace place_of(const BlockPlan& block, int row, int position) {
    return {block.start.along + block.spacing * (position - 1), block.start.up + between_rows * (row - 1)};
}

std::string block_wkt(const BlockPlan& block) {
    const auto low = place_of(block, 1, 1);
    const auto high = place_of(block, rows_a_block, trees_a_row);
    return rectangle_wkt({low.along - margin, low.up - margin}, {high.along + margin, high.up + margin});
}

std::string row_wkt(const BlockPlan& block, int row) {
    return line_wkt(place_of(block, row, 1), place_of(block, row, trees_a_row));
}

std::vector<Tree> planted_trees() {
    std::vector<Tree> trees;
    for (const auto& planting : parent_rows()) {
        int position = 0;
        for (const auto& run : planting.runs) {
            for (int i = 0; i < run.trees; ++i) {
                trees.push_back(tree_at(planting, ++position, run.accession));
                apply_exceptions(trees.back());
            }
        }
    }
    apply_removals(trees);
    trees.push_back(planted_again(trees));
    return trees;
}

std::vector<std::string> trees_of(const std::vector<Tree>& trees, const std::string& accession, Day day) {
    std::vector<std::string> labels;
    for (const auto& tree : trees) {
        const bool living = tree.planted_on <= day && (!tree.removed_on || *tree.removed_on > day);
        if (tree.accession == accession && living) {
            labels.push_back(tree.label);
        }
    }
    return labels;
}

}  // namespace pipward::larkfold
