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
    std::string name;
    std::string description;
    double lat = 0;
    double lon = 0;
    std::optional<Metres> elevation;  ///< above the sea
    TreePurpose purpose = TreePurpose::other;
    std::string folder;  ///< the block; may be empty
};

struct GpsFile {
    std::string name;
    std::vector<Waypoint> waypoints;
    std::vector<Waypoint> route;  ///< a walk from one to the next; none where empty
};

/// GPX 1.1. Names are kept whole: some receivers show the first few letters only.
std::string gpx_text(const GpsFile& file);
/// KML 2.2, a folder a block in their order of appearance; the route as a line.
std::string kml_text(const GpsFile& file);

}  // namespace pipward::paper
