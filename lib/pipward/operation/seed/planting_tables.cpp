// SPDX-License-Identifier: MIT
#include "pipward/operation/seed/detail/planting_tables.h"

#include "pipward/operation/declare/column_of.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

const std::vector<ColumnOf<seed::Planted>>& planted_columns() {
    static const std::vector<ColumnOf<seed::Planted>> columns{
        {{"planting_order", whole, "", "Order", "Order of planting, and of the trays."},
         [](const seed::Planted& p) { return whole_cell(p.order); }},
        {{"tree", text, "", "Tree", "Of the tree."},
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
        {{"block", text, "", "Block", "Location."},
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

const TableOf<seed::Planted> planting_table{
    "planting",
    "Planting list",
    "Every seedling with its number and its position, in planting order.",
    planted_columns,
    [] {
        return TableView{.first = {"planting_order", "tree", "accession", "address", "cross", "parents"}};
    },
    [](const seed::Planted& p) { return std::optional{p.place->at}; }};

}  // namespace pipward::operation::detail
