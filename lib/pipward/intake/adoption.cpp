// SPDX-License-Identifier: MIT
#include "pipward/intake/adoption.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "pipward/book/book.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/value/utf8.h"

namespace pipward::intake {
namespace {

using book::GeometryKind;

std::string wkt_of(GeometryKind kind, const std::vector<MapPoint>& points) {
    const bool high =
        std::ranges::all_of(points, [](const MapPoint& point) { return point.height.has_value(); });
    std::string text;
    for (const auto& point : points) {
        text += fmt::format("{}{} {}", text.empty() ? "" : ", ", point.x, point.y);
        text += high ? fmt::format(" {}", point.height->value) : "";
    }
    return kind == GeometryKind::polygon ? fmt::format("POLYGON {}(({}))", high ? "Z " : "", text)
                                         : fmt::format("LINESTRING {}({})", high ? "Z " : "", text);
}

bool is_drawn(GeometryKind kind) {
    return kind == GeometryKind::line || kind == GeometryKind::polygon;
}

Table empty_table(const book::BookTable& table) {
    Table empty;
    empty.shape.name = table.name;
    for (const auto& column : table.columns) {
        empty.shape.columns.push_back({std::string(column.name), column.type, "", "", ""});
    }
    if (is_drawn(table.geometry)) {
        empty.shape.columns.push_back({std::string(book::wkt_column), CellType::text, "", "", ""});
    }
    return empty;
}

Row row_of(const MadeRow& made, const book::BookTable& table) {
    Row row;
    for (const auto& column : table.columns) {
        const auto cell = made.cells.find(std::string(column.name));
        row.cells.push_back(cell == made.cells.end() ? Cell{} : cell->second);
    }
    if (is_drawn(table.geometry)) {
        row.cells.push_back(made.points.empty() ? Cell{} : Cell{wkt_of(table.geometry, made.points)});
    } else if (table.geometry == GeometryKind::point && !made.points.empty()) {
        row.at = made.points.front();
    }
    return row;
}

}  // namespace

std::span<const Word<Fate>> words(Fate) {
    static constexpr std::array<Word<Fate>, 4> all{{{Fate::added, "added", "added"},
                                                    {Fate::known, "known", "in the book already"},
                                                    {Fate::left_out, "left_out", "left out"},
                                                    {Fate::refused, "refused", "refused"}}};
    return all;
}

std::span<const Word<AdoptTable>> words(AdoptTable) {
    static constexpr std::array table{
        Word<AdoptTable>{AdoptTable::trees, "trees", "points, one per tree"},
        Word<AdoptTable>{AdoptTable::accessions, "accessions",
                         "cultivars and selections, without a location"},
        Word<AdoptTable>{AdoptTable::rows, "rows", "lines, one per tree row"},
        Word<AdoptTable>{AdoptTable::blocks, "blocks", "areas, one per block"},
    };
    return table;
}

std::string AdoptRow::text(const std::string& column) const {
    const auto cell = cells.find(column);
    return cell == cells.end() ? std::string{} : to_text(cell->second);
}

std::string Adoption::key() const {
    return std::string(book::name_column(*book::find_book_table(table))->name);
}

std::string Adoption::name_of(const AdoptRow& row) const {
    constexpr std::size_t enough = 40;
    const auto name = row.text(key());
    return name.empty() ? row.feature : fmt::format("{} ({})", row.feature, one_line(name, enough));
}

void Adoption::complain(AdoptRow& row, Remark remark) {
    complain_of(row, finding_about({}, {}, std::move(remark)));
}

void Adoption::complain_of(AdoptRow& row, Finding finding) {
    if (finding.level == Level::error && row.fate != Fate::refused) {
        row.fate = Fate::refused;
        row.why = finding.message;
    }
    finding.table = layer;
    finding.row = name_of(row);
    findings.push_back(std::move(finding));
}

void Adoption::tell(Level level, std::string field, std::string value, Sentence message, Sentence remedy) {
    findings.push_back(
        {level, layer, {}, std::move(field), std::move(value), std::move(message), std::move(remedy)});
}

Adoption adopt(const AdoptOptions& options, const Orchard& orchard, std::span<const place::LonLat> known) {
    auto layer = detail::read_layer(options);
    auto adoption = detail::open_adoption(layer, options, orchard);
    detail::judge_shapes(adoption);
    detail::read_days(adoption, layer, options.date_format);
    detail::read_values(adoption, layer, options);
    detail::read_places(adoption, layer, options, orchard, known);
    detail::judge_clashes(adoption, options, orchard);
    detail::judge_names(adoption, options, orchard);
    detail::judge_whole(adoption, options, orchard);
    return adoption;
}

std::vector<Table> added_tables(const Adoption& adoption) {
    std::vector<Table> tables;
    for (const auto& made :
         detail::rows_to_add(adoption, [](const AdoptRow& row) { return row.fate == Fate::added; })) {
        const auto& table = *book::find_book_table(made.table);
        if (tables.empty() || tables.back().shape.name != made.table) {
            tables.push_back(empty_table(table));
        }
        tables.back().rows.push_back(row_of(made, table));
    }
    return tables;
}

}  // namespace pipward::intake
