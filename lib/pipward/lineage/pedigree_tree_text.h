// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/lineage/pedigree_view.h"

namespace pipward::lineage {

/// A line as indented text for a terminal or a letter: ancestors below their children, the seed parent
/// first; then descendants. What stands there already is named again and not followed twice. Ends with a
/// line end.
std::string pedigree_tree_text(const PedigreeGraph& graph, int subject, const PedigreeLimits& limits,
                               const Wording& wording = in_english);

/// "seed parent", "pollen parent", "in the blend, 40 %", "sport of".
Sentence role_words(const PedigreeLink& link);

}  // namespace pipward::lineage
