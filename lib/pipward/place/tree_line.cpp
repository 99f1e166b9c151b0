// SPDX-License-Identifier: MIT
#include "pipward/place/tree_line.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <map>
#include <span>
#include <tuple>

#include "pipward/math/line.h"

namespace pipward::place {
namespace {

using math::PlanePoint;

constexpr double beside_row = 1.0;  // metres: farther off, a tree without a position is not in the row's line

struct Stand {
    double order = 0;
    std::uint32_t tree = 0;
    PlanePoint at;
    bool beside = false;
};

void sort(std::vector<Stand>& stands) {
    std::ranges::sort(stands, [](const Stand& a, const Stand& b) {
        return std::tie(a.order, a.tree) < std::tie(b.order, b.tree);
    });
}

/// Where among stands in their order, numbered from 0, a tree lengthens the way least.
double order_among(std::span<const Stand> stands, PlanePoint at) {
    // Beyond an end the farther trees are the outer ones.
    const auto beyond = [](double metres) { return metres / (metres + 1); };
    const auto last = stands.size() - 1;
    const double to_first = length(at - stands.front().at);
    const double to_last = length(at - stands.back().at);
    double least = std::min(to_first, to_last);
    double order = to_first < to_last ? -beyond(to_first) : static_cast<double>(last) + beyond(to_last);
    for (std::size_t i = 0; i < last; ++i) {
        const double from = length(at - stands[i].at);
        const double to = length(stands[i + 1].at - at);
        const double longer = from + to - length(stands[i + 1].at - stands[i].at);
        if (longer < least) {
            least = longer;
            order = static_cast<double>(i) + (from + 0.1) / (from + to + 0.2);
        }
    }
    return order;
}

double beside_of(const math::Line& line, PlanePoint at) {
    const auto foot = line.foot(at);
    return std::abs(dot(at - foot.at, left_of(foot.ahead)));
}

std::vector<Stand> by_position(const Orchard& orchard, std::vector<Stand> numbered,
                               std::vector<Stand> others) {
    for (auto& stand : numbered) {
        stand.order = *orchard.trees[stand.tree].position;
    }
    sort(numbered);
    std::vector<PlanePoint> points;
    for (std::size_t i = 0; i < numbered.size(); ++i) {
        numbered[i].order = static_cast<double>(i);
        points.push_back(numbered[i].at);
    }
    const math::Line line(std::move(points));
    for (auto& stand : others) {
        stand.order = order_among(numbered, stand.at);
        stand.beside = beside_of(line, stand.at) > beside_row;
    }
    numbered.insert(numbered.end(), others.begin(), others.end());
    sort(numbered);
    return numbered;
}

std::vector<Stand> along_row(std::vector<Stand> stands) {
    std::vector<PlanePoint> points;
    for (const auto& stand : stands) {
        points.push_back(stand.at);
    }
    const auto along = math::main_direction(points);
    for (auto& stand : stands) {
        stand.order = dot(stand.at, along);
    }
    sort(stands);
    return stands;
}

TreeLine ordered(const Orchard& orchard, const MetrePlane& plane, const RowName& name,
                 const std::vector<std::uint32_t>& trees) {
    std::vector<Stand> numbered;
    std::vector<Stand> others;
    for (const auto tree : trees) {
        (orchard.trees[tree].position ? numbered : others)
            .push_back({0, tree, plane(*orchard.trees[tree].at)});
    }
    if (numbered.size() < 2 || numbered.size() < others.size()) {
        others.insert(others.end(), numbered.begin(), numbered.end());
        numbered.clear();
    }
    const auto stands = numbered.empty() ? along_row(std::move(others))
                                         : by_position(orchard, std::move(numbered), std::move(others));
    TreeLine line{name, {}, {}, {}};
    for (const auto& stand : stands) {
        line.trees.push_back(stand.tree);
        line.at.push_back(stand.at);
        if (!stand.beside) {
            line.line.push_back(stand.at);
        }
    }
    return line;
}

}  // namespace

std::optional<RowName> row_name(const Tree& tree) {
    return tree.row ? std::optional{RowName{tree.block.value_or(""), *tree.row}} : std::nullopt;
}

std::vector<TreeLine> drawn_lines(const Orchard& orchard, const MetrePlane& plane,
                                  const std::set<RowName>* only) {
    std::set<RowName> planted;
    for (const auto& tree : orchard.trees) {
        if (const auto name = tree.at ? row_name(tree) : std::nullopt) {
            planted.insert(*name);
        }
    }
    std::vector<TreeLine> lines;
    for (const auto& row : orchard.rows) {
        const RowName name{row.block, row.name};
        if (row.line.size() > 1 && !planted.contains(name) && (only == nullptr || only->contains(name))) {
            lines.push_back({name, {}, {}, {}});
            std::ranges::transform(row.line, std::back_inserter(lines.back().line), std::ref(plane));
        }
    }
    return lines;
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
