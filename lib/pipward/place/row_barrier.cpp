// SPDX-License-Identifier: MIT
#include "pipward/place/row_barrier.h"

#include <algorithm>
#include <limits>

namespace pipward::place {
namespace {

using math::PlanePoint;

constexpr double stagger = 2.0;  // metres
constexpr double hair = 1e-6;    // metres

// Half of the way to the next row, and a little less, so that two people pass and no alley closes. Our own
// shares: they leave a fifth of the alley free between those who walk along both of its rows.
constexpr double share_of_alley = 0.4;
constexpr double least_beside = 0.1;  // metres

std::vector<PlanePoint> course_of(std::span<const PlanePoint> trees, double bend, PlanePoint direction) {
    auto course = math::simplified(trees, bend);
    if (course.size() < 2 || (course.size() == 2 && course[0] == course[1])) {
        course = {course[0], course[0] + direction * hair};
    }
    return course;
}

void add_stretches(std::span<const PlanePoint> at, std::uint32_t line, const BarrierRules& rules,
                   std::vector<Barrier>& stretches) {
    const auto direction = math::main_direction(at);
    std::size_t first = 0;
    for (std::size_t i = 1; i <= at.size(); ++i) {
        const bool passable =
            i < at.size() && rules.gap.value > 0 && length(at[i] - at[i - 1]) > rules.gap.value;
        if (i == at.size() || passable) {
            const auto trees = at.subspan(first, i - first);
            stretches.push_back(
                {line, course_of(trees, rules.beside.value / 2, direction), rules.beside.value});
            first = i;
        }
    }
}

/// Drawn without trees it is one gap from end to end.
Barrier drawn_row(const math::Line& drawn, std::uint32_t line, const BarrierRules& rules) {
    const auto& points = drawn.points();
    return {line, course_of(points, rules.beside.value / 2, math::main_direction(points)), rules.beside.value,
            rules.gap.value <= 0 || drawn.length() <= rules.gap.value};
}

std::vector<Barrier> stretches_of(std::span<const TreeLine> lines, const BarrierRules& rules) {
    std::vector<Barrier> stretches;
    for (std::uint32_t line = 0; line < lines.size(); ++line) {
        if (lines[line].trees.empty()) {
            stretches.push_back(drawn_row(math::Line(lines[line].line), line, rules));
        } else {
            add_stretches(lines[line].line, line, rules, stretches);
        }
    }
    return stretches;
}

math::LineTree tree_of(const std::vector<Barrier>& barriers) {
    std::vector<math::Line> courses;
    for (const auto& barrier : barriers) {
        courses.emplace_back(barrier.course);
    }
    return math::LineTree(std::move(courses));
}

double room_beside(const Barriers& barriers, std::uint32_t number, double wanted) {
    double room = wanted;
    const auto& course = barriers.courses.line(number);
    for (const auto other : barriers.courses.within(course, wanted / share_of_alley)) {
        if (barriers.all[other].line != barriers.all[number].line) {
            room = std::min(room, share_of_alley * course.distance(barriers.courses.line(other)));
        }
    }
    return std::max(room, least_beside);
}

/// Metres from the foot of a tree to the row across; endless where none stands there.
double alley_width(const Barriers& barriers, std::uint32_t barrier, PlanePoint from, PlanePoint out) {
    double width = std::numeric_limits<double>::infinity();
    const auto far = from + out * (narrow_alley * barriers.beside);
    for (const auto other : rows_facing(barriers, barriers.all[barrier].line, from + out * hair, far)) {
        const auto there = barriers.courses.line(other).foot(from);
        const auto way = there.at - from;
        if (dot(way, out) > 0) {
            width = std::min(width, there.off);
        }
    }
    return width;
}

}  // namespace

Barriers row_barriers(std::span<const TreeLine> lines, const BarrierRules& rules) {
    auto stretches = stretches_of(lines, rules);
    auto courses = tree_of(stretches);
    Barriers barriers{rules.beside.value, std::move(stretches), std::move(courses)};
    for (std::uint32_t i = 0; i < barriers.all.size(); ++i) {
        barriers.all[i].beside = room_beside(barriers, i, rules.beside.value);
    }
    return barriers;
}

Sides sides_of(const Barriers& barriers, std::uint32_t barrier, PlanePoint tree) {
    const auto foot = barriers.courses.line(barrier).foot(tree);
    const auto left = left_of(foot.ahead);
    const auto place = [&](PlanePoint out) {
        const double alley = alley_width(barriers, barrier, foot.at, out);
        const bool narrow = alley < narrow_alley * barriers.beside;
        return foot.at + out * (narrow ? alley / 2 : barriers.all[barrier].beside);
    };
    return {place(left), place(left * -1)};
}

std::vector<std::uint32_t> rows_facing(const Barriers& barriers, std::uint32_t line, PlanePoint from,
                                       PlanePoint to) {
    auto facing = barriers.courses.within(math::Line({from, to}), stagger);
    std::erase_if(facing, [&](auto other) { return barriers.all[other].line == line; });
    return facing;
}

}  // namespace pipward::place
