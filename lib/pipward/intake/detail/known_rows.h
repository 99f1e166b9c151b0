// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/book/entry.h"

namespace pipward::intake::detail {

/// Rows that the book has already, so that a sheet read again adds nothing twice. A row is known where one of
/// the book says all that it says; each row of the book answers for one row of the sheet.
class KnownRows {
  public:
    KnownRows(const std::string& table, const std::vector<book::AddedRow>& rows);

    /// The name of the book's row, which is then used up; nothing where there is none.
    std::optional<std::string> take(const book::Entry& entry);

    /// The book's row of that name, in a table whose rows have names; used up or not.
    const book::AddedRow* named(const std::string& name) const;

  private:
    std::string required_part(const std::string& content) const;

    std::string table_;
    std::multimap<std::string, book::AddedRow> rows_;  ///< by what their required columns hold
    std::map<std::string, book::AddedRow> names_;      ///< by their key, where the table has one
};

/// The entry in the form of AddedRow::content, so far as it is given.
std::vector<std::string> lines_of(const book::Entry& entry);

}  // namespace pipward::intake::detail
