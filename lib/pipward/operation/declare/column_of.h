// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <concepts>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "pipward/operation/operation.h"

namespace pipward::operation {

/// A column and how its cell is read off a record: a shape and its rows cannot get out of step.
template <class Record>
struct ColumnOf {
    Column column;
    Cell (*cell)(const Record&);
};

/// A table of results: what it is called, how its columns are read off a record, what of them a screen shows
/// first and, of a layer, where on the map a record lies.
template <class Record>
struct TableOf {
    const char* name;
    const char* title;
    const char* description;
    const std::vector<ColumnOf<Record>>& (*columns)();
    TableView (*view)() = nullptr;                           ///< null: all columns
    std::optional<MapPoint> (*at)(const Record&) = nullptr;  ///< of a layer of points
    std::vector<MapPoint> (*line)(const Record&) = nullptr;  ///< of a layer of lines

    ResultShape shape() const {
        ResultShape shape{{name, title, description, at != nullptr, {}, line != nullptr},
                          view == nullptr ? TableView{} : view()};
        for (const auto& entry : columns()) {
            shape.columns.push_back(entry.column);
        }
        return shape;
    }
    Row row(const Record& record) const {
        Row row;
        for (const auto& entry : columns()) {
            row.cells.push_back(entry.cell(record));
        }
        row.at = at == nullptr ? std::nullopt : at(record);
        row.line = line == nullptr ? std::vector<MapPoint>{} : line(record);
        return row;
    }
    Table of(std::span<const Record> records) const {
        Table table{shape(), {}};
        for (const auto& record : records) {
            table.rows.push_back(row(record));
        }
        return table;
    }
};

/// The words of a closed list, for a column that holds them.
template <class Enum>
std::vector<CodeWord> codes_of() {
    std::vector<CodeWord> codes;
    for (const auto& entry : words(Enum{})) {
        codes.push_back({std::string(entry.word), std::string(entry.meaning)});
    }
    return codes;
}

/// Where a tree lies on the map; nothing for no tree.
inline std::optional<MapPoint> point_of(const Tree* tree) {
    return tree == nullptr ? std::nullopt : tree->at;
}

/// Empty text is an unknown.
inline Cell text_cell(std::string_view text) {
    return text.empty() ? Cell{} : Cell{std::string(text)};
}
inline Cell text_cell(const Sentence& sentence) {
    return sentence.empty() ? Cell{} : Cell{sentence};
}
inline Cell whole_cell(int number) {
    return std::int64_t{number};
}
inline Cell whole_cell(const std::optional<int>& number) {
    return number ? whole_cell(*number) : Cell{};
}
/// A calculated number without digits that mean nothing. Every number of a result table comes through here.
inline Cell number_cell(double number, int decimals) {
    const double scale = std::pow(10.0, decimals);
    return std::round(number * scale) / scale + 0.0;  // + 0.0: never minus zero
}
template <std::same_as<std::optional<double>> Optional>
Cell number_cell(const Optional& number, int decimals) {
    return number ? number_cell(*number, decimals) : Cell{};
}
/// The same for an amount whose size is not known beforehand: so many digits that count, and no fewer than
/// the whole ones.
inline Cell significant_cell(double number, int digits) {
    const int whole = number == 0 ? 1 : static_cast<int>(std::floor(std::log10(std::abs(number)))) + 1;
    return number_cell(number, std::max(0, digits - whole));
}

}  // namespace pipward::operation
