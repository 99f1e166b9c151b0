// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "pipward/value/spoken.h"

/// Rows of a table by a name that they hold. The rows are lent: they must outlive the index and stay as they
/// are. Asked by name only, never walked, so that nothing depends on the order of a hash.
namespace pipward::record {

/// One row a name; of a name that stands twice the first row counts.
template <class Row>
class ByName {
  public:
    ByName() = default;
    /// `name` is the field that holds the name; every row has one.
    ByName(std::span<const Row> rows, std::string Row::*name) {
        rows_.reserve(rows.size());
        for (const auto& row : rows) {
            rows_.try_emplace(row.*name, &row);
        }
    }

    /// Null where no row has the name.
    const Row* find(std::string_view name) const {
        const auto found = rows_.find(name);
        return found == rows_.end() ? nullptr : found->second;
    }

  private:
    std::unordered_map<std::string_view, const Row*> rows_;
};

/// The first row of a name, for somebody who asks once or whose rows grow as he asks. Null where there is
/// none.
template <class Row>
const Row* first_named(const std::vector<Row>& rows, std::string Row::*name, std::string_view wanted) {
    const auto found = std::ranges::find(rows, wanted, name);
    return found == rows.end() ? nullptr : &*found;
}

/// Every row of a name, in the order of the table; rows without one are left out.
template <class Row>
class GroupedByName {
  public:
    GroupedByName() = default;
    /// `name` is the field that holds the name; every row has one.
    GroupedByName(std::span<const Row> rows, std::string Row::*name) {
        for (const auto& row : rows) {
            rows_[row.*name].push_back(&row);
        }
    }
    /// The same by a name that a row may lack.
    GroupedByName(std::span<const Row> rows, std::optional<std::string> Row::*name) {
        for (const auto& row : rows) {
            if (row.*name) {
                rows_[*(row.*name)].push_back(&row);
            }
        }
    }

    /// Empty where no row has the name.
    std::span<const Row* const> find(std::string_view name) const {
        const auto found = rows_.find(name);
        return found == rows_.end() ? std::span<const Row* const>{} : found->second;
    }

  private:
    std::unordered_map<std::string_view, std::vector<const Row*>> rows_;
};

}  // namespace pipward::record
