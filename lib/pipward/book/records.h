// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/book/schema.h"
#include "pipward/record/orchard.h"

/// Rows of the schema into records and back, by the fields that the columns are bound to. Pure.
namespace pipward::book {

/// Adds a row to the orchard. Its required cells are known, and check_cell() has nothing against any.
void add_record(Orchard& orchard, const BookTable& table, const BookRow& row);

/// Every record of the table as cells, in the orchard's order.
std::vector<BookRow> rows_of(const BookTable& table, const Orchard& orchard);

/// One record as cells: unknown where an optional is absent.
template <class Record>
BookRow row_of(const Record& record) {
    return table_of_records<Record>().records.show(&record);
}

/// Rows as append_rows() takes them, in the columns that are required and those that some row fills: an older
/// book may lack the others.
Table rows_to_append(const BookTable& table, const std::vector<BookRow>& rows);
template <class Record>
Table rows_to_append(const std::vector<Record>& records) {
    std::vector<BookRow> rows;
    for (const auto& record : records) {
        rows.push_back(row_of(record));
    }
    return rows_to_append(table_of_records<Record>(), rows);
}

/// The row's cell in the column of that name, which the table has.
const Cell& cell_of(const BookTable& table, const BookRow& row, std::string_view column);

/// The row's known cells by column name.
std::map<std::string, Cell> known_cells(const BookTable& table, const BookRow& row);

/// The row as people name it: its key, or "fid 12" where it has none or a part of it is unknown.
std::string name_of(const BookTable& table, const BookRow& row);

}  // namespace pipward::book
