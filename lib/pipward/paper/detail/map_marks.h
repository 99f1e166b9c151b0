// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/paper/page.h"
#include "pipward/record/orchard.h"

namespace pipward::paper::detail {

/// The colour of a purpose, of those that people who see colours otherwise distinguish too: Okabe & Ito
/// (2008), "Color Universal Design". The shape says the same.
Paint fill_of(TreePurpose purpose);

/// A square for a parent, a disc for a seedling, a triangle for a pollinizer, a diamond for others; a cross
/// where the tree was removed.
std::vector<PagePiece> tree_mark(TreePurpose purpose, bool removed, PaperSpot middle, Millimetres size);

}  // namespace pipward::paper::detail
