// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/place/row_barrier.h"
#include "pipward/value/sentence.h"

namespace pipward::place {

/// The alley in which one stands beside a tree of a row: "between rows 3 and 4", "outside of row 5" where no
/// row is within a usual alley's width.
Sentence alley_words(std::span<const TreeLine> lines, std::span<const Barrier> barriers,
                     const Barrier& barrier, PlanePoint tree, PlanePoint stand);

}  // namespace pipward::place
