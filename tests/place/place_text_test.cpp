// SPDX-License-Identifier: MIT
#include "pipward/place/place_text.h"

#include <gtest/gtest.h>

#include <string>

namespace pipward::place {
namespace {

double degrees(const std::string& text) {
    const auto angle = parse_angle(text);
    return angle ? angle->degrees : -999;
}

TEST(PlaceText, ReadsAnglesAsPeopleWriteThem) {
    // 48 degrees 8 minutes 2.4 seconds are 48.134 degrees.
    for (const auto* text :
         {"48.134", "48,134", "+48.134", "48.134°", "48.134 N", "N 48.134", "48°8'2.4\"N", "48° 08′ 02.4″ N",
          "48 08 02.4", "48:08:02.4N", "48° 8.04' N", "48º8'2,4''N", "N48°8.04'"}) {
        EXPECT_NEAR(degrees(text), 48.134, 1e-9) << text;
    }
    EXPECT_NEAR(degrees("9° 18' 3.6\" O"), 9.301, 1e-9);
    EXPECT_NEAR(degrees("9.301 West"), -9.301, 1e-9);
    EXPECT_NEAR(degrees("-33.5"), -33.5, 1e-9);
    EXPECT_EQ(parse_angle("9.3 E")->hemisphere, 'E');
    for (const auto* text :
         {"", "N", "48 60 0", "48.5 30", "48 8 2 1", "-48 S", "abc", "48x", "4 8.1.2", "48'", "1e5", "nan"}) {
        EXPECT_FALSE(parse_angle(text)) << text;
    }
}

TEST(PlaceText, ReadsPlaces) {
    for (const auto* text :
         {"48.134,9.301", "48.134 9.301", "48.134; 9.301", "48,134; 9,301", "48,134 9,301", "N48.134 E9.301",
          "9.301E, 48.134N", "48.134° N, 9.301° O", "48°8'2.4\"N 9°18'3.6\"E", "48°8'2.4\"N9°18'3.6\"E",
          "geo:48.134,9.301", "GEO:48.134,9.301,540;u=5", "https://example.org/map?q=48.134,9.301&z=18",
          "https://example.org/#map=19/48.134/9.301", "https://example.org/@48.134,9.301,17z"}) {
        const auto place = parse_place(text);
        ASSERT_TRUE(place) << text;
        EXPECT_NEAR(place->at.lat, 48.134, 1e-9) << text;
        EXPECT_NEAR(place->at.lon, 9.301, 1e-9) << text;
    }
    // RFC 5870, section 6.1 and 6.3.
    EXPECT_NEAR(parse_place("geo:13.4125,103.8667")->at.lon, 103.8667, 1e-9);
    EXPECT_EQ(parse_place("geo:48.198634,16.371648;crs=wgs84;u=40")->accuracy, Metres{40});
    for (const auto* text : {"", "geo:", "geo:91,0", "geo:a,b", "100,200", "N 48 N 9", "Upper 3 12",
                             "row 3, tree 12", "UP-03-12", "https://example.org/"}) {
        EXPECT_FALSE(parse_place(text)) << text;
    }
}

}  // namespace
}  // namespace pipward::place
