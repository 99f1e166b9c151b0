// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/intake/note_kind.h"
#include "pipward/record/orchard.h"

namespace pipward::operation {

/// The cells of a sheet's line that are known beforehand, by column; also the column where_column.
using KnownCells = std::map<std::string, std::string, std::less<>>;

/// Lines for what is due or likely: living trees in the order of their addresses, the season's crosses, tags
/// whose fruit is not noted yet, lots with seed left. `trait` is what scores are given for.
std::vector<KnownCells> likely_lines(intake::NoteKind kind, const Orchard& orchard, Day as_of,
                                     const std::string& trait);

}  // namespace pipward::operation
