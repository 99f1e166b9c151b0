// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/book/user_layer.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/place/ground_layer.h"

/// Points and lines that the user gives with an operation, brought to the ground.
namespace pipward::operation::detail {

/// The fields that such a request has.
struct PlacesRequest {
    std::string points;
    std::optional<InputFile> file;
    std::string layer;
    std::string crs;
};

inline Bound<PlacesRequest> places_file_parameter() {
    return layer_file_parameter(&PlacesRequest::file);
}
inline Bound<PlacesRequest> places_layer_parameter() {
    return layer_parameter(&PlacesRequest::layer);
}
inline Bound<PlacesRequest> places_crs_parameter() {
    return parameter(&PlacesRequest::crs, "points-crs", "Coordinate system of the points",
                     "Of the points or the file, as in EPSG:4326; the file's own, or the book's, where not "
                     "given.")
        .advanced();
}

/// Reads what the request gives. `known` are the book's places on the earth, to judge by whether the
/// coordinates make sense. Warnings and notes go to `findings`; throws Error (usage, input, access).
place::GroundLayer read_places(const PlacesRequest& request, const std::string& book_crs,
                               std::span<const place::LonLat> known, Findings& findings);

}  // namespace pipward::operation::detail
