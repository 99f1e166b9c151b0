// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <span>
#include <string_view>

#include "pipward/math/plane_point.h"
#include "place/made_orchard.h"

/// Orchards as they are planted and surveyed, not as a formula would have them: every kind in one table, with
/// its truth.
namespace pipward::testing {

/// How a receiver errs. Errors are told as a part of the spacing.
enum class NoiseModel {
    white,  ///< normal, each tree for itself
    drift,  ///< a slow wander along the walk: up one row and down the next, one tree every 20 s or so
    heavy   ///< Student's t with 3 degrees of freedom: some trees are far off
};

/// What somebody tells of the rows beforehand.
struct Told {
    std::string_view name;
    bool bearing = false;
    bool spacing = false;
    bool distance = false;
};
std::span<const Told> all_told();

/// A planting by its rows: where a position stands, in metres along and to the right of a corner.
struct OrchardKind {
    std::string_view name;
    std::string_view family;  ///< the line of the table that it is counted in
    int rows = 16;
    int positions = 40;
    double distance = 4;  ///< the usual one
    double spacing = 2;
    double bearing = 74;
    double missing = 0.08;
    double interplants =
        0;  ///< share of positions that are followed, half a spacing on, by a tree without a number
    bool truth_from_first = false;  ///< rows are numbered from where they begin, not from a common line
    /// East stands for along, north for to the left: a plane of its own, turned to the bearing afterwards.
    std::function<math::PlanePoint(int row, int position)> place{};
    std::function<bool(int row, int position)> planted{};  ///< empty: everywhere
};
std::span<const OrchardKind> orchard_kinds();

struct Survey {
    NoiseModel model = NoiseModel::white;
    double noise = 0.1;  ///< standard deviation of each axis, in spacings
    std::uint64_t seed = 1;
};

/// Also the interplants, whose row is -1: they have no number of their own.
MadeOrchard planted(const OrchardKind& kind, const Survey& survey);

/// The same kind as another breeder has it: 8 to 20 rows, any bearing to the north, 2 to 20 % of the trees
/// missing.
OrchardKind varied(const OrchardKind& kind, std::uint64_t seed);

struct Count {
    int right = 0;
    int wrong = 0;  ///< also trees that have no number and were given one
    int open = 0;   ///< that have a number
    int trees() const { return right + wrong + open; }
    Count& operator+=(const Count& more);
};
Count count_of(const MadeOrchard& orchard, std::span<const place::NumberedTree> got);

/// The numbers after the question, if there is one, was answered by somebody who knows the orchard: with the
/// answer that numbers more trees right.
std::span<const place::NumberedTree> answered(const MadeOrchard& orchard, const place::Recovery& got);

/// Points of a wood: at random, or no closer than a part of their mean distance.
MadeOrchard wood(int trees, double least, std::uint64_t seed);

place::RecoveryRule rule_of(const OrchardKind& kind, const Told& told);

}  // namespace pipward::testing
