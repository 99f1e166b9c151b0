// SPDX-License-Identifier: MIT
#include "pipward/place/geo_uri.h"

#include <fmt/format.h>

namespace pipward::place {
namespace {

// The URI's numbers have digits and a point only: no exponent, no "-0".
std::string decimal(double number, int decimals) {
    auto text = fmt::format("{:.{}f}", number, decimals);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') {
        text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

}  // namespace

std::string geo_uri(const LonLat& place, const std::optional<Metres>& accuracy) {
    // Every meridian meets at a pole; the RFC writes 0 for them all.
    const double lon = place.lat == 90 || place.lat == -90 ? 0 : place.lon;
    auto uri = fmt::format("geo:{},{}", decimal(place.lat, 7), decimal(lon, 7));
    if (accuracy && accuracy->value >= 0) {
        uri += ";u=" + decimal(accuracy->value, 3);
    }
    return uri;
}

}  // namespace pipward::place
