// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/clipped.h"

#include "pipward/math/line.h"

namespace pipward::paper::detail {

std::vector<std::vector<PaperSpot>> clipped(const std::vector<PaperSpot>& line, const Box& box) {
    std::vector<math::PlanePoint> points;
    for (const auto& spot : line) {
        points.push_back({spot.x.value, spot.y.value});
    }
    const math::Box room{{box.left.value, box.top.value}, {box.right().value, box.bottom().value}};
    std::vector<std::vector<PaperSpot>> parts;
    for (const auto& part : math::parts_within(points, room)) {
        auto& spots = parts.emplace_back();
        for (const auto& point : part) {
            spots.push_back({{point.east}, {point.north}});
        }
    }
    return parts;
}

}  // namespace pipward::paper::detail
