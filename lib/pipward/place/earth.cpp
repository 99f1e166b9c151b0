// SPDX-License-Identifier: MIT
#include "pipward/place/earth.h"

#include <fmt/format.h>
#include <geodesic.h>
#include <proj.h>

#include <array>
#include <charconv>
#include <cmath>

#include "pipward/place/detail/proj_context.h"
#include "pipward/place/own_position.h"

namespace pipward::place {
namespace {

using detail::Context;
using detail::ProjectionHandle;
using detail::quiet_context;

// Longitude and latitude in this order whatever the systems themselves say.
ProjectionHandle to_wgs84(PJ_CONTEXT* context, const std::string& crs) {
    const ProjectionHandle plain(proj_create_crs_to_crs(context, crs.c_str(), "EPSG:4326", nullptr));
    return plain ? ProjectionHandle(proj_normalize_for_visualization(context, plain.get())) : nullptr;
}

bool is_geographic(PJ_CONTEXT* context, const std::string& crs) {
    const ProjectionHandle system(proj_create(context, crs.c_str()));
    const auto type = system ? proj_get_type(system.get()) : PJ_TYPE_UNKNOWN;
    return type == PJ_TYPE_GEOGRAPHIC_2D_CRS || type == PJ_TYPE_GEOGRAPHIC_3D_CRS;
}

// WGS 84 (NIMA TR8350.2): semi-major axis in metres, and flattening.
constexpr double wgs84_radius = 6378137.0;
constexpr double wgs84_flattening = 1 / 298.257223563;

}  // namespace

struct ToEarth::Projection {
    Context context = quiet_context();
    ProjectionHandle projection{};
    bool degrees = false;
};

ToEarth::ToEarth(const std::string& crs) : projection_(std::make_unique<Projection>()) {
    projection_->projection = to_wgs84(projection_->context.get(), crs);
    projection_->degrees = is_geographic(projection_->context.get(), crs);
}
ToEarth::~ToEarth() = default;
ToEarth::ToEarth(ToEarth&&) noexcept = default;
ToEarth& ToEarth::operator=(ToEarth&&) noexcept = default;

std::optional<LonLat> ToEarth::operator()(const MapPoint& point) const {
    if (!projection_->projection || !std::isfinite(point.x) || !std::isfinite(point.y)) {
        return std::nullopt;
    }
    const PJ_COORD there =
        proj_trans(projection_->projection.get(), PJ_FWD, proj_coord(point.x, point.y, 0, HUGE_VAL));
    const bool on_earth = std::isfinite(there.xy.x) && std::isfinite(there.xy.y) &&
                          std::abs(there.xy.x) <= 180 && std::abs(there.xy.y) <= 90;
    return on_earth ? std::optional{LonLat{there.xy.x, there.xy.y}} : std::nullopt;
}

std::optional<MapPoint> ToEarth::back(const LonLat& place) const {
    if (!projection_->projection) {
        return std::nullopt;
    }
    const PJ_COORD there =
        proj_trans(projection_->projection.get(), PJ_INV, proj_coord(place.lon, place.lat, 0, HUGE_VAL));
    const bool on_map = std::isfinite(there.xy.x) && std::isfinite(there.xy.y);
    return on_map ? std::optional{MapPoint{there.xy.x, there.xy.y, {}}} : std::nullopt;
}

bool ToEarth::is_known() const {
    return projection_->projection != nullptr;
}

bool ToEarth::from_degrees() const {
    return projection_->degrees;
}

std::optional<OwnPosition> own_position(const LonLat& place, const std::string& crs) {
    const ToEarth to_earth(crs);
    const auto at = to_earth.back(place);
    if (!at) {
        return std::nullopt;
    }
    return OwnPosition{*at, to_earth.from_degrees() ? std::cos(radians(place.lat)) : 1.0};
}

std::string coordinates_text(const MapPoint& point) {
    return fmt::format("{} {}", point.x, point.y);
}

bool EarthBox::holds(const LonLat& place, double margin_deg) const {
    const double low = west - margin_deg;
    const double high = east + margin_deg;
    const bool between =
        west <= east ? place.lon >= low && place.lon <= high : place.lon >= low || place.lon <= high;
    return between && place.lat >= south - margin_deg && place.lat <= north + margin_deg;
}

std::optional<EarthBox> area_of_use(const std::string& crs) {
    const auto context = quiet_context();
    const ProjectionHandle system(proj_create(context.get(), crs.c_str()));
    EarthBox box;
    const bool known = system && proj_get_area_of_use(context.get(), system.get(), &box.west, &box.south,
                                                      &box.east, &box.north, nullptr) != 0;
    constexpr double unknown = -1000;  // PROJ's word for it
    return known && box.west > unknown ? std::optional{box} : std::nullopt;
}

std::optional<double> parse_coordinate(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    const auto last = text.find_last_not_of(" \t");
    if (first == std::string_view::npos) {
        return std::nullopt;
    }
    text = text.substr(first, last - first + 1);
    text.remove_prefix(text.front() == '+' ? 1 : 0);
    double value = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool whole = trouble == std::errc{} && end == text.data() + text.size();
    return whole && std::isfinite(value) ? std::optional{value} : std::nullopt;
}

std::optional<LonLat> parse_lat_lon(std::string_view text) {
    const auto comma = text.find(',');
    if (comma == std::string_view::npos) {
        return std::nullopt;
    }
    const auto lat = parse_coordinate(text.substr(0, comma));
    const auto lon = parse_coordinate(text.substr(comma + 1));
    const bool on_earth = lat && lon && std::abs(*lat) <= 90 && std::abs(*lon) <= 180;
    return on_earth ? std::optional{LonLat{*lon, *lat}} : std::nullopt;
}

WayTo way_between(const LonLat& from, const LonLat& to) {
    geod_geodesic earth{};
    geod_init(&earth, wgs84_radius, wgs84_flattening);
    double metres = 0;
    double bearing = 0;
    geod_inverse(&earth, from.lat, from.lon, to.lat, to.lon, &metres, &bearing, nullptr);
    // Nowhere to go has no direction: north, whatever side of it the rounding fell on.
    bearing = metres > 0 ? std::fmod(bearing + 360.0, 360.0) : 0.0;
    return {Metres{metres}, bearing};
}

Sentence compass_words(double bearing_deg) {
    static const std::array<Sentence, 8> words{say("north"),      say("north-east"), say("east"),
                                               say("south-east"), say("south"),      say("south-west"),
                                               say("west"),       say("north-west")};
    // A whole turn, and less than half an eighth to it, is north again.
    const auto eighth = static_cast<std::size_t>(std::lround(bearing_deg / 45.0));
    return words[eighth % words.size()];
}

}  // namespace pipward::place
