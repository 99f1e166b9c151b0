// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/paper/label_grid.h"
#include "pipward/paper/typesetter.h"
#include "pipward/value/sentence.h"

namespace pipward::paper::detail {

/// A line of exactly 50 mm with words that say so, to measure whether the printer kept the size.
std::vector<PagePiece> check_line(PaperSpot left_end, const TextRuler& ruler, const Wording& wording);

/// The same in a margin of a label sheet, upper or lower; nothing where neither has room.
std::vector<PagePiece> check_line_in_margin(const LabelGrid& grid, const TextRuler& ruler,
                                            const Wording& wording);

}  // namespace pipward::paper::detail
