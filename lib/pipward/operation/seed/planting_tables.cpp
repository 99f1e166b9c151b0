// SPDX-License-Identifier: MIT
#include "pipward/operation/seed/detail/planting_tables.h"

#include "pipward/operation/declare/column_of.h"
#include "pipward/record/descent.h"
#include "pipward/seed/cold_need.h"

namespace pipward::operation::detail {
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
    Table table;
    table.shape.name = "accession";
    for (const auto* name : {"name", "kind", "species", "seed_parent", "pollen_parent", "note"}) {
        table.shape.columns.push_back({name, text, "", "", ""});
    }
    const OrchardIndex book(orchard);
    for (const auto& tree : planted) {
        if (tree.goal != nullptr) {
            table.rows.push_back(
                {{tree.accession, std::string("seedling"), cell(species_of(book, tree.goal->seed_parent)),
                  tree.goal->seed_parent, tree.goal->pollen_parent, note}});
        }
    }
    return table;
}

Table new_trees(const std::vector<seed::Planted>& planted, Day planted_on, const std::string& note) {
    Table table;
    table.shape.name = "tree";
    table.shape.has_points = true;
    for (const auto* name : {"label", "accession", "block", "row", "purpose", "placed_by", "note"}) {
        table.shape.columns.push_back({name, text, "", "", ""});
    }
    table.shape.columns.push_back({"position", whole, "", "", ""});
    table.shape.columns.push_back({"planted_on", day, "", "", ""});
    for (const auto& tree : planted) {
        Row row;
        row.cells = {tree.label,
                     tree.accession,
                     tree.place->block,
                     tree.place->row,
                     std::string(tree.goal == nullptr ? "other" : "seedling"),
                     std::string("computed"),
                     note,
                     std::int64_t{tree.place->position},
                     planted_on};
        row.at = tree.place->at;
        table.rows.push_back(std::move(row));
    }
    return table;
}

}  // namespace pipward::operation::detail
