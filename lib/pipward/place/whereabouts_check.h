// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/place/earth.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

namespace pipward::place {

/// Places that the book has already: its trees, rows and stations. At most some hundreds of them, spread.
std::vector<MapPoint> places_in(const Orchard& orchard);

/// What may be wrong with where a point lies.
enum class PlaceDoubt {
    none,       ///< nothing
    far,        ///< more than 50 km from everything that is known
    degrees,    ///< the numbers look like degrees, but the system counts metres
    exchanged,  ///< far or nowhere, and among the known places with its two numbers exchanged
    nowhere,    ///< no place on the earth
};

/// Judges points one by one. `known` are places on the earth that are in use already; it must live as long.
class PlaceJudge {
  public:
    /// `crs` as in Orchard::crs.
    PlaceJudge(const std::string& crs, std::span<const LonLat> known) : to_earth_(crs), known_(known) {}

    /// Where no place is known, only degrees and what lies nowhere are doubted.
    PlaceDoubt operator()(const MapPoint& point) const;
    /// To the nearest known place; nothing where none is known or the point is nowhere.
    std::optional<Metres> away(const MapPoint& point) const;
    /// Whether the system counts degrees, not metres.
    bool in_degrees() const { return to_earth_.from_degrees(); }

  private:
    ToEarth to_earth_;
    std::span<const LonLat> known_;
};

/// What is wrong with where `points` lie, in the system `crs`, told under `field`: an error where they are
/// nowhere on the earth, where the numbers look like degrees but the system counts metres, or where they lie
/// far from the book's places and would lie among them with their two numbers exchanged; a warning where
/// they merely lie far away. `known` are the book's places on the earth.
std::optional<Finding> check_whereabouts(std::span<const MapPoint> points, const std::string& crs,
                                         std::span<const LonLat> known, const std::string& field);

}  // namespace pipward::place
