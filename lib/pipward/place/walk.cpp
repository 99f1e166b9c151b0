// SPDX-License-Identifier: MIT
#include "pipward/place/walk.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <limits>
#include <map>

#include "pipward/place/detail/alley.h"
#include "pipward/place/detail/visit_order.h"
#include "pipward/place/detail/walk_ground.h"

namespace pipward::place {
namespace {

// Metres added to a way through rows, so that it is taken only where there is no other.
constexpr double detour = 10000.0;

MapPoint middle_of_walk(const Orchard& orchard, const WalkWish& wish) {
    std::vector<MapPoint> points;
    for (const auto tree : wish.trees) {
        points.push_back(*orchard.trees[tree].at);
    }
    return middle_of(points);
}

// In the book's coordinates, so that a million trees are looked at quickly. The plane's box, some metres
// wider, may lie askew there.
math::Box map_box(const MetrePlane& plane, const std::vector<math::PlanePoint>& points) {
    constexpr double margin = 60.0;  // metres: wider than any alley
    const auto box = math::box_around(points);
    std::vector<math::PlanePoint> corners;
    for (const double east : {box.low.east - margin, box.high.east + margin}) {
        for (const double north : {box.low.north - margin, box.high.north + margin}) {
            const auto corner = plane.back({east, north});
            corners.push_back({corner.x, corner.y});
        }
    }
    return math::box_around(corners);
}

bool is_within(const math::Box& box, const MapPoint& at) {
    return at.x >= box.low.east && at.x <= box.high.east && at.y >= box.low.north && at.y <= box.high.north;
}

std::set<RowName> rows_within(const Orchard& orchard, const math::Box& box) {
    std::set<RowName> names;
    for (const auto& tree : orchard.trees) {
        if (tree.at && tree.row && is_within(box, *tree.at)) {
            names.insert(*row_name(tree));
        }
    }
    for (const auto& row : orchard.rows) {
        if (std::ranges::any_of(row.line, [&](const MapPoint& at) { return is_within(box, at); })) {
            names.insert({row.block, row.name});
        }
    }
    return names;
}

// Rows, what they bar, and where one stands at each tree.
class Rows {
  public:
    Rows(const Orchard& orchard, const WalkWish& wish, const MetrePlane& plane)
        : orchard_(orchard), plane_(plane) {
        std::vector<math::PlanePoint> points;
        for (const auto tree : wish.trees) {
            points.push_back(plane(*orchard.trees[tree].at));
        }
        for (const auto* end : {&wish.start, &wish.end}) {
            if (*end) {
                points.push_back(plane((*end)->at));
            }
        }
        if (wish.rows_bar) {
            const auto names = rows_within(orchard, map_box(plane, points));
            lines_ = tree_lines(orchard, plane, &names);
            std::ranges::move(drawn_lines(orchard, plane, &names), std::back_inserter(lines_));
            barriers_ = row_barriers(lines_, wish.rules);
        }
    }

    const std::vector<Barrier>& barriers() const { return barriers_.all; }

    std::vector<math::PlanePoint> places_of(const WalkEnd& end) const {
        const auto barrier = end.tree ? barrier_of(*end.tree) : std::nullopt;
        const auto at = plane_(end.at);
        if (!barrier) {
            return {at};
        }
        const auto sides = sides_of(barriers_, *barrier, at);
        return {sides.left, sides.right};
    }

    Sentence alley(std::uint32_t tree, math::PlanePoint stand) const {
        const auto barrier = barrier_of(tree);
        return barrier
                   ? detail::alley_words(lines_, barriers_, *barrier, plane_(*orchard_.trees[tree].at), stand)
                   : Sentence{};
    }

    // The direction from the row to where one stands.
    Sentence side(std::uint32_t tree, math::PlanePoint stand) const {
        const auto barrier = barrier_of(tree);
        if (!barrier) {
            return {};
        }
        const auto sides = sides_of(barriers_, *barrier, plane_(*orchard_.trees[tree].at));
        const auto across = sides.left - sides.right;
        const bool left = length(stand - sides.left) < length(stand - sides.right);
        return compass_words(bearing_deg(left ? across : across * -1));
    }

  private:
    // Of the stretches of its row the nearest.
    std::optional<std::uint32_t> barrier_of(std::uint32_t tree) const {
        const auto name = row_name(orchard_.trees[tree]);
        const auto at = plane_(*orchard_.trees[tree].at);
        std::optional<std::uint32_t> nearest;
        double metres = std::numeric_limits<double>::infinity();
        for (std::uint32_t i = 0; i < barriers_.all.size(); ++i) {
            if (!name || lines_[barriers_.all[i].line].name != *name) {
                continue;
            }
            if (const double off = barriers_.courses.line(i).distance(at); off < metres) {
                metres = off;
                nearest = i;
            }
        }
        return nearest;
    }

    const Orchard& orchard_;
    const MetrePlane& plane_;
    std::vector<TreeLine> lines_;
    Barriers barriers_;
};

// The places of all stops, and which stop has which.
struct Places {
    std::vector<math::PlanePoint> points;
    detail::Round round;

    detail::StopPlaces add(const std::vector<math::PlanePoint>& more) {
        detail::StopPlaces numbers;
        for (const auto& point : more) {
            numbers.push_back(static_cast<std::uint32_t>(points.size()));
            points.push_back(point);
        }
        return numbers;
    }
};

Places places_of(const Orchard& orchard, const WalkWish& wish, const Rows& rows) {
    Places places;
    for (const auto tree : wish.trees) {
        places.round.stops.push_back(places.add(rows.places_of({*orchard.trees[tree].at, tree})));
    }
    if (wish.start) {
        places.round.start = places.add(rows.places_of(*wish.start));
    }
    if (wish.end) {
        places.round.end = places.add(rows.places_of(*wish.end));
    }
    return places;
}

// A side that lies in another row is no place to stand, as long as there is another.
void keep_open(detail::StopPlaces& stop, const detail::WalkGround& ground) {
    const bool any = std::ranges::any_of(stop, [&](auto place) { return ground.is_open(place); });
    if (any) {
        std::erase_if(stop, [&](auto place) { return !ground.is_open(place); });
    }
}

detail::PlaceDistances finite(const detail::PlaceDistances& walked,
                              const std::vector<math::PlanePoint>& points) {
    auto distances = walked;
    for (std::uint32_t a = 0; a < points.size(); ++a) {
        for (std::uint32_t b = 0; b < a; ++b) {
            if (std::isinf(walked(a, b))) {
                distances.set(a, b, length(points[a] - points[b]) + detour);
            }
        }
    }
    return distances;
}

// Draws the legs of a walk in their order.
struct Drawing {
    const MetrePlane& plane;
    const detail::WalkGround& ground;
    const detail::PlaceDistances& walked;

    WalkLeg leg(std::optional<std::uint32_t> from, std::uint32_t to) const {
        WalkLeg leg;
        if (!from) {
            return leg;
        }
        const auto corners = ground.walk(*from, to);
        for (std::size_t i = 0; i < corners.size(); ++i) {
            leg.line.push_back(plane.back(corners[i]));
            leg.metres += i == 0 ? 0.0 : length(corners[i] - corners[i - 1]);
        }
        leg.through_rows = std::isinf(walked(*from, to));
        return leg;
    }

    // Of several places for an end, the one that is nearest to the stop beside it.
    std::optional<std::uint32_t> nearest(const detail::StopPlaces& places, std::uint32_t to) const {
        const auto found =
            std::ranges::min_element(places, {}, [&](auto place) { return walked(place, to); });
        return found == places.end() ? std::nullopt : std::optional{*found};
    }
};

std::vector<WalkLeg> legs_of(const Drawing& drawing, const Rows& rows, const WalkWish& wish,
                             const Places& places, const std::vector<detail::Visit>& order) {
    std::vector<WalkLeg> legs;
    auto at = drawing.nearest(places.round.start, order.front().place);
    for (const auto& visit : order) {
        auto leg = drawing.leg(at, visit.place);
        leg.tree = wish.trees[visit.stop];
        leg.side = rows.side(*leg.tree, places.points[visit.place]);
        leg.alley = rows.alley(*leg.tree, places.points[visit.place]);
        legs.push_back(std::move(leg));
        at = visit.place;
    }
    if (const auto end = drawing.nearest(places.round.end, order.back().place)) {
        legs.push_back(drawing.leg(at, *end));
    }
    return legs;
}

}  // namespace

Walk plan_walk(const Orchard& orchard, const WalkWish& wish, const std::function<void(double)>& tell) {
    Walk walk;
    if (wish.trees.empty()) {
        return walk;
    }
    const auto part = [&](double from, double to) {
        return [&tell, from, to](double share) {
            if (tell) {
                tell(from + share * (to - from));
            }
        };
    };
    const MetrePlane plane(orchard.crs, middle_of_walk(orchard, wish));
    const Rows rows(orchard, wish, plane);
    auto places = places_of(orchard, wish, rows);
    const detail::WalkGround ground(places.points, rows.barriers());
    auto& round = places.round;
    std::ranges::for_each(round.stops, [&](auto& stop) { keep_open(stop, ground); });
    keep_open(round.start, ground);
    keep_open(round.end, ground);
    const auto walked = ground.distances(part(0.0, 0.4));
    const auto order = detail::visit_order(finite(walked, places.points), round, part(0.4, 1.0));
    walk.is_shortest = round.stops.size() <= detail::exact_stops;

    walk.legs = legs_of({plane, ground, walked}, rows, wish, places, order);
    for (const auto& leg : walk.legs) {
        walk.metres += leg.metres;
    }
    return walk;
}

}  // namespace pipward::place
