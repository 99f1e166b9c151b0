// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/paper/millimetres.h"

namespace pipward::paper::detail {

/// The parts of a line that lie in a box, each of at least two spots, in the direction of the line.
std::vector<std::vector<PaperSpot>> clipped(const std::vector<PaperSpot>& line, const Box& box);

}  // namespace pipward::paper::detail
