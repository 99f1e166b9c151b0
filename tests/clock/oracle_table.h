// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "testing.h"

/// Oracle rows as numbers; a dash is a value that the source does not give.
namespace pipward::testing {

using OracleNumbers = std::vector<std::optional<double>>;

inline std::optional<double> oracle_number(const std::string& text) {
    return text == "-" ? std::nullopt : std::optional{std::stod(text)};
}

/// Columns from `first_column` on.
inline std::vector<OracleNumbers> oracle_numbers(const std::string& name, std::size_t first_column = 0) {
    std::vector<OracleNumbers> table;
    for (const auto& row : oracle_rows(name)) {
        OracleNumbers numbers;
        for (std::size_t i = first_column; i < row.size(); ++i) {
            numbers.push_back(oracle_number(row[i]));
        }
        table.push_back(numbers);
    }
    return table;
}

}  // namespace pipward::testing
