// SPDX-License-Identifier: MIT
#include "pipward/place/detail/walk_ground.h"

#include <algorithm>
#include <limits>
#include <queue>

#include "pipward/math/obstacles.h"

namespace pipward::place::detail {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

struct Way {
    std::uint32_t to = 0;
    double metres = 0;
};

// One may walk a little closer than one turns, since the course of a row leaves small bends out and what
// touches in theory must not be lost to rounding.
constexpr double closest_share = 0.6;

math::Obstacles obstacles_of(std::span<const Barrier> barriers) {
    std::vector<math::Obstacle> obstacles;
    for (const auto& barrier : barriers) {
        for (std::size_t i = 1; barrier.bars && i < barrier.course.size(); ++i) {
            obstacles.push_back({barrier.course[i - 1], barrier.course[i], closest_share * barrier.beside});
        }
    }
    return math::Obstacles(std::move(obstacles));
}

struct Reached {
    std::vector<double> metres;
    std::vector<std::uint32_t> before;
};

}  // namespace

struct WalkGround::Graph {
    std::size_t places = 0;
    std::vector<math::PlanePoint> points;  // the places, then where walks round a row turn
    std::vector<bool> in_the_open;         // by place
    std::vector<std::vector<Way>> ways;

    Graph(std::vector<math::PlanePoint> wanted, std::span<const Barrier> barriers)
        : places(wanted.size()), points(std::move(wanted)) {
        auto rows = obstacles_of(barriers);
        for (const auto& place : points) {
            in_the_open.push_back(!rows.bar(place, place));
        }
        for (const auto& barrier : barriers) {
            for (const auto& corner : math::corners_around(barrier.course, barrier.beside)) {
                if (barrier.bars && !rows.bar(corner, corner)) {
                    points.push_back(corner);
                }
            }
        }
        join_all(rows);
    }

    void join_all(math::Obstacles& rows) {
        ways.resize(points.size());
        for (std::uint32_t a = 0; a < points.size(); ++a) {
            for (std::uint32_t b = a + 1; b < points.size(); ++b) {
                if (!rows.bar(points[a], points[b])) {
                    const double metres = length(points[a] - points[b]);
                    ways[a].push_back({b, metres});
                    ways[b].push_back({a, metres});
                }
            }
        }
    }

    // Dijkstra 1959, Numer. Math. 1:269. Of equal walks the one found first stays.
    Reached reach(std::uint32_t from) const {
        Reached reached{std::vector<double>(points.size(), endless),
                        std::vector<std::uint32_t>(points.size(), from)};
        struct Entry {
            double metres = 0;
            std::uint32_t place = 0;

            auto operator<=>(const Entry&) const = default;
        };
        std::priority_queue<Entry, std::vector<Entry>, std::greater<>> open;
        reached.metres[from] = 0;
        open.push({0.0, from});
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
                    open.push({reached.metres[way.to], way.to});
                }
            }
        }
        return reached;
    }
};

WalkGround::WalkGround(std::vector<math::PlanePoint> places, std::span<const Barrier> barriers)
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

std::vector<math::PlanePoint> WalkGround::walk(std::uint32_t from, std::uint32_t to) const {
    const auto reached = graph_->reach(from);
    if (reached.metres[to] == endless) {
        return {graph_->points[from], graph_->points[to]};
    }
    std::vector<math::PlanePoint> corners{graph_->points[to]};
    for (auto at = to; at != from;) {
        at = reached.before[at];
        corners.push_back(graph_->points[at]);
    }
    std::ranges::reverse(corners);
    return corners;
}

bool WalkGround::is_open(std::uint32_t place) const {
    return graph_->in_the_open[place];
}

}  // namespace pipward::place::detail
