// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "pipward/book/schema.h"
#include "pipward/value/finding.h"

/// Texts of foreign tables as values of the book. Pure.
namespace pipward::intake::detail {

struct ReadValue {
    Cell cell{};                     ///< nothing where the text says nothing or cannot be read
    std::optional<Finding> wrong{};  ///< why it cannot be read; `table`, `row` and `field` are the caller's
};

/// The text as the column holds it: words of closed lists in any writing and by their trade words, numbers
/// with a comma. Days must be ISO 8601 already. What the schema does not allow is wrong.
ReadValue read_value(const book::BookColumn& column, std::string_view text);

}  // namespace pipward::intake::detail
