// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "pipward/math/plane_point.h"
#include "pipward/place/detail/row_decode.h"
#include "pipward/place/earth.h"

/// Inside of the room: what numbering trees in found rows and in known rows have in common.
namespace pipward::place::detail {

struct RowMember {
    std::size_t tree = 0;
    double along = 0;      ///< metres
    double off = 0;        ///< metres across
    double certainty = 0;  ///< that it belongs to the row, 0..1
};
using RowMembers = std::vector<RowMember>;

/// How many members belong to the row rather than not, and where along it they stand.
std::size_t sure_members(const RowMembers& members);
std::vector<double> sure_places(const RowMembers& members);

/// Members in rising order of `along`; those that hardly belong to the row are told as strays.
std::vector<PlacedPoint> decode_members(const RowMembers& members, const PositionScale& scale);

/// Origin, step and share of missing positions by the trees that are sure of their numbers, by least squares;
/// the step stays within a small part of `spacing`, in metres. Fewer than three sure trees change nothing.
void refit(const RowMembers& members, std::span<const PlacedPoint> points, double spacing,
           PositionScale& scale);

/// Why a tree is left open; empty where it is sure enough.
Sentence doubt_of(const RowMember& member, const PlacedPoint& point, double start, double confidence,
                  double wanted);

/// How sure a number must be, 0..1, where the noise is this share of a spacing or row distance: beyond a
/// fifth a tenth of the doubt is borne, because the confidence itself was found less sure there
/// (docs/method.md).
double wanted_confidence(double confidence, double noise_share);

/// The middle longitude and latitude; 0 for none.
LonLat middle_of(std::span<const LonLat> places);
/// The plane about `middle`, as MetrePlane, and the way back.
std::vector<math::PlanePoint> to_plane(std::span<const LonLat> places, const LonLat& middle);
LonLat from_plane(const math::PlanePoint& point, const LonLat& middle);

}  // namespace pipward::place::detail
