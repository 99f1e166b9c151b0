// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/record/table.h"
#include "pipward/value/finding.h"

/// The schema of the orchard book as data. Creation, reading, checks, pick lists and the documentation all
/// come from these tables: a column is added here and in its record, nowhere else.
namespace pipward::book {

enum class GeometryKind { none, point, line, polygon };

Sentence to_text(GeometryKind kind);

/// One choice of a closed list: the value as stored (a number is written in digits) and what it means.
struct Choice {
    std::string value;
    std::string meaning;
};

inline constexpr double no_upper_end = 1e9;  ///< stands where the trade sets none

/// What a column may hold: one of `choices`, or where there are none, a number from `low` to `high`, both
/// included.
struct FieldDomain {
    std::string_view name;
    std::string_view description;
    CellType type = CellType::text;
    std::vector<Choice> choices;
    double low = 0;
    double high = 0;
};

/// A column whose text must be found in another table's column. `within` names a column that both tables
/// have and that must agree as well: row "4" of block "North" is another row than row "4" of block "South".
struct Reference {
    std::string_view table;
    std::string_view column;
    std::string_view within{};
};

struct BookColumn {
    std::string_view name;
    CellType type = CellType::text;
    bool required = false;
    std::string_view label;               ///< for people, sentence case
    std::string_view description;         ///< one sentence
    std::string_view unit{};              ///< empty where none applies
    std::string_view domain{};            ///< name of a FieldDomain, empty where anything of the type goes
    std::vector<Reference> references{};  ///< the name must answer to one of these; empty where free
    std::string_view initial{};           ///< what a new row gets, as SQL text; empty for unknown
};

struct BookTable {
    std::string_view name;
    std::string_view title;
    std::string_view description;
    GeometryKind geometry = GeometryKind::none;
    std::vector<std::string_view> key;  ///< columns that together name one row; empty where rows have no name
    std::vector<BookColumn> columns;
};

/// Every table of a book that people fill in, parents before those that refer to them.
std::span<const BookTable> book_tables();
std::span<const FieldDomain> field_domains();

/// The table, column or domain of that name, or null.
const BookTable* find_book_table(std::string_view name);
const BookColumn* find_column(const BookTable& table, std::string_view name);
const FieldDomain* find_domain(std::string_view name);

/// The only tables that replace_results() will ever write.
std::span<const std::string_view> result_table_names();

/// What is wrong with `value` in this column by its type, domain and being required, and what to do about
/// it; nothing where it is fine. `table` and `row` of the finding are left to the caller.
std::optional<Finding> check_cell(const BookColumn& column, const Cell& value);

}  // namespace pipward::book
