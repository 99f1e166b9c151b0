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

enum class Side { right, left };

/// A row as it was surveyed or drawn, before anything is measured off on it.
struct RowCourse {
    std::string name;
    std::vector<GroundPoint> points;  ///< in the direction of the numbering
    bool from_the_end = false;        ///< numbered against the direction of the points
};

struct RowRule {
    Metres spacing;
    int first_position = 1;
    Metres headland{};           ///< free at both ends
    std::optional<int> count{};  ///< positions a row; as many as there is room for where not given
};

struct LaidRow {
    std::string name;
    int first_position = 1;
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
    int rows = 1;
    Metres distance;
    Side side = Side::right;  ///< on which the further rows lie, seen along the base
    bool alternate = false;   ///< every second row is numbered the other way
};
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
