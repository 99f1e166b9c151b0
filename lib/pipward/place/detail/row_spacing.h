// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

/// Inside of the room: finding the spacing that repeats along rows.
///
/// Trees of a row all have one phase against a wave of the spacing's length that runs along it. How strongly
/// they keep to it is the length of the mean of their unit vectors on that wave's circle: the periodogram of
/// a point process (Bartlett 1964, Biometrika 51:299).
namespace pipward::place::detail {

/// Values of several rows that share a spacing but not an origin.
struct FoundSpacing {
    double spacing = 0;    ///< metres
    double coherence = 0;  ///< 0..1, squared: exp(-(2 pi noise / spacing)^2) for normal noise
    double longer = 0;     ///< metres: twice or three times as long, and not without reason; 0 for none
};
/// The longest spacing, of `least` to `most` metres, that the values of `rows` (metres along each) keep to
/// three quarters as well as to the best: halves and thirds of a spacing fit nearly as well. Nothing where
/// none is five times as coherent as chance would make it.
std::optional<FoundSpacing> find_spacing(std::span<const std::vector<double>> rows, double least,
                                         double most);

/// How well rows keep to a spacing: as FoundSpacing::coherence; 0 on average without any order.
double coherence_of(std::span<const std::vector<double>> rows, double spacing);

}  // namespace pipward::place::detail
