// SPDX-License-Identifier: MIT
#include "pipward/place/detail/near_place.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

#include "pipward/place/named_place.h"
#include "pipward/place/place_text.h"

namespace pipward::place::detail {
namespace {

struct Sought {
    OwnPosition from;
    double accuracy = 0;       // m
    double metres_a_unit = 1;  // of y
};

std::optional<Sought> grid_place(std::string_view query, const std::string& crs) {
    auto grid = parse_grid(query);
    const auto blank = query.find(' ');
    if (!grid && blank != std::string_view::npos) {
        const auto x = parse_coordinate(query.substr(0, blank));
        const auto y = parse_coordinate(query.substr(blank + 1));
        grid = x && y ? std::optional{MapPoint{*x, *y, {}}} : std::nullopt;
    }
    // Smaller numbers are addresses: "3 12".
    constexpr double least = 1000;
    if (!grid || std::abs(grid->x) < least || std::abs(grid->y) < least) {
        return std::nullopt;
    }
    const ToEarth to_earth(crs);
    return to_earth.from_degrees() ? std::nullopt : std::optional{Sought{{*grid, 1.0}, 0}};
}

bool could_be_place(std::string_view query) {
    return std::ranges::count_if(query, [](char c) { return c >= '0' && c <= '9'; }) >= 2;
}

std::optional<Sought> sought_place(std::string_view query, const std::string& crs) {
    if (!could_be_place(query)) {
        return std::nullopt;
    }
    if (const auto place = parse_place(query)) {
        if (const auto from = own_position(place->at, crs)) {
            const bool degrees = from->x_shrink < 1;  // on the equator, where it is 1, no pome fruit is bred
            return Sought{*from, place->accuracy.value_or(Metres{0}).value, degrees ? metres_a_degree : 1.0};
        }
    }
    return grid_place(query, crs);
}

// Metres: how far from a place a tree is still shown. Our own figure.
double farthest_from(const Sought& sought) {
    constexpr double reach = 30;
    return std::max(reach, 3 * sought.accuracy);
}

}  // namespace

bool is_surely_place(std::string_view query) {
    const auto has = [&](std::string_view sign) { return query.find(sign) != std::string_view::npos; };
    const auto decimals = [&] {
        std::size_t points = 0;
        for (std::size_t i = 1; i + 1 < query.size(); ++i) {
            const auto digit = [&](std::size_t at) { return query[at] >= '0' && query[at] <= '9'; };
            points += query[i] == '.' && digit(i - 1) && digit(i + 1) ? 1 : 0;
        }
        return points;
    };
    const bool named = query.starts_with("geo:") || query.starts_with("GEO:") || has("://") || has("\u00B0");
    return named || (decimals() == 2 && parse_place(query));
}

MapBox box_around(const OwnPosition& from, double distance) {
    const double across = distance / from.x_shrink;
    return {{from.at.x - across, from.at.y - distance, {}}, {from.at.x + across, from.at.y + distance, {}}};
}

std::optional<MapBox> box_sought(std::string_view query, const std::string& crs) {
    const auto sought = sought_place(query, crs);
    return sought ? std::optional{box_around(sought->from, farthest_from(*sought) / sought->metres_a_unit)}
                  : std::nullopt;
}

NearTable::NearTable(const Orchard& orchard) : orchard_(orchard) {
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        if (const auto& at = orchard.trees[i].at) {
            spots_.push_back({at->x, at->y, i});
        }
    }
}

void NearTable::find(std::string_view query, Hits& hits) const {
    const auto sought = sought_place(query, orchard_.crs);
    if (!sought) {
        return;
    }
    // Our own figures: a tree beside the place is as good as an address, one at the edge of what is shown
    // worth little.
    constexpr double best = 0.97;
    constexpr double half_at = 15;  // m
    const double farthest = farthest_from(*sought);
    for (const auto& [x, y, tree] : spots_) {
        const double metres = sought->metres_a_unit * sought->from.plain_distance({x, y, {}});
        if (metres <= farthest) {
            hits.add({.tree = tree,
                      .score = static_cast<float>(best / (1 + metres / (half_at + sought->accuracy))),
                      .kind = MatchKind::nearness});
        }
    }
}

std::vector<std::uint32_t> NearTable::nearest(const OwnPosition& from, std::size_t limit) const {
    struct Away {
        double distance = 0;
        std::uint32_t tree = 0;

        auto operator<=>(const Away&) const = default;
    };
    std::vector<Away> by_distance;
    for (const auto& [x, y, tree] : spots_) {
        by_distance.push_back({from.plain_distance({x, y, {}}), tree});
    }
    const auto end = by_distance.begin() + static_cast<std::ptrdiff_t>(std::min(limit, by_distance.size()));
    std::partial_sort(by_distance.begin(), end, by_distance.end());
    std::vector<std::uint32_t> trees;
    std::transform(by_distance.begin(), end, std::back_inserter(trees),
                   [](const Away& one) { return one.tree; });
    return trees;
}

}  // namespace pipward::place::detail
