// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/place/ground_line.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"
#include "pipward/value/word.h"

/// Rows and their numbered positions, laid out from surveyed points.
namespace pipward::place {

/// Of a row or a line, seen along it.
enum class Side {
    right,  ///< clockwise from its direction
    left    ///< the other
};

/// A row as it was surveyed or drawn, before anything is measured off on it.
struct RowCourse {
    std::string name;                 ///< empty for one yet to be named
    std::vector<GroundPoint> points;  ///< in the direction of the numbering
    bool from_the_end = false;        ///< numbered against the direction of the points
};

/// How positions are measured off.
struct RowRule {
    Metres spacing;              ///< from position to position, above 0
    int first_position = 1;      ///< its number
    Metres headland{};           ///< free at both ends
    std::optional<int> count{};  ///< positions a row; as many as there is room for where not given
};

/// A row with its positions; heights are between those of the course's points, where they have any.
struct LaidRow {
    std::string name;                    ///< the course's
    int first_position = 1;              ///< number of positions.front()
    std::vector<GroundPoint> course;     ///< from the first position to the last
    std::vector<GroundPoint> positions;  ///< in the order of their numbers
    Metres length;                       ///< over the ground, from the first to the last
    double bearing_deg = 0;              ///< clockwise from true north, 0..360, from the first to the last
};

/// Measures the positions off. They lie on the course, `spacing` apart along the ground. What cannot be laid
/// is told in `findings` as an error, under the row's name: no length, no room, a course that turns back.
std::optional<LaidRow> lay_row(const RowCourse& course, const RowRule& rule, Findings& findings);

/// A block from one line: `rows` courses `distance` apart, the first one the base itself.
struct BlockRule {
    int rows = 1;             ///< 1 or more
    Metres distance;          ///< from row to row, 0 or more
    Side side = Side::right;  ///< on which the further rows lie, seen along the base
    bool alternate = false;   ///< every second row is numbered the other way
};
/// By their distance from the base. Where a name does not count on, the further ones have none. Headlands and
/// positions are not yet thought of.
std::vector<RowCourse> block_courses(const RowCourse& base, const BlockRule& rule);

/// The name after `name`: "9" -> "10", "R09" -> "R10", "B" -> "C". Nothing where a name does not count on.
std::optional<std::string> next_name(const std::string& name);

/// The positions of a row of the book, by its line, spacing and first position. Empty where one is unknown.
std::vector<GroundPoint> positions_on(const TreeRow& row, const ToEarth& to_earth);

/// Carries points of a map to the ground, heights kept; those without a place on the earth are left out.
std::vector<GroundPoint> to_ground(std::span<const MapPoint> points, const ToEarth& to_earth);
/// The way back; nothing where a point cannot be drawn in that system.
std::optional<MapPoint> to_map(const GroundPoint& point, const ToEarth& to_earth);

/// The sides as they are typed.
std::span<const Word<Side>> words(Side);

}  // namespace pipward::place
