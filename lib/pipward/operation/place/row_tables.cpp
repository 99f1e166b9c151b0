// SPDX-License-Identifier: MIT
#include "pipward/operation/place/detail/row_tables.h"

#include "pipward/operation/declare/column_of.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct PositionRow {
    const place::RowPosition* place = nullptr;
    Sentence address{};
};

const std::vector<ColumnOf<PositionRow>>& position_columns() {
    static const std::vector<ColumnOf<PositionRow>> columns{
        {{"block", text, "", "Block", "The block that the row stands in."},
         [](const PositionRow& p) { return text_cell(p.place->block); }},
        {{"row", text, "", "Tree row", "The row within the block."},
         [](const PositionRow& p) { return text_cell(p.place->row); }},
        {{"position", whole, "", "Position", "Its number in the row."},
         [](const PositionRow& p) { return whole_cell(p.place->position); }},
        {{"state", text, "", "State",
          "taken: a tree stands there; reserved: one is to be planted; vacant: none."},
         [](const PositionRow& p) { return text_cell(place::to_text(p.place->state)); }},
        {{"tree", text, "", "Tree", "The label of the tree that stands or is to stand there."},
         [](const PositionRow& p) { return text_cell(p.place->tree); }},
        {{"offset_m", number, "m", "Offset", "Offset of the tree's point on the map from the position."},
         [](const PositionRow& p) { return p.place->off ? number_cell(p.place->off->value, 2) : Cell{}; }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const PositionRow& p) { return text_cell(p.address); }},
    };
    return columns;
}

constexpr TableOf<PositionRow> row_position_rows{
    "row_position",
    "Row positions",
    "Every numbered position in the rows, and its state.",
    position_columns,
    [] {
        return TableView{.first = {"block", "row", "position", "state", "tree", "offset_m"}};
    },
    [](const PositionRow& p) { return std::optional{p.place->at}; }};

}  // namespace

ResultShape row_position_shape() {
    return row_position_rows.shape();
}

Table row_position_table(std::span<const place::RowPosition> positions, std::span<const TreeRow> rows) {
    std::vector<PositionRow> records;
    for (const auto& position : positions) {
        records.push_back({&position, place::address_of_position(position, rows)});
    }
    return row_position_rows.of(records);
}

}  // namespace pipward::operation::detail
