// SPDX-License-Identifier: MIT
#include "pipward/place/row_layout.h"

#include <fmt/format.h>
#include <array>

#include <algorithm>
#include <cmath>

#include "pipward/value/plain_text.h"

namespace pipward::place {
namespace {

/// Metres that a surveyor's tape may be short by: a position at the very end of a row is still one.
constexpr double tolerance = 0.01;
constexpr double turned_back = 90;      // degrees at one corner
constexpr int most_positions = 100000;  // more is a slip in a spacing or a system

Finding about(const RowCourse& course, Sentence message, Sentence remedy) {
    return {Level::error, "tree_row", course.name, "geom", {}, std::move(message), std::move(remedy)};
}

bool is_course(const RowCourse& course, const GroundLine& line, Findings& findings) {
    if (line.length().value <= tolerance) {
        findings.push_back(about(course, say("The row has no length."),
                                 say("Give two or more points at different locations.")));
        return false;
    }
    if (line.sharpest_turn_deg() > turned_back) {
        findings.push_back(
            about(course, say("The row turns back on itself, by {:.0f} degrees.", line.sharpest_turn_deg()),
                  say("Give its points in the order of the row.")));
        return false;
    }
    return true;
}

/// Positions between the headlands, as a whole number that may be beyond int.
double room_for(double length, const RowRule& rule) {
    return std::floor((length - 2 * rule.headland.value + tolerance) / rule.spacing.value) + 1;
}

int positions_in(const RowCourse& course, double length, const RowRule& rule, Findings& findings) {
    const double room = length - 2 * rule.headland.value < -tolerance ? 0 : room_for(length, rule);
    const double wanted = rule.count ? *rule.count : std::max(room, 1.0);
    if (wanted > room) {
        findings.push_back(
            about(course,
                  say("The row is {:.2f} m long: between its headlands there is room for {:.0f} positions.",
                      length, room),
                  say("Draw it longer, or take fewer positions, a shorter spacing or a smaller headland.")));
        return 0;
    }
    if (wanted + rule.first_position - 1 > most_positions) {
        findings.push_back(about(course, say("The row would have {:.0f} positions.", wanted),
                                 say("Positions are numbered up to {}: check the spacing and the "
                                     "coordinate system.",
                                     most_positions)));
        return 0;
    }
    return static_cast<int>(wanted);
}

// Metres along the course. A single position has no line of its own, but a row must have one: short enough to
// hold no second.
double end_of(int positions, const RowRule& rule) {
    return rule.headland.value + std::max(positions - 1.0, 0.5) * rule.spacing.value;
}

std::string counted_on(std::string digits) {
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit) {
        if (*digit != '9') {
            ++*digit;
            return digits;
        }
        *digit = '0';
    }
    return "1" + digits;
}

}  // namespace

std::optional<LaidRow> lay_row(const RowCourse& course, const RowRule& rule, Findings& findings) {
    const GroundLine line(course.points);
    if (!is_course(course, line, findings)) {
        return std::nullopt;
    }
    const int positions = positions_in(course, line.length().value, rule, findings);
    if (positions == 0) {
        return std::nullopt;
    }
    LaidRow laid;
    laid.name = course.name;
    laid.first_position = rule.first_position;
    laid.course = line.part(rule.headland, Metres{end_of(positions, rule)});
    for (int i = 0; i < positions; ++i) {
        laid.positions.push_back(line.at(Metres{rule.headland.value + i * rule.spacing.value}));
    }
    if (course.from_the_end) {
        std::ranges::reverse(laid.course);
        std::ranges::reverse(laid.positions);
    }
    laid.length = Metres{(positions - 1) * rule.spacing.value};
    laid.bearing_deg = GroundLine(laid.course).bearing_deg();
    return laid;
}

std::vector<RowCourse> block_courses(const RowCourse& base, const BlockRule& rule) {
    std::vector<RowCourse> courses;
    const GroundLine line(base.points);
    const double step = rule.side == Side::right ? rule.distance.value : -rule.distance.value;
    std::optional<std::string> name = base.name;
    for (int row = 0; row < rule.rows; ++row) {
        courses.push_back({name.value_or(""), row == 0 ? base.points : line.beside(Metres{row * step}),
                           base.from_the_end != (rule.alternate && row % 2 == 1)});
        name = name ? next_name(*name) : std::nullopt;
    }
    return courses;
}

std::optional<std::string> next_name(const std::string& name) {
    auto digits = name.size();
    while (digits > 0 && is_digit(name[digits - 1])) {
        --digits;
    }
    if (digits < name.size()) {
        return name.substr(0, digits) + counted_on(name.substr(digits));
    }
    const bool letter =
        name.size() == 1 && ((name[0] >= 'A' && name[0] < 'Z') || (name[0] >= 'a' && name[0] < 'z'));
    return letter ? std::optional{std::string(1, static_cast<char>(name[0] + 1))} : std::nullopt;
}

std::vector<GroundPoint> positions_on(const TreeRow& row, const ToEarth& to_earth) {
    const auto points = to_ground(row.line, to_earth);
    const GroundLine line(points);
    if (!row.spacing || row.spacing->value <= 0 || line.length().value <= tolerance) {
        return {};
    }
    const double room = std::floor((line.length().value + tolerance) / row.spacing->value) + 1;
    std::vector<GroundPoint> positions;
    for (int i = 0; i < std::min<double>(room, most_positions); ++i) {
        positions.push_back(line.at(Metres{i * row.spacing->value}));
    }
    return positions;
}

std::vector<GroundPoint> to_ground(std::span<const MapPoint> points, const ToEarth& to_earth) {
    std::vector<GroundPoint> ground;
    for (const auto& point : points) {
        if (const auto at = to_earth(point)) {
            ground.push_back({*at, point.height});
        }
    }
    return ground;
}

std::optional<MapPoint> to_map(const GroundPoint& point, const ToEarth& to_earth) {
    auto on_map = to_earth.back(point.at);
    if (on_map) {
        on_map->height = point.height;
    }
    return on_map;
}

std::span<const Word<Side>> words(Side) {
    static constexpr std::array table{
        Word<Side>{Side::right, "right", "to the right of the line"},
        Word<Side>{Side::left, "left", "to the left of the line"},
    };
    return table;
}

}  // namespace pipward::place
