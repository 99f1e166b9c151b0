// SPDX-License-Identifier: MIT
#pragma once

#include <initializer_list>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/ground_line.h"
#include "pipward/record/orchard.h"
#include "pipward/value/season.h"

/// Points and lines from outside of the orchard, brought to the ground.
namespace pipward::place {

/// One point, or one line, of a layer.
struct GroundFeature {
    std::string name;                            ///< as findings call it: "feature 12"
    bool is_line = false;                        ///< else a single point
    std::vector<GroundPoint> points{};           ///< in the order drawn; one for a point
    std::map<std::string, std::string> texts{};  ///< by column
};

/// A layer of the user's, read whole.
struct GroundLayer {
    std::vector<GroundFeature> features{};  ///< in the layer's own order
    /// The layer's, in their order and case; a feature may lack a text for one.
    std::vector<std::string> columns{};
};

/// The first of `names` (in lower case) that is a column, whatever the column's case; empty where none is.
std::string column_like(const GroundLayer& layer, std::initializer_list<std::string_view> names);

/// The orchard's places on the earth.
std::vector<LonLat> known_places(const Orchard& orchard);

/// The half of the earth that the first tree with a place on it stands on; north where none has one.
Hemisphere hemisphere_of(const Orchard& orchard);

}  // namespace pipward::place
