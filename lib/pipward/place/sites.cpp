// SPDX-License-Identifier: MIT
#include "pipward/place/detail/sites.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace pipward::place::detail {
namespace {

/// A cell of a net of parallels and of meridians that draw together with the latitude.
struct Cell {
    int south = 0;
    int west = 0;

    auto operator<=>(const Cell&) const = default;
};

class Net {
  public:
    explicit Net(double metres) : step_(metres / metres_a_degree) {}

    Cell of(const LonLat& place) const {
        const int south = static_cast<int>(std::floor(place.lat / step_));
        return {south, west_in(south, place.lon)};
    }

    /// Those that touch it: the meridians of the neighbouring parallels are others.
    std::vector<Cell> around(const Cell& cell) const {
        std::vector<Cell> cells;
        const double lon = (cell.west + 0.5) * width(cell.south);
        for (int south = cell.south - 1; south <= cell.south + 1; ++south) {
            const int middle = south == cell.south ? cell.west : west_in(south, lon);
            for (int west = middle - 1; west <= middle + 1; ++west) {
                cells.push_back({south, west});
            }
        }
        return cells;
    }

  private:
    double width(int south) const {
        constexpr double narrowest = 0.01;  // near the poles
        const double latitude = radians((south + 0.5) * step_);
        return step_ / std::max(narrowest, std::cos(latitude));
    }
    int west_in(int south, double lon) const { return static_cast<int>(std::floor(lon / width(south))); }

    double step_;
};

using Cells = std::map<Cell, std::pair<LonLat, std::vector<std::size_t>>>;

void gather(const Cells& cells, const Net& net, const Cell& start, std::map<Cell, int>& site_of_cell,
            int site) {
    std::vector<Cell> open{start};
    site_of_cell[start] = site;
    while (!open.empty()) {
        const auto cell = open.back();
        open.pop_back();
        for (const auto& next : net.around(cell)) {
            if (cells.contains(next) && site_of_cell.try_emplace(next, site).second) {
                open.push_back(next);
            }
        }
    }
}

/// Whether all lie so near to one another, in the unit of the map, that they are one site.
bool is_small(std::span<const MapPoint> points, double most) {
    const auto [west, east] = std::ranges::minmax(points, {}, &MapPoint::x);
    const auto [south, north] = std::ranges::minmax(points, {}, &MapPoint::y);
    return east.x - west.x < most && north.y - south.y < most;
}

}  // namespace

Sites sites_of(std::span<const MapPoint> points, const ToEarth& to_earth, double metres) {
    Sites sites{{}, std::vector<int>(points.size(), -1)};
    const double most = to_earth.from_degrees() ? metres / metres_a_degree : metres;
    const auto first = points.empty() ? std::nullopt : to_earth(points.front());
    if (first && is_small(points, most)) {
        sites.sites.push_back({*first, static_cast<int>(points.size())});
        std::ranges::fill(sites.site_of, 0);
        return sites;
    }
    const Net net(metres);
    Cells cells;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (const auto place = to_earth(points[i])) {
            auto& cell = cells[net.of(*place)];
            cell.first = *place;
            cell.second.push_back(i);
        }
    }
    std::map<Cell, int> site_of_cell;
    for (const auto& [cell, inside] : cells) {
        if (!site_of_cell.contains(cell)) {
            gather(cells, net, cell, site_of_cell, static_cast<int>(sites.sites.size()));
            sites.sites.push_back({inside.first, 0});
        }
        const int site = site_of_cell.at(cell);
        sites.sites[static_cast<std::size_t>(site)].trees += static_cast<int>(inside.second.size());
        for (const auto point : inside.second) {
            sites.site_of[point] = site;
        }
    }
    return sites;
}

}  // namespace pipward::place::detail
