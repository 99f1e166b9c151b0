// SPDX-License-Identifier: MIT
#include "pipward/place/row_barrier.h"

#include <algorithm>
#include <limits>

namespace pipward::place {
namespace {

PlanePoint foot_on(PlanePoint point, PlanePoint a, PlanePoint b) {
    const auto way = b - a;
    const double square = dot(way, way);
    const double share = square > 0 ? std::clamp(dot(point - a, way) / square, 0.0, 1.0) : 0.0;
    return a + way * share;
}

// Trees stand a little off their row's line: only real bends are kept (Douglas & Peucker 1973,
// Cartographica 10:112).
void keep_bends(std::span<const PlanePoint> points, double tolerance, std::vector<PlanePoint>& kept) {
    double farthest = tolerance;
    std::size_t bend = 0;
    for (std::size_t i = 1; i + 1 < points.size(); ++i) {
        const double off = distance_to(points[i], points.front(), points.back());
        if (off > farthest) {
            farthest = off;
            bend = i;
        }
    }
    if (bend > 0) {
        keep_bends(points.first(bend + 1), tolerance, kept);
        keep_bends(points.subspan(bend), tolerance, kept);
    } else {
        kept.push_back(points.back());
    }
}

std::vector<PlanePoint> course_of(std::span<const PlanePoint> points, double tolerance) {
    std::vector<PlanePoint> course{points.front()};
    if (points.size() > 1) {
        keep_bends(points, tolerance, course);
    }
    if (course.size() == 2 && length(course[1] - course[0]) == 0) {
        course.pop_back();
    }
    return course;
}

// Half of the way to the next row, and a little less, so that two people pass and no alley closes.
double room_beside(const std::vector<Barrier>& barriers, std::size_t index, double wanted) {
    constexpr double share = 0.4;
    constexpr double least = 0.1;
    double room = wanted;
    for (const auto& other : barriers) {
        if (other.line == barriers[index].line) {
            continue;
        }
        for (const auto& piece : pieces_of(barriers[index])) {
            for (const auto& next : pieces_of(other)) {
                room = std::min(room, share * distance_between(piece.a, piece.b, next.a, next.b));
            }
        }
    }
    return std::max(room, least);
}

PlanePoint direction_at_start(const Barrier& barrier) {
    return barrier.course.size() < 2 ? barrier.direction : unit(barrier.course[1] - barrier.course[0]);
}
PlanePoint direction_at_end(const Barrier& barrier) {
    const auto& course = barrier.course;
    return course.size() < 2 ? barrier.direction : unit(course.back() - course[course.size() - 2]);
}

void add_end(PlanePoint end, PlanePoint outwards, double beside, std::vector<PlanePoint>& turns) {
    turns.push_back(end + outwards * beside + left_of(outwards) * beside);
    turns.push_back(end + outwards * beside - left_of(outwards) * beside);
}

}  // namespace

double distance_to(PlanePoint point, PlanePoint a, PlanePoint b) {
    return length(point - foot_on(point, a, b));
}

double distance_between(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) {
    const double c_side = turn(b - a, c - a);
    const double d_side = turn(b - a, d - a);
    const double a_side = turn(d - c, a - c);
    const double b_side = turn(d - c, b - c);
    if (c_side * d_side < 0 && a_side * b_side < 0) {
        return 0;
    }
    return std::min({distance_to(a, c, d), distance_to(b, c, d), distance_to(c, a, b), distance_to(d, a, b)});
}

std::vector<Barrier> row_barriers(std::span<const TreeLine> lines, const BarrierRules& rules) {
    std::vector<Barrier> barriers;
    for (std::uint32_t line = 0; line < lines.size(); ++line) {
        const std::span<const PlanePoint> at(lines[line].at);
        const auto direction = main_direction(lines[line].at);
        std::size_t first = 0;
        for (std::size_t i = 1; i <= at.size(); ++i) {
            const bool passable =
                i < at.size() && rules.gap.value > 0 && length(at[i] - at[i - 1]) > rules.gap.value;
            if (i == at.size() || passable) {
                barriers.push_back({line, course_of(at.subspan(first, i - first), rules.beside.value / 2),
                                    direction, rules.beside.value});
                first = i;
            }
        }
    }
    for (std::size_t i = 0; i < barriers.size(); ++i) {
        barriers[i].beside = room_beside(barriers, i, rules.beside.value);
    }
    return barriers;
}

std::vector<Piece> pieces_of(const Barrier& barrier) {
    const auto& course = barrier.course;
    std::vector<Piece> pieces;
    for (std::size_t i = 1; i < course.size(); ++i) {
        pieces.push_back({course[i - 1], course[i], barrier.beside});
    }
    if (pieces.empty()) {
        pieces.push_back({course.front(), course.front(), barrier.beside});
    }
    return pieces;
}

std::vector<PlanePoint> turning_points(const Barrier& barrier) {
    std::vector<PlanePoint> turns;
    const auto& course = barrier.course;
    add_end(course.front(), direction_at_start(barrier) * -1, barrier.beside, turns);
    add_end(course.back(), direction_at_end(barrier), barrier.beside, turns);
    for (std::size_t i = 1; i + 1 < course.size(); ++i) {
        const auto outwards =
            left_of(unit(unit(course[i] - course[i - 1]) + unit(course[i + 1] - course[i])));
        turns.push_back(course[i] + outwards * barrier.beside);
        turns.push_back(course[i] - outwards * barrier.beside);
    }
    return turns;
}

Sides sides_of(const Barrier& barrier, PlanePoint tree) {
    double nearest = std::numeric_limits<double>::infinity();
    Sides sides;
    for (const auto& piece : pieces_of(barrier)) {
        const auto foot = foot_on(tree, piece.a, piece.b);
        if (length(tree - foot) < nearest) {
            nearest = length(tree - foot);
            const bool single = barrier.course.size() < 2;
            const auto out = left_of(single ? barrier.direction : unit(piece.b - piece.a)) * barrier.beside;
            sides = {foot + out, foot - out};
        }
    }
    return sides;
}

}  // namespace pipward::place
