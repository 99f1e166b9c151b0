// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/place/row_barrier.h"
#include "pipward/value/sentence.h"

namespace pipward::place::detail {

/// The alley in which one stands beside a tree of a row: "between rows 3 and 4", "outside of row 5" where no
/// row is within a usual alley's width. `barrier` is the tree's, `lines` are those the barriers were made of.
Sentence alley_words(std::span<const TreeLine> lines, const Barriers& barriers, std::uint32_t barrier,
                     math::PlanePoint tree, math::PlanePoint stand);

}  // namespace pipward::place::detail
