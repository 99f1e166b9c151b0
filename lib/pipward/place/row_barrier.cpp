// SPDX-License-Identifier: MIT
#include "pipward/place/row_barrier.h"

#include <algorithm>

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

std::vector<Barrier> stretches_of(std::span<const TreeLine> lines, const BarrierRules& rules) {
    std::vector<Barrier> stretches;
    for (std::uint32_t line = 0; line < lines.size(); ++line) {
        const std::span<const PlanePoint> at(lines[line].at);
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

}  // namespace

Barriers row_barriers(std::span<const TreeLine> lines, const BarrierRules& rules) {
    auto stretches = stretches_of(lines, rules);
    auto courses = tree_of(stretches);
    Barriers barriers{std::move(stretches), std::move(courses)};
    for (std::uint32_t i = 0; i < barriers.all.size(); ++i) {
        barriers.all[i].beside = room_beside(barriers, i, rules.beside.value);
    }
    return barriers;
}

Sides sides_of(const Barriers& barriers, std::uint32_t barrier, PlanePoint tree) {
    const auto foot = barriers.courses.line(barrier).foot(tree);
    const auto out = left_of(foot.ahead) * barriers.all[barrier].beside;
    return {foot.at + out, foot.at - out};
}

std::vector<std::uint32_t> rows_facing(const Barriers& barriers, std::uint32_t line, PlanePoint from,
                                       PlanePoint to) {
    auto facing = barriers.courses.within(math::Line({from, to}), stagger);
    std::erase_if(facing, [&](auto other) { return barriers.all[other].line == line; });
    return facing;
}

}  // namespace pipward::place
