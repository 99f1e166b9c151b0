// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/book/user_layer.h"
#include "pipward/place/ground_layer.h"

/// Points and lines that a user gives, brought to the ground.
namespace pipward::intake {

/// Points as text, or a layer of a file; not both.
struct PlacesGiven {
    std::string points;  ///< as book::user_layer_of() reads them
    std::optional<std::string> file;
    std::string layer;  ///< one of several of the file
    std::string crs;    ///< AUTHORITY:CODE; empty: the file's own, else the book's
};

/// Reads what is given. `known` are the book's places on the earth, to judge by whether the coordinates make
/// sense. Warnings and notes go to `findings`, under the names points, layer-file and points-crs; throws
/// Error (usage, input, access).
place::GroundLayer read_places(const PlacesGiven& given, const std::string& book_crs,
                               std::span<const place::LonLat> known, Findings& findings);

}  // namespace pipward::intake
