// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Trees, rows and stations that can hardly stand where the map has them.
namespace pipward::place {

/// Trees of one orchard lie within so many metres of another tree of it; what is farther is another site.
/// Common practice, no source; so are the following.
inline constexpr double site_metres = 5'000;
/// A lone tree, or two, so far from every other site are told.
inline constexpr double lone_metres = 50'000;
/// The weather of a station says nothing of trees so far from it,
inline constexpr double station_metres = 100'000;
/// nor of trees so much higher or lower: ten kelvin, which move bloom by weeks.
inline constexpr double station_height_metres = 1'500;
/// A row so long is none: its line was drawn wrongly.
inline constexpr double longest_row_metres = 10'000;
/// So many trees at one point are no tree with several grafts.
inline constexpr int most_at_one_point = 5;

/// Holds every tree against the others, its block, its row and the stations, every station and row against
/// the earth: places at 0, 0, degrees among metres, exchanged numbers, trees far from the rest of their block
/// or alone, whole orchards far from every station or far above it, rows without length or of many
/// kilometres. Two orchards far apart with blocks of their own are nothing odd. All are warnings; more than
/// three of a kind are told together.
Findings check_places(const Orchard& orchard);

}  // namespace pipward::place
