// SPDX-License-Identifier: MIT
#include "pipward/place/detail/near_place.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "pipward/place/named_place.h"
#include "pipward/place/place_text.h"

namespace pipward::place::detail {
namespace {

struct Sought {
    OwnPosition from;
    double accuracy = 0;  // m
};

std::optional<Sought> grid_place(std::string_view query, const Orchard& orchard) {
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
    const ToEarth to_earth(orchard.crs);
    return to_earth.from_degrees() ? std::nullopt : std::optional{Sought{{*grid, 1.0}, 0}};
}

bool could_be_place(std::string_view query) {
    return std::ranges::count_if(query, [](char c) { return c >= '0' && c <= '9'; }) >= 2;
}

std::optional<Sought> sought_place(std::string_view query, const Orchard& orchard) {
    if (!could_be_place(query)) {
        return std::nullopt;
    }
    if (const auto place = parse_place(query)) {
        const auto from = own_position(place->at, orchard.crs);
        if (from) {
            return Sought{*from, place->accuracy.value_or(Metres{0}).value};
        }
    }
    return grid_place(query, orchard);
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

void find_near(std::string_view query, const Orchard& orchard, Hits& hits) {
    const auto sought = sought_place(query, orchard);
    if (!sought) {
        return;
    }
    // Our own figures: a tree beside the place is as good as an address, one at the edge of what is shown
    // worth little.
    constexpr double reach = 30;  // m
    constexpr double best = 0.97;
    constexpr double half_at = 15;  // m
    const double metres_a_unit =
        ToEarth(orchard.crs).from_degrees() ? 111320.0 : 1.0;  // of a meridian's degree
    const double farthest = std::max(reach, 3 * sought->accuracy);
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        const auto& at = orchard.trees[i].at;
        const double metres = at ? metres_a_unit * sought->from.plain_distance(*at) : farthest + 1;
        if (metres <= farthest) {
            hits.add({.tree = i,
                      .score = static_cast<float>(best / (1 + metres / (half_at + sought->accuracy))),
                      .kind = MatchKind::nearness});
        }
    }
}

}  // namespace pipward::place::detail
