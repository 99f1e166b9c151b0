// SPDX-License-Identifier: MIT
#include "pipward/book/new_rows.h"

#include <fmt/format.h>

namespace pipward::book {
namespace {

std::string wkt_of(const TreeRow& row) {
    const bool high = !row.line.empty() && row.line.front().height && row.line.back().height;
    std::string points;
    for (const auto& point : row.line) {
        points += fmt::format("{}{} {}", points.empty() ? "" : ", ", point.x, point.y);
        points += high ? fmt::format(" {}", point.height.value_or(Metres{}).value) : "";
    }
    return fmt::format("LINESTRING {}({})", high ? "Z " : "", points);
}

Cell whole(const std::optional<int>& number) {
    return number ? Cell{std::int64_t{*number}} : Cell{};
}

}  // namespace

Table rows_to_add(std::span<const TreeRow> rows) {
    Table table;
    table.shape.name = "tree_row";
    table.shape.columns = {
        {"block", CellType::text, "", "", ""},        {"name", CellType::text, "", "", ""},
        {"spacing_m", CellType::number, "m", "", ""}, {"first_position", CellType::whole, "", "", ""},
        {"remark", CellType::text, "", "", ""},       {std::string(wkt_column), CellType::text, "", "", ""}};
    for (const auto& row : rows) {
        Row made;
        made.cells.resize(table.shape.columns.size());
        made.cells[0] = row.block;
        made.cells[1] = row.name;
        if (row.spacing) {
            made.cells[2] = row.spacing->value;
        }
        made.cells[3] = std::int64_t{row.first_position};
        made.cells[4] = cell(row.remark);
        if (row.line.size() > 1) {
            made.cells[5] = wkt_of(row);
        }
        table.rows.push_back(std::move(made));
    }
    return table;
}

Table block_to_add(const std::string& name, const MapPoint& low, const MapPoint& high) {
    Table table;
    table.shape.name = "block";
    table.shape.columns = {{"name", CellType::text, "", "", ""},
                           {std::string(wkt_column), CellType::text, "", "", ""}};
    table.rows.push_back({{name, fmt::format("POLYGON (({0} {1}, {2} {1}, {2} {3}, {0} {3}, {0} {1}))", low.x,
                                             low.y, high.x, high.y)}});
    return table;
}

CellEdit placed(const Tree& tree, const std::string& block, const std::string& row,
                const std::optional<int>& position) {
    CellEdit edit{"tree", tree.fid, tree.label};
    edit.before = {{"label", tree.label},
                   {"block", cell(tree.block)},
                   {"row", cell(tree.row)},
                   {"position", whole(tree.position)}};
    edit.after = {{"block", block}, {"row", row}, {"position", whole(position)}};
    return edit;
}

RowRemoval removal_of(const Tree& tree) {
    return {"tree", tree.fid, tree.label, {{"label", tree.label}, {"remark", cell(tree.remark)}}};
}

RowRemoval removal_of(const Accession& accession) {
    return {"accession",
            accession.fid,
            accession.name,
            {{"name", accession.name}, {"remark", cell(accession.remark)}}};
}

RowRemoval removal_of(const SeedWithdrawal& withdrawal) {
    return {"seed_withdrawal",
            withdrawal.fid,
            withdrawal.lot,
            {{"lot", withdrawal.lot}, {"remark", cell(withdrawal.remark)}}};
}

}  // namespace pipward::book
