// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/operation/operation.h"

/// Parameter values as text: read, judged by kind, and described. No locale.
namespace pipward::operation {

/// The unit of parts of a whole; a value is written without it.
inline constexpr std::string_view share_unit = "0 to 1";

/// Digits with or without a minus. Nothing for anything else, or beyond the range of int.
std::optional<int> whole_from(std::string_view text);
/// Finite numbers with a point.
std::optional<double> number_from(std::string_view text);
/// "7,14,28", blanks around the commas allowed.
std::optional<std::vector<int>> wholes_from(std::string_view text);
/// "yes" or "no". Nothing for anything else.
std::optional<bool> yes_no_from(std::string_view text);

/// What is wrong with `text` as a value of the parameter, and what would be right; nothing where it will do.
std::optional<Finding> problem_with(const Parameter& parameter, const std::string& text);

/// "a whole number of days, 0 to 120", "yes or no", "a day as YYYY-MM-DD": after "Give ".
Sentence what_fits(const ParameterKind& kind);
/// A word for the kind, for help and catalogues: "boolean", "integer", "integer-list", "number", "day",
/// "choice"
/// ...
std::string_view kind_word(const ParameterKind& kind);
/// Empty where the kind has none, as for texts and days.
std::string_view unit_of(const ParameterKind& kind);

}  // namespace pipward::operation
