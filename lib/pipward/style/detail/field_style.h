// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/book/schema.h"
#include "pipward/record/table.h"
#include "pipward/style/layer_style.h"

namespace pipward::style::detail {

/// How a table's columns are filled in, from what the schema says of them: the row number is hidden, a closed
/// list is chosen from, a name of another table's row too, days have a calendar.
std::vector<FieldStyle> field_styles(const book::BookTable& table, const Wording& wording = in_english);
/// The same for a result table, which is only looked at.
std::vector<FieldStyle> field_styles(const TableShape& result, const Wording& wording = in_english);

/// "Spacing (m)"
std::string alias_of(std::string_view label, std::string_view unit, const Wording& wording = in_english);
/// "deep freezer: dry at about -80 °C"
std::string choice_words(const book::Choice& choice, const Wording& wording = in_english);

}  // namespace pipward::style::detail
