// SPDX-License-Identifier: MIT
#include "pipward/place/walk_ground.h"

#include <algorithm>
#include <limits>
#include <queue>

#include "pipward/place/piece_grid.h"

namespace pipward::place {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

struct Way {
    std::uint32_t to = 0;
    double metres = 0;
};

std::vector<Piece> all_pieces(std::span<const Barrier> barriers) {
    std::vector<Piece> all;
    for (const auto& barrier : barriers) {
        const auto pieces = pieces_of(barrier);
        all.insert(all.end(), pieces.begin(), pieces.end());
    }
    return all;
}

struct Reached {
    std::vector<double> metres;
    std::vector<std::uint32_t> before;
};

}  // namespace

struct WalkGround::Graph {
    std::size_t places = 0;
    std::vector<PlanePoint> points;  // the places, then the turning points
    PieceGrid grid;
    std::vector<std::vector<Way>> ways;

    Graph(std::vector<PlanePoint> wanted, std::span<const Barrier> barriers)
        : places(wanted.size()), points(std::move(wanted)), grid(all_pieces(barriers)) {
        for (const auto& barrier : barriers) {
            for (const auto& point : turning_points(barrier)) {
                if (!grid.blocks(point, point)) {
                    points.push_back(point);
                }
            }
        }
        ways.resize(points.size());
        for (std::uint32_t a = 0; a < points.size(); ++a) {
            for (std::uint32_t b = a + 1; b < points.size(); ++b) {
                join(a, b);
            }
        }
    }

    void join(std::uint32_t a, std::uint32_t b) {
        if (!grid.blocks(points[a], points[b])) {
            const double metres = length(points[a] - points[b]);
            ways[a].push_back({b, metres});
            ways[b].push_back({a, metres});
        }
    }

    // Dijkstra 1959, Numer. Math. 1:269. Of equal walks the one found first stays.
    Reached reach(std::uint32_t from) const {
        Reached reached{std::vector<double>(points.size(), endless),
                        std::vector<std::uint32_t>(points.size(), from)};
        using Entry = std::pair<double, std::uint32_t>;
        std::priority_queue<Entry, std::vector<Entry>, std::greater<>> open;
        reached.metres[from] = 0;
        open.emplace(0.0, from);
        while (!open.empty()) {
            const auto [metres, at] = open.top();
            open.pop();
            // A place is never a corner of a shortest walk: the straight ways past it are ways of their own.
            if (metres > reached.metres[at] || (at < places && at != from)) {
                continue;
            }
            for (const auto& way : ways[at]) {
                if (metres + way.metres < reached.metres[way.to]) {
                    reached.metres[way.to] = metres + way.metres;
                    reached.before[way.to] = at;
                    open.emplace(reached.metres[way.to], way.to);
                }
            }
        }
        return reached;
    }
};

WalkGround::WalkGround(std::vector<PlanePoint> places, std::span<const Barrier> barriers)
    : graph_(std::make_unique<const Graph>(std::move(places), barriers)) {}
WalkGround::~WalkGround() = default;
WalkGround::WalkGround(WalkGround&&) noexcept = default;

PlaceDistances WalkGround::distances(const std::function<void(double)>& tell) const {
    PlaceDistances distances(graph_->places);
    for (std::uint32_t from = 0; from < graph_->places; ++from) {
        const auto reached = graph_->reach(from);
        for (std::uint32_t to = 0; to < from; ++to) {
            distances.set(from, to, reached.metres[to]);
        }
        if (tell) {
            tell(static_cast<double>(from) / static_cast<double>(graph_->places));
        }
    }
    return distances;
}

std::vector<PlanePoint> WalkGround::walk(std::uint32_t from, std::uint32_t to) const {
    const auto reached = graph_->reach(from);
    if (reached.metres[to] == endless) {
        return {graph_->points[from], graph_->points[to]};
    }
    std::vector<PlanePoint> corners{graph_->points[to]};
    for (auto at = to; at != from;) {
        at = reached.before[at];
        corners.push_back(graph_->points[at]);
    }
    std::ranges::reverse(corners);
    return corners;
}

bool WalkGround::is_open(std::uint32_t place) const {
    return !graph_->grid.blocks(graph_->points[place], graph_->points[place]);
}

}  // namespace pipward::place
