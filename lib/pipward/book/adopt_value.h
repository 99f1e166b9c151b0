// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "pipward/book/schema.h"
#include "pipward/value/finding.h"

/// Texts of a user's layer as values of the book. Pure.
namespace pipward::book {

/// Nothing, in the ways in which people write it: empty, "-", "?", "n/a", "NA", "null", "none".
bool says_nothing(std::string_view text);

/// A number with a decimal point or comma, and perhaps its unit behind it: "446,5 m".
std::optional<double> read_number(std::string_view text, std::string_view unit = {});

struct ReadValue {
    Cell cell{};                     ///< nothing where the text says nothing or cannot be read
    std::optional<Finding> wrong{};  ///< why it cannot be read
};

/// The text as the column holds it: words of closed lists in any writing and by their trade words, numbers
/// with a comma. Days must be ISO 8601 already. What the schema does not allow is wrong.
ReadValue read_value(const BookColumn& column, std::string_view text);

}  // namespace pipward::book
