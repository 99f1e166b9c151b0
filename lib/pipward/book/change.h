// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "pipward/book/book.h"

namespace pipward::book {

/// Cells of one row that stands in a user's table already, by column name. They are changed only while they
/// still hold what was read of them.
struct CellEdit {
    std::string table;                     ///< of the schema
    std::int64_t fid = 0;                  ///< the row's number
    std::string name;                      ///< the row's, for people
    std::map<std::string, Cell> before{};  ///< what the row must still hold; other columns are not looked at
    std::map<std::string, Cell> after{};   ///< what is to stand there; an unknown cell clears it
};

/// A row of a user's table that goes, only while it still holds what was read of it.
struct RowRemoval {
    std::string table;                     ///< of the schema
    std::int64_t fid = 0;                  ///< the row's number
    std::string name;                      ///< the row's, for people
    std::map<std::string, Cell> before{};  ///< what the row must still hold; other columns are not looked at
};

/// What one piece of work does to a book.
struct BookChange {
    std::vector<Table> added{};         ///< rows for users' tables, as append_rows()
    bool remembered = false;            ///< the added rows as one import that can be undone: see take_back()
    std::vector<CellEdit> edits{};      ///< cells of rows that are there
    std::vector<RowRemoval> removed{};  ///< what refers to them is for the caller to see to
    std::vector<Table> results{};       ///< as replace_results()
};

/// All of it in one transaction, wholly done or not at all. Throws Error: (input) with all findings for cells
/// that the schema does not allow, names that are taken, and rows that are gone or were changed since they
/// were read; (usage) for a table or column that the schema does not have; (access) where the book cannot be
/// written.
void apply_change(const BookAt& book, const BookChange& change, Patience patience = default_patience);

}  // namespace pipward::book
