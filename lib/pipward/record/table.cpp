// SPDX-License-Identifier: MIT
#include "pipward/record/table.h"

#include <fmt/format.h>

#include <algorithm>

namespace pipward::record {

Cell::Cell() = default;
Cell::Cell(const Cell& other) = default;
Cell::Cell(Cell&& other) noexcept = default;
Cell& Cell::operator=(const Cell& other) = default;
Cell& Cell::operator=(Cell&& other) noexcept = default;
Cell::~Cell() = default;

Table::Table() = default;
Table::Table(const Table& other) = default;
Table::Table(Table&& other) noexcept = default;
Table& Table::operator=(const Table& other) = default;
Table& Table::operator=(Table&& other) noexcept = default;
Table::~Table() = default;
Table::Table(TableShape columns, std::vector<Row> content)
    : shape(std::move(columns)), rows(std::move(content)) {}
namespace {

std::string plain_word(const Column& column, const std::string& code) {
    const auto found = std::ranges::find(column.words, code, &CodeWord::code);
    return found == column.words.end() ? code : found->plain;
}

}  // namespace

std::string_view to_text(CellType type) {
    switch (type) {
        case CellType::whole:
            return "integer";
        case CellType::number:
            return "number";
        case CellType::day:
            return "day";
        case CellType::yes_no:
            return "boolean";
        case CellType::text:
            break;
    }
    return "text";
}

std::string line_wkt(const std::vector<MapPoint>& line) {
    if (line.size() < 2) {
        return {};
    }
    std::string points;
    for (const auto& point : line) {
        points += fmt::format("{}{:.12g} {:.12g}", points.empty() ? "" : ",", point.x, point.y);
    }
    return "LINESTRING (" + points + ")";
}

Table spoken(Table table, const Wording& wording) {
    for (auto& row : table.rows) {
        for (auto& cell : row.cells) {
            if (const auto* sentence = std::get_if<Sentence>(&cell)) {
                cell = sentence->empty() ? Cell{} : Cell{sentence->in(wording)};
            }
        }
    }
    return table;
}

Table with_lines_as_text(const Table& table) {
    auto wider = table;
    if (!table.shape.has_lines) {
        return wider;
    }
    wider.shape.columns.push_back({std::string(line_column), CellType::text, "", "Line",
                                   "The line as well-known text, in the coordinate system of the book."});
    for (auto& row : wider.rows) {
        auto line = line_wkt(row.line);
        row.cells.push_back(line.empty() ? Cell{} : Cell{std::move(line)});
    }
    return wider;
}

std::string to_text(const Cell& cell) {
    struct Writer {
        std::string operator()(std::monostate) const { return {}; }
        std::string operator()(const std::string& text) const { return text; }
        std::string operator()(std::int64_t number) const { return fmt::format("{}", number); }
        std::string operator()(double number) const { return fmt::format("{}", number); }
        std::string operator()(Day day) const { return to_iso(day); }
        std::string operator()(bool yes) const { return yes ? "yes" : "no"; }
        std::string operator()(const Sentence& sentence) const { return sentence.text(); }
    };
    return std::visit(Writer{}, cell);
}

std::string to_plain_text(const Column& column, const Cell& cell) {
    constexpr std::string_view between = ", ";
    auto rest = to_text(cell);
    if (column.words.empty()) {
        return rest;
    }
    std::string text;
    for (auto end = rest.find(between); end != rest.npos; end = rest.find(between)) {
        text += plain_word(column, rest.substr(0, end)) + std::string(between);
        rest.erase(0, end + between.size());
    }
    return text + plain_word(column, rest);
}

}  // namespace pipward::record
