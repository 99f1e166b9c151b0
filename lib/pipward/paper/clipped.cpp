// SPDX-License-Identifier: MIT
#include "pipward/paper/clipped.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace pipward::paper {
namespace {

PaperSpot between(PaperSpot from, PaperSpot to, double share) {
    return {from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share};
}

// From which to which share of its length a stretch lies in the box (Liang & Barsky 1984, ACM Trans. Graph.
// 3:1).
std::optional<std::pair<double, double>> shares_inside(PaperSpot from, PaperSpot to, const Box& box) {
    const double x = (to.x - from.x).value;
    const double y = (to.y - from.y).value;
    const std::array<std::pair<double, double>, 4> sides{{{-x, (from.x - box.left).value},
                                                          {x, (box.right() - from.x).value},
                                                          {-y, (from.y - box.top).value},
                                                          {y, (box.bottom() - from.y).value}}};
    double enters = 0;
    double leaves = 1;
    for (const auto& [speed, room] : sides) {
        if (speed == 0 && room < 0) {
            return std::nullopt;
        }
        if (speed < 0) {
            enters = std::max(enters, room / speed);
        } else if (speed > 0) {
            leaves = std::min(leaves, room / speed);
        }
    }
    return enters < leaves ? std::optional{std::pair{enters, leaves}} : std::nullopt;
}

}  // namespace

std::vector<std::vector<PaperSpot>> clipped(const std::vector<PaperSpot>& line, const Box& box) {
    std::vector<std::vector<PaperSpot>> parts;
    bool goes_on = false;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const auto shares = shares_inside(line[i - 1], line[i], box);
        if (!shares) {
            goes_on = false;
            continue;
        }
        if (!goes_on) {
            parts.push_back({between(line[i - 1], line[i], shares->first)});
        }
        parts.back().push_back(between(line[i - 1], line[i], shares->second));
        goes_on = shares->second == 1;
    }
    return parts;
}

}  // namespace pipward::paper
