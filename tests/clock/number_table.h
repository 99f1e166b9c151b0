// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "testing.h"

/// Rows as numbers; a dash is a value that the source does not give.
namespace pipward::testing {

using NumberRow = std::vector<std::optional<double>>;

inline std::optional<double> number_in(const std::string& text) {
    return text == "-" ? std::nullopt : std::optional{std::stod(text)};
}

inline std::vector<NumberRow> numbers_in(const Rows& rows) {
    std::vector<NumberRow> table;
    for (const auto& row : rows) {
        NumberRow numbers;
        for (const auto& text : row) {
            numbers.push_back(number_in(text));
        }
        table.push_back(numbers);
    }
    return table;
}

}  // namespace pipward::testing
