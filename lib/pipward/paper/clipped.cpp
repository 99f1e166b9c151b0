// SPDX-License-Identifier: MIT
#include "pipward/paper/clipped.h"

#include <algorithm>
#include <array>
#include <optional>

namespace pipward::paper {
namespace {

PaperSpot between(PaperSpot from, PaperSpot to, double share) {
    return {from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share};
}

struct Shares {
    double enters = 0;
    double leaves = 1;
};

// How fast a stretch nears a side of the box from within, and how far its begin is from it.
struct Side {
    double speed = 0;
    double room = 0;
};

// From which to which share of its length a stretch lies in the box (Liang & Barsky 1984, ACM Trans. Graph.
// 3:1).
std::optional<Shares> shares_inside(PaperSpot from, PaperSpot to, const Box& box) {
    const double x = (to.x - from.x).value;
    const double y = (to.y - from.y).value;
    const std::array<Side, 4> sides{{{-x, (from.x - box.left).value},
                                     {x, (box.right() - from.x).value},
                                     {-y, (from.y - box.top).value},
                                     {y, (box.bottom() - from.y).value}}};
    Shares shares;
    for (const auto& [speed, room] : sides) {
        if (speed == 0 && room < 0) {
            return std::nullopt;
        }
        if (speed < 0) {
            shares.enters = std::max(shares.enters, room / speed);
        } else if (speed > 0) {
            shares.leaves = std::min(shares.leaves, room / speed);
        }
    }
    return shares.enters < shares.leaves ? std::optional{shares} : std::nullopt;
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
            parts.push_back({between(line[i - 1], line[i], shares->enters)});
        }
        parts.back().push_back(between(line[i - 1], line[i], shares->leaves));
        goes_on = shares->leaves == 1;
    }
    return parts;
}

}  // namespace pipward::paper
