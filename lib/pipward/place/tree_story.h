// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/sentence.h"

/// What a book tells of one tree, in plain words.
namespace pipward::place {

/// How a tree stands on a day: "standing", "to be planted 2027-03-01", or "removed 2024-11-16: Culled: scab
/// every year.": when it went and, as far as its note tells, why.
Sentence standing_of(const Tree& tree, Day as_of);

/// Of which table of the book an event is.
enum class TreeEventKind {
    bloom,        ///< a note of its bloom
    pollination,  ///< its flowers were worked
    score         ///< traits were scored
};

/// What happened to a tree on one day.
struct TreeEvent {
    Day day;                                    ///< noted, worked or scored on
    TreeEventKind kind = TreeEventKind::bloom;  ///< which table tells of it
    Sentence words;  ///< "full flowering ... (BBCH 65)", "58 flowers pollinated for 25-01, tag 25-01-c"
};

/// The last events of a tree, the newest first: its bloom observations, and those of its accession where no
/// single tree was noted; its pollinations; its scores, those of a day as one.
std::vector<TreeEvent> story_of(const Orchard& orchard, const Tree& tree, std::size_t limit);

}  // namespace pipward::place
