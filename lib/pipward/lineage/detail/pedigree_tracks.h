// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

/// Inside of the layout of lines: where links turn between two columns.
namespace pipward::lineage::detail {

/// How a link runs through one gap between columns: level, upright on a track, level.
struct LinkRun {
    int link = 0;
    double from = 0;  ///< heights
    double to = 0;
    int track = 0;  ///< 0 is nearest to the younger column
};

/// Upright parts that would lie on each other get tracks of their own, and so do level parts at one height.
/// Sorts the runs; how many tracks there are.
int give_tracks(std::vector<LinkRun>& runs);

}  // namespace pipward::lineage::detail
