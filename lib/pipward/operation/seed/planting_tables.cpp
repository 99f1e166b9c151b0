// SPDX-License-Identifier: MIT
#include "pipward/operation/seed/planting_tables.h"

#include "pipward/book/records.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/record/descent.h"
#include "pipward/seed/cold_need.h"

namespace pipward::operation {
namespace {

using enum CellType;

const std::vector<ColumnOf<seed::Planted>>& planted_columns() {
    static const std::vector<ColumnOf<seed::Planted>> columns{
        {{"planting_order", whole, "", "Order", "In which one plants, and sets up the trays."},
         [](const seed::Planted& p) { return whole_cell(p.order); }},
        {{"label", text, "", "Label", "Of the tree."},
         [](const seed::Planted& p) { return text_cell(p.label); }},
        {{"accession", text, "", "Accession", "What it is."},
         [](const seed::Planted& p) { return text_cell(p.accession); }},
        {{"cross", text, "", "Cross", "Unknown for a check tree."},
         [](const seed::Planted& p) { return p.goal == nullptr ? Cell{} : text_cell(p.goal->code); }},
        {{"parents", text, "", "Parents", "Seed parent first."},
         [](const seed::Planted& p) {
             return p.goal == nullptr ? Cell{}
                                      : text_cell(p.goal->seed_parent + " × " + p.goal->pollen_parent);
         }},
        {{"block", text, "", "Block", "Where it stands."},
         [](const seed::Planted& p) { return text_cell(p.place->block); }},
        {{"row", text, "", "Tree row", "Within the block."},
         [](const seed::Planted& p) { return text_cell(p.place->row); }},
        {{"position", whole, "", "Position", "In the row."},
         [](const seed::Planted& p) { return whole_cell(p.place->position); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const seed::Planted& p) { return Cell{p.address}; }},
    };
    return columns;
}

}  // namespace

TableShape planted_shape() {
    return shape_of<seed::Planted>({"planting",
                                    "Planting list",
                                    "Every seedling with its number and its place, in the order of planting.",
                                    true,
                                    {}},
                                   planted_columns());
}

Table planting_table(const std::vector<seed::Planted>& planted) {
    auto table = table_of<seed::Planted>(planted_shape(), planted, planted_columns());
    for (std::size_t i = 0; i < planted.size(); ++i) {
        table.rows[i].at = planted[i].place->at;
    }
    return table;
}

Table new_accessions(const std::vector<seed::Planted>& planted, const Orchard& orchard,
                     const std::string& note) {
    std::vector<Accession> accessions;
    const OrchardIndex book(orchard);
    for (const auto& tree : planted) {
        if (tree.goal != nullptr) {
            auto& made = accessions.emplace_back();
            made.name = tree.accession;
            made.kind = AccessionKind::seedling;
            made.species = species_of(book, tree.goal->seed_parent);
            made.seed_parent = tree.goal->seed_parent;
            made.pollen_parent = tree.goal->pollen_parent;
            made.note = note;
        }
    }
    return book::rows_to_append(accessions);
}

Table new_trees(const std::vector<seed::Planted>& planted, Day planted_on, const std::string& note) {
    std::vector<Tree> trees;
    for (const auto& tree : planted) {
        auto& made = trees.emplace_back();
        made.label = tree.label;
        made.accession = tree.accession;
        made.block = tree.place->block;
        made.row = tree.place->row;
        made.position = tree.place->position;
        made.planted_on = planted_on;
        made.purpose = tree.goal == nullptr ? TreePurpose::other : TreePurpose::seedling;
        made.placed_by = PlacedBy::computed;
        made.at = tree.place->at;
        made.note = note;
    }
    return book::rows_to_append(trees);
}

}  // namespace pipward::operation
