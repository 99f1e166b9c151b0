// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "pipward/paper/cautions.h"
#include "pipward/value/day.h"

namespace pipward::paper {

/// One piece of work, with a box to tick and room to write down what came of it.
struct WorkLine {
    Sentence title;           ///< what to do
    std::optional<Day> from;  ///< unknown: any day
    std::optional<Day> to;    ///< unknown: from `from` on
    bool by_median = false;   ///< `to` is no safe day, but a median
    bool late = false;        ///< `to` has passed
    Sentence address;         ///< "block Lower, row 2, position 8"; empty on the bench
    std::string label;        ///< the tree's; empty on the bench
    Sentence tags;            ///< what hangs at the branches
    Sentence with;            ///< pollen or seed lot
    Sentence amount;          ///< how much of it; empty where it is not counted
    Sentence mind;            ///< what to take care of at this very piece
    Sentence write_down;      ///< "flowers pollinated, tag"
};

/// Work of some days, to take along.
struct WorkSheet {
    Sentence title;                    ///< "Work sheet"
    std::string orchard_name;          ///< may be empty
    Day from;                          ///< the first day
    Day to;                            ///< the last day
    std::vector<WorkLine> at_trees;    ///< in the order of the walk
    std::vector<WorkLine> on_bench;    ///< by day
    double walk_metres = 0;            ///< of the whole walk; below 1 nothing is said of it
    std::set<season::Hazard> hazards;  ///< of all of the work; each is told once
    std::vector<Sentence> warnings;    ///< what could not be told of; may be empty
    std::string subtitle;              ///< printed under the title
};

/// A page of HTML 5 in UTF-8, for A4 paper in black and white and for a phone in the orchard; whole in
/// itself.
std::string work_sheet_html(const WorkSheet& sheet, const Wording& wording = in_english);

}  // namespace pipward::paper
