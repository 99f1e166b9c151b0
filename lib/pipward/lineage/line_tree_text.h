// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/lineage/line_view.h"

namespace pipward::lineage {

/// A line as indented text for a terminal or a letter: ancestors below their children, the seed parent
/// first; then descendants. What stands there already is named again and not followed twice. Ends with a
/// line end.
std::string line_tree_text(const LineGraph& graph, int subject, const LineLimits& limits,
                           const Wording& wording = in_english);

/// "seed parent", "pollen parent", "in the blend, 40 %", "sport of".
Sentence role_words(const LineLink& link);

}  // namespace pipward::lineage
