// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/record/orchard.h"
#include "pipward/value/sentence.h"

namespace pipward::place {

/// Where a tree stands, in plain words: "block Upper, row 3, position 12". What the record does not tell is
/// left out; empty where it tells nothing. Where the tree's row does not begin with position 1 the place in
/// the row is told as well: "position 112 (12th of the row)". The one wording for every list, sheet and
/// label.
Sentence address_of(const Tree& tree, std::span<const TreeRow> rows);

/// "1st", "2nd", "3rd", "11th".
Sentence ordinal(int number);

}  // namespace pipward::place
