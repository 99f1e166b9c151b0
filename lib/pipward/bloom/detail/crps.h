// SPDX-License-Identifier: MIT
#pragma once

#include <span>

/// How well a whole distribution forecast a day: the continuous ranked probability score (Matheson & Winkler
/// 1976, Manage. Sci. 22:1087; Gneiting & Raftery 2007, J. Am. Stat. Assoc. 102:359). In the unit of the
/// values; 0 is perfect, and of a distribution without spread it is the size of the error.
namespace pipward::bloom::detail {

/// Of equally likely values, in rising order. Needs at least one.
double crps_of_sample(std::span<const double> sorted, double observed);

/// The share of the values below `observed`, those equal to it counting half: evenly spread over many
/// forecasts where their spread is right (Dawid 1984, J. R. Stat. Soc. A 147:278). Range: 0..1.
double place_among(std::span<const double> sorted, double observed);

}  // namespace pipward::bloom::detail
