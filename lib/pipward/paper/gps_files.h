// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"

/// Trees for hand-held receivers and map programs.
namespace pipward::paper {

/// A tree's place on WGS 84, in degrees.
struct Waypoint {
    std::string name;                          ///< the tree's label
    std::string description;                   ///< may be empty
    double lat = 0;                            ///< north, -90 to 90
    double lon = 0;                            ///< east, -180 to 180
    std::optional<Metres> elevation;           ///< above the sea
    TreePurpose purpose = TreePurpose::other;  ///< tells its sign
    std::string folder;                        ///< the block; may be empty
};

/// What a receiver is given.
struct GpsFile {
    std::string name;                 ///< of the collection
    std::vector<Waypoint> waypoints;  ///< in the order written
    std::vector<Waypoint> route;      ///< a walk from one to the next; none where empty
};

/// GPX 1.1. Names are kept whole: some receivers show the first few letters only.
std::string gpx_text(const GpsFile& file);
/// KML 2.2, a folder a block in their order of appearance; the route as a line.
std::string kml_text(const GpsFile& file);

}  // namespace pipward::paper
