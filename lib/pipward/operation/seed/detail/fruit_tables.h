// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/operation/declare/column_of.h"
#include "pipward/seed/family_scores.h"
#include "pipward/seed/first_fruiting.h"

/// The wait for fruit, and what it was like, as tables.
namespace pipward::operation::detail {

ResultShape first_fruit_shape();
Table first_fruit_table(const seed::FirstFruits& fruits, int year, std::span<const TreeRow> rows);

extern const TableOf<seed::FamilyScores> family_table;

}  // namespace pipward::operation::detail
