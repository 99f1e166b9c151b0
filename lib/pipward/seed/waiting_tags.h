// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

#include "pipward/record/orchard.h"

/// Tagged branches whose fruit is waited for.
namespace pipward::seed {

/// The last work on each such tag, by tag: pollinated by `as_of` and not more than `longest_days` before it.
/// A tag is done once its fruit was harvested, or a count found none left. Several passes under one tag are
/// one tag; a later pass that hangs under a tag of its own at a branch of the same cross and tree bears the
/// fruit of the first and is not waited for.
std::map<std::string, const Pollination*> waiting_tags(const Orchard& orchard, Day as_of, int longest_days);

}  // namespace pipward::seed
