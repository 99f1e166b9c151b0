// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/intake/detail/adopting.h"
#include "pipward/place/transformation.h"

/// What is said of where a layer's rows lie.
namespace pipward::intake::detail {

/// Row by row: far from the book, exchanged coordinates, degrees taken for metres, nowhere, outside of the
/// area of use of the book's system. False where the coordinates cannot be what they are said to be.
bool judge_whereabouts(Adoption& adoption, std::span<const place::LonLat> known, const std::string& book_crs);

/// How true the places are that come of it.
void tell_transformation(Adoption& adoption, const place::TransformationFacts& facts,
                         const std::string& book_crs);

}  // namespace pipward::intake::detail
