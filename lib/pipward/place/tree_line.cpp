// SPDX-License-Identifier: MIT
#include "pipward/place/tree_line.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace pipward::place {
namespace {

struct Stand {
    double order = 0;
    std::uint32_t tree = 0;
    math::PlanePoint at;
};

TreeLine ordered(const Orchard& orchard, const MetrePlane& plane, const RowName& name,
                 const std::vector<std::uint32_t>& trees) {
    std::vector<math::PlanePoint> points;
    for (const auto tree : trees) {
        points.push_back(plane(*orchard.trees[tree].at));
    }
    const bool numbered =
        std::ranges::all_of(trees, [&](auto tree) { return orchard.trees[tree].position.has_value(); });
    const auto along = math::main_direction(points);
    std::vector<Stand> stands;
    for (std::size_t i = 0; i < trees.size(); ++i) {
        const double order =
            numbered ? static_cast<double>(*orchard.trees[trees[i]].position) : dot(points[i], along);
        stands.push_back({order, trees[i], points[i]});
    }
    std::ranges::sort(stands, [](const Stand& a, const Stand& b) {
        return std::tie(a.order, a.tree) < std::tie(b.order, b.tree);
    });
    TreeLine line{name, {}, {}};
    for (const auto& stand : stands) {
        line.trees.push_back(stand.tree);
        line.at.push_back(stand.at);
    }
    return line;
}

}  // namespace

std::optional<RowName> row_name(const Tree& tree) {
    return tree.row ? std::optional{RowName{tree.block.value_or(""), *tree.row}} : std::nullopt;
}

std::vector<TreeLine> tree_lines(const Orchard& orchard, const MetrePlane& plane,
                                 const std::set<RowName>* only) {
    std::map<RowName, std::vector<std::uint32_t>> members;
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        const auto name = orchard.trees[i].at ? row_name(orchard.trees[i]) : std::nullopt;
        if (name && (only == nullptr || only->contains(*name))) {
            members[*name].push_back(i);
        }
    }
    std::vector<TreeLine> lines;
    for (const auto& [name, trees] : members) {
        lines.push_back(ordered(orchard, plane, name, trees));
    }
    return lines;
}

}  // namespace pipward::place
