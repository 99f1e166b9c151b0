// SPDX-License-Identifier: MIT
#include "pipward/operation/planting_tables.h"

#include "pipward/operation/column_of.h"
#include "pipward/seed/cold_need.h"

namespace pipward::operation {
namespace {

using enum CellType;

const std::vector<ColumnOf<Planted>>& planted_columns() {
    static const std::vector<ColumnOf<Planted>> columns{
        {{"planting_order", whole, "", "Order", "In which one plants, and sets up the trays."},
         [](const Planted& p) { return whole_cell(p.order); }},
        {{"label", text, "", "Label", "Of the tree."}, [](const Planted& p) { return text_cell(p.label); }},
        {{"accession", text, "", "Accession", "What it is."},
         [](const Planted& p) { return text_cell(p.accession); }},
        {{"cross", text, "", "Cross", "Unknown for a check tree."},
         [](const Planted& p) { return p.goal == nullptr ? Cell{} : text_cell(p.goal->code); }},
        {{"parents", text, "", "Parents", "Seed parent first."},
         [](const Planted& p) {
             return p.goal == nullptr ? Cell{}
                                      : text_cell(p.goal->seed_parent + " × " + p.goal->pollen_parent);
         }},
        {{"block", text, "", "Block", "Where it stands."},
         [](const Planted& p) { return text_cell(p.place->block); }},
        {{"row", text, "", "Tree row", "Within the block."},
         [](const Planted& p) { return text_cell(p.place->row); }},
        {{"position", whole, "", "Position", "In the row."},
         [](const Planted& p) { return whole_cell(p.place->position); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const Planted& p) { return Cell{p.address}; }},
    };
    return columns;
}

}  // namespace

TableShape planted_shape() {
    return shape_of<Planted>({"planting",
                              "Planting list",
                              "Every seedling with its number and its place, in the order of planting.",
                              true,
                              {}},
                             planted_columns());
}

Table planting_table(const std::vector<Planted>& planted) {
    auto table = table_of<Planted>(planted_shape(), planted, planted_columns());
    for (std::size_t i = 0; i < planted.size(); ++i) {
        table.rows[i].at = planted[i].place->at;
    }
    return table;
}

Table new_accessions(const std::vector<Planted>& planted, const Orchard& orchard, const std::string& note) {
    Table table;
    table.shape.name = "accession";
    for (const auto* name : {"name", "kind", "species", "seed_parent", "pollen_parent", "note"}) {
        table.shape.columns.push_back({name, text, "", "", ""});
    }
    for (const auto& tree : planted) {
        if (tree.goal != nullptr) {
            table.rows.push_back({{tree.accession, std::string("seedling"),
                                   cell(seed::species_of_seed(orchard, tree.goal->seed_parent)),
                                   tree.goal->seed_parent, tree.goal->pollen_parent, note}});
        }
    }
    return table;
}

Table new_trees(const std::vector<Planted>& planted, Day planted_on, const std::string& note) {
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

}  // namespace pipward::operation
