// SPDX-License-Identifier: MIT
#include "pipward/place/detail/numbering.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/least_squares.h"
#include "pipward/math/quantile.h"
#include "pipward/place/ground_line.h"

namespace pipward::place::detail {
namespace {

constexpr double hardly = 0.5;                 // probability below which a tree is none of the row's
constexpr double sure = 0.95;                  // probability from which a number may move the scale
constexpr std::size_t enough_to_stretch = 12;  // sure trees: fewer leave the step as it is

}  // namespace

std::size_t sure_members(const RowMembers& members) {
    return sure_places(members).size();
}

std::vector<double> sure_places(const RowMembers& members) {
    std::vector<double> places;
    for (const auto& member : members) {
        if (member.certainty >= hardly) {
            places.push_back(member.along);
        }
    }
    return places;
}

std::vector<PlacedPoint> decode_members(const RowMembers& members, const PositionScale& scale) {
    const auto decoded = decode_row(sure_places(members), scale);
    std::vector<PlacedPoint> points;
    std::size_t next = 0;
    for (const auto& member : members) {
        if (member.certainty >= hardly) {
            points.push_back(decoded[next++]);
        } else {
            const double number = (member.along - scale.origin) / scale.step;
            points.push_back({static_cast<int>(std::lround(number)), 0, 0, 1});
        }
    }
    return points;
}

void refit(const RowMembers& members, std::span<const PlacedPoint> points, double spacing,
           PositionScale& scale) {
    std::size_t count = 0;
    double middle = 0;
    for (const auto& point : points) {
        if (point.certainty >= sure) {
            ++count;
            middle += point.number;
        }
    }
    if (count < 3) {
        return;
    }
    middle /= static_cast<double>(count);
    // How far the step may well be from `spacing`: one hundredth of it, in units of the noise.
    const double stretch = count >= enough_to_stretch ? 0.01 * spacing / scale.noise : 1e-9;
    math::LeastSquares squares({1e6, stretch});
    int lowest = points[0].number;
    int highest = lowest;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (points[i].certainty < sure) {
            continue;
        }
        const double from_middle = points[i].number - middle;
        const double off = members[i].along - scale.origin - spacing * points[i].number;
        squares.add({1, from_middle}, off, 1);
        lowest = std::min(lowest, points[i].number);
        highest = std::max(highest, points[i].number);
    }
    const auto change = squares.solve();
    scale.origin += change[0] - change[1] * middle;
    scale.step = spacing + change[1];
    const double places = highest - lowest + 1;
    // Never so few or so many that a single gap, or none, would decide.
    const auto strays = std::ranges::count_if(points, [](const auto& point) { return point.stray > 0.5; });
    const auto standing = static_cast<double>(std::ssize(points) - strays);
    scale.missing = std::clamp(1 - standing / places, 0.03, 0.5);
}

Sentence doubt_of(const RowMember& member, const PlacedPoint& point, double start, double confidence,
                  double wanted) {
    if (confidence >= wanted) {
        return {};
    }
    if (member.certainty < wanted) {
        return say("it is off its row");
    }
    if (start < wanted) {
        return say("it is not clear where its row begins");
    }
    if (point.shared > (1 - wanted) / 2) {
        return say("another tree may stand at the same position");
    }
    return point.stray > 0.5 ? say("no position is near") : say("more than one position is possible");
}

double wanted_confidence(double confidence, double noise_share) {
    constexpr double great = 0.2;  // each axis; 0.28 as the root mean square of both
    return noise_share <= great ? confidence : 1 - (1 - confidence) / 10;
}

LonLat middle_of(std::span<const LonLat> places) {
    if (places.empty()) {
        return {};
    }
    std::vector<double> lons;
    std::vector<double> lats;
    for (const auto& place : places) {
        lons.push_back(place.lon);
        lats.push_back(place.lat);
    }
    return {math::middle_value(std::move(lons)), math::middle_value(std::move(lats))};
}

std::vector<math::PlanePoint> to_plane(std::span<const LonLat> places, const LonLat& middle) {
    std::vector<math::PlanePoint> plane;
    for (const auto& place : places) {
        const auto way = way_between(middle, place);
        plane.push_back(math::way_at(way.bearing_deg) * way.distance.value);
    }
    return plane;
}

LonLat from_plane(const math::PlanePoint& point, const LonLat& middle) {
    return way_from(middle, math::bearing_deg(point), Metres{math::length(point)});
}

}  // namespace pipward::place::detail
