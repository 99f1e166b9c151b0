// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "pipward/place/metre_plane.h"
#include "pipward/place/tree_line.h"
#include "pipward/record/orchard_shelf.h"

/// Which tree somebody stands at, as far as a receiver's place can tell.
namespace pipward::place {

/// Where the receiver says that somebody stands, and how far that may be off.
struct NearWish {
    MapPoint at;              ///< in the book's coordinate system
    Metres accuracy{5};       ///< of the receiver: the radius that holds the true place 68 times in 100
    Metres beside{1};         ///< how far from the trunk one stands, as such a radius
    double gap_weight = 0.1;  ///< how likely one stands at a gap, against a tree: common practice, no source
};

/// By the day asked. Vacant is a place that no tree of the record ever had, or whose tree is yet to be
/// planted.
enum class SpotKind {
    tree,     ///< one that stands
    removed,  ///< its tree is gone
    vacant    ///< no tree yet, or none known
};

/// What can be seen around a spot; `ahead` is the way of NearSpots::ahead, `left` a quarter turn from it.
/// Nothing where nobody knows, as of a tree without a row.
struct SpotFacts {
    std::optional<bool> tree_ahead;               ///< at the next place of the row
    std::optional<bool> tree_behind;              ///< and the other way
    std::optional<int> trees_ahead;               ///< up to the end of the row
    std::optional<int> trees_behind;              ///< and to its beginning
    std::optional<bool> row_left;                 ///< another row within an alley's width
    std::optional<bool> row_right;                ///< and on the other side
    std::optional<std::string> accession_ahead;   ///< of that next tree; nothing without one
    std::optional<std::string> accession_behind;  ///< and the other way
};

/// A place where somebody may stand, with what speaks for it.
struct NearSpot {
    SpotKind kind = SpotKind::tree;     ///< by the day asked
    std::optional<std::uint32_t> tree;  ///< into Orchard::trees; nothing at a place without a record
    std::optional<RowName> row;         ///< nothing for a tree without a row
    std::optional<int> position;        ///< nothing for a tree without one
    math::PlanePoint at;                ///< from where the receiver says that one stands
    double probability = 0;             ///< 0..1
    SpotFacts facts{};                  ///< all nothing without a row
};

/// Spots as far as the receiver may be off: five times its radius, with `beside`
/// added to that, and 5 m more. There may be none.
struct NearSpots {
    std::vector<NearSpot> spots;   ///< the likeliest first; probabilities sum to 1
    math::PlanePoint ahead{0, 1};  ///< along the row of the likeliest, as its positions count
    double off = 0;                ///< of the nearest spot, in standard deviations of its place
};

/// Bayes' theorem over the spots near by. The receiver's error is taken for a Gaussian one, the same in all
/// directions; how far one stands from the trunk and the tree's own accuracy add to it. Gaps are the places
/// of trees that do not stand on `as_of`, and positions between others of their row that no tree has.
NearSpots near_spots(const Orchard& orchard, Day as_of, const NearWish& wish);

/// Takes the trees and rows that near_spots() and the words about its spots need. False where no tree stands
/// within that reach: then what is farther off must be asked.
bool take_near(const NearWish& wish, OrchardShelf& shelf);

/// The standard deviation in each direction, in metres, of an error that is within a radius 68 times in 100:
/// by Rayleigh's distribution, radius / sqrt(-2 ln 0.32).
double deviation_of(Metres radius);

}  // namespace pipward::place
