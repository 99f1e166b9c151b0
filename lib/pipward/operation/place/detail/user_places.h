// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/intake/user_places.h"
#include "pipward/operation/declare/detail/common_parameters.h"

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
    return parameter(&PlacesRequest::crs, "layer-crs", "Coordinate system of the points",
                     "Of the points or the file, as in EPSG:4326; the file's own, or the book's, where not "
                     "given.")
        .advanced();
}

inline intake::PlacesGiven given_places(const PlacesRequest& request) {
    return {request.points, request.file ? std::optional{request.file->path} : std::nullopt, request.layer,
            request.crs};
}

}  // namespace pipward::operation::detail
