// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

namespace pipward::book {

/// A point or a line of a user's own layer.
struct UserFeature {
    std::string name;                            ///< "feature 12"
    bool is_line = false;                        ///< else a point, an area or nothing
    std::vector<MapPoint> points{};              ///< one for a point, two or more for a line or an area
    std::map<std::string, std::string> texts{};  ///< its attributes; unknown ones are left out
    bool is_area = false;                        ///< only of read_user_rows(): `points` are its outline
    bool has_holes = false;                      ///< which `points` do not tell
};

/// A layer of a file of the user's, read whole.
struct UserLayer {
    std::string name;  ///< as the file calls it
    std::string crs;   ///< AUTHORITY:CODE or well-known text; empty where the layer does not tell
    std::vector<std::string> columns{};   ///< in the layer's order
    std::vector<UserFeature> features{};  ///< in the layer's order
    Findings findings{};                  ///< what could not be used, and why
};

/// Reads points and lines of any file that OGR opens: GeoPackage, Shapefile, GeoJSON, CSV with columns of
/// coordinates or well-known text ... Several parts become several features; areas and empty geometries are
/// told and left out. `layer` names one of several. Throws Error (access) where the file cannot be opened or
/// has no such layer, (usage) where it has several and none is named.
UserLayer read_user_layer(const std::string& file, const std::string& layer = {});

/// The same with everything that a row may hold: rows without a place have no points, areas are their
/// outlines. A CSV's columns of coordinates stay mere columns, whatever they are called; well-known text does
/// not. Curved and other geometries are told and left out.
UserLayer read_user_rows(const std::string& file, const std::string& layer = {});

/// The same of a text: well-known text ("LINESTRING (10 20, 40 20)"), or plainly the points, parted by
/// commas or semicolons: "10 20, 40 20". Throws Error (usage) for anything else; its finding's field is
/// `parameter`.
UserLayer user_layer_of(const std::string& text, const std::string& parameter);

/// Adds a row whose place is told by well-known text, as read_user_rows() would; empty for a row without one.
void add_row(UserLayer& layer, UserFeature feature, const std::string& wkt);

}  // namespace pipward::book
