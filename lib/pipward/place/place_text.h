// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "pipward/place/earth.h"

/// Places on the earth and angles as people write them.
namespace pipward::place {

/// An angle in decimal degrees.
struct WrittenAngle {
    double degrees = 0;      ///< south and west, or a minus, make it negative
    char hemisphere = '\0';  ///< N, S, E or W where it is written; 0 where it is not
};

/// "48.134", "48,134", "-9.3°", "48° 8' 2.4\" N", "N 48° 8.04'", "48 08 02.4", "48:08:02.4S", with straight
/// or typographic signs; O and Ost are east, as in German. Minutes and seconds are 0 up to 60. Nothing for
/// anything else.
std::optional<WrittenAngle> parse_angle(std::string_view text);

/// A place with how surely it is known.
struct WrittenPlace {
    LonLat at;                       ///< WGS 84
    std::optional<Metres> accuracy;  ///< of a geo: URI's "u"
};

/// "geo:48.134,9.301;u=5" (RFC 5870; heights and other parameters are passed over), two angles with a comma,
/// a semicolon or blanks between, latitude first where no hemisphere says otherwise, and links to maps that
/// hold two decimal numbers with a comma or slash between. Nothing for anything else, or for what is not on
/// the earth.
std::optional<WrittenPlace> parse_place(std::string_view text);

}  // namespace pipward::place
