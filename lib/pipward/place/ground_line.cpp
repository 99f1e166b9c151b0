// SPDX-License-Identifier: MIT
#include "pipward/place/ground_line.h"

#include <geodesic.h>

#include <algorithm>
#include <cmath>

namespace pipward::place {
namespace {

constexpr double mean_radius = 6371000.0;  // metres, of the earth
constexpr double same_place = 1e-6;        // metres: nearer is rounding

const geod_geodesic& wgs84() {
    static const geod_geodesic earth = [] {
        geod_geodesic made{};
        geod_init(&made, 6378137.0, 1 / 298.257223563);
        return made;
    }();
    return earth;
}

/// From above -360: the same bearing, 0 up to 360 degrees.
double turned(double bearing) {
    return std::fmod(bearing + 360.0, 360.0);
}

/// Degrees from one bearing to another, -180 up to 180: positive to the right.
double turn(double from, double to) {
    return turned(to - from + 180.0) - 180.0;
}

/// Metres over the ground of `level` metres over the ellipsoid: longer by height / radius, and along the
/// slope (Pythagoras). The heights are taken for ellipsoidal ones: 50 m more or less are 8 mm a kilometre.
double ground_length(const GroundPoint& from, const GroundPoint& to, double level) {
    if (!from.height || !to.height) {
        return level;
    }
    const double height = (from.height->value + to.height->value) / 2;
    return std::hypot(level * (1 + height / mean_radius), to.height->value - from.height->value);
}

std::optional<Metres> between(const GroundPoint& from, const GroundPoint& to, double share) {
    if (!from.height || !to.height) {
        return std::nullopt;
    }
    return Metres{from.height->value + share * (to.height->value - from.height->value)};
}

}  // namespace

LonLat way_from(const LonLat& from, double bearing_deg, Metres distance) {
    LonLat to;
    geod_direct(&wgs84(), from.lat, from.lon, bearing_deg, distance.value, &to.lat, &to.lon, nullptr);
    return to;
}

GroundLine::GroundLine(std::span<const GroundPoint> points) {
    for (const auto& point : points) {
        const auto& start = legs_.empty() ? points.front() : legs_.back().end;
        Leg leg{start, point};
        geod_inverse(&wgs84(), start.at.lat, start.at.lon, point.at.lat, point.at.lon, &leg.level,
                     &leg.bearing_deg, &leg.bearing_at_end_deg);
        if (leg.level <= same_place) {
            continue;
        }
        leg.length = ground_length(start, point, leg.level);
        leg.begins = length().value;
        legs_.push_back(leg);
    }
}

Metres GroundLine::length() const {
    return Metres{legs_.empty() ? 0.0 : legs_.back().begins + legs_.back().length};
}

const GroundLine::Leg& GroundLine::leg_at(double along) const {
    const auto after = std::ranges::upper_bound(legs_, along, {}, &Leg::begins);
    return after == legs_.begin() ? *after : *std::prev(after);
}

GroundPoint GroundLine::at(Metres along) const {
    const auto& leg = leg_at(along.value);
    const double share = (along.value - leg.begins) / leg.length;
    return {way_from(leg.start.at, leg.bearing_deg, Metres{share * leg.level}),
            between(leg.start, leg.end, share)};
}

double GroundLine::bearing_deg() const {
    return legs_.empty() ? 0.0 : way_between(legs_.front().start.at, legs_.back().end.at).bearing_deg;
}

std::vector<GroundPoint> GroundLine::part(Metres from, Metres to) const {
    std::vector<GroundPoint> points{at(from)};
    for (const auto& leg : legs_) {
        if (leg.begins > from.value + same_place && leg.begins < to.value - same_place) {
            points.push_back(leg.start);
        }
    }
    points.push_back(at(to));
    return points;
}

double GroundLine::sharpest_turn_deg() const {
    double sharpest = 0;
    for (std::size_t i = 1; i < legs_.size(); ++i) {
        sharpest = std::max(sharpest, std::abs(turn(legs_[i - 1].bearing_at_end_deg, legs_[i].bearing_deg)));
    }
    return sharpest;
}

std::vector<GroundPoint> GroundLine::beside(Metres distance) const {
    std::vector<GroundPoint> points;
    const auto shifted = [&](const GroundPoint& point, double bearing, double far) {
        points.push_back({way_from(point.at, bearing + 90, Metres{far}), point.height});
    };
    for (std::size_t i = 0; i < legs_.size(); ++i) {
        // At a corner the way out bisects the turn, and is longer so that both legs keep their distance.
        const double bend = i == 0 ? 0 : turn(legs_[i - 1].bearing_at_end_deg, legs_[i].bearing_deg);
        shifted(legs_[i].start, legs_[i].bearing_deg - bend / 2,
                distance.value / std::cos(radians(bend / 2)));
    }
    if (!legs_.empty()) {
        shifted(legs_.back().end, legs_.back().bearing_at_end_deg, distance.value);
    }
    return points;
}

}  // namespace pipward::place
