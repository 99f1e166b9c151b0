// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>

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
    exchanged,  ///< far, outside or nowhere, and where it should be with its two numbers exchanged
    nowhere,    ///< no place on the earth
    outside,    ///< where the book's coordinate system is not meant to be used
};

/// Judges points one by one. `known` are places on the earth that are in use already; it must live as long.
class PlaceJudge {
  public:
    /// `crs` is that of the points, `book_crs` that of the book, both as in Orchard::crs; without the latter
    /// no place is outside.
    PlaceJudge(const std::string& crs, std::span<const LonLat> known, const std::string& book_crs = {})
        : to_earth_(crs), known_(known), home_(area_of_use(book_crs)) {}

    /// Where no place is known, the area of use of the book's system alone tells what is exchanged or
    /// outside; three degrees beyond it still count (common practice with zones, no source).
    PlaceDoubt operator()(const MapPoint& point) const;
    /// To the nearest known place; nothing where none is known or the point is nowhere.
    std::optional<Metres> away(const MapPoint& point) const;
    /// What is said of a point whose two numbers are exchanged.
    Sentence words_of_exchange() const;
    /// Whether the system counts degrees, not metres.
    bool in_degrees() const { return to_earth_.from_degrees(); }

  private:
    ToEarth to_earth_;
    bool is_home(const std::optional<LonLat>& place) const;

    std::span<const LonLat> known_;
    std::optional<EarthBox> home_;
};

/// What is wrong with where `points` lie, in the system `crs`, told under `field`: an error where they are
/// nowhere on the earth, where the numbers look like degrees but the system counts metres, or where they lie
/// far from the book's places and would lie among them with their two numbers exchanged; a warning where
/// they merely lie far away. `known` are the book's places on the earth.
/// `book_crs` as for PlaceJudge.
std::optional<Finding> check_whereabouts(std::span<const MapPoint> points, const std::string& crs,
                                         std::span<const LonLat> known, const std::string& field,
                                         const std::string& book_crs = {});

/// "The book's coordinate system, ETRS89 / UTM zone 32N (EPSG:25832), is not meant for this location: ...":
/// what is said of a place outside, and what to do.
std::pair<Sentence, Sentence> words_of_outside(const LonLat& place, const std::string& book_crs);

}  // namespace pipward::place
