// SPDX-License-Identifier: MIT
#include "pipward/place/earth.h"

#include <gtest/gtest.h>

#include <cmath>

#include "pipward/place/geo_uri.h"
#include "pipward/place/own_position.h"
#include "testing.h"

namespace pipward::place {
namespace {

double turned(double azimuth) {
    return std::fmod(azimuth + 360.0, 360.0);
}

TEST(WayBetween, AgreesWithPublishedGeodesics) {
    for (const auto& row : testing::oracle_rows("place-geodesics.txt")) {
        const auto number = [&](std::size_t i) { return std::stod(row.at(i)); };
        const auto way = way_between({number(1), number(0)}, {number(3), number(2)});
        EXPECT_NEAR(way.distance.value, number(5), number(6));
        EXPECT_NEAR(way.bearing_deg, turned(number(4)), 1e-9);
    }
}

TEST(WayBetween, IsAsLongBackAndPointsTheOtherWayNearby) {
    const LonLat here{11.3, 48.13};
    const LonLat there{11.301, 48.131};
    const auto out = way_between(here, there);
    const auto back = way_between(there, here);
    EXPECT_NEAR(out.distance.value, back.distance.value, 1e-9);
    EXPECT_NEAR(turned(out.bearing_deg + 180), back.bearing_deg, 0.01);
}

TEST(WayBetween, OfAPlaceAndItselfIsNothingToTheNorth) {
    const auto way = way_between({11.3, 48.13}, {11.3, 48.13});
    EXPECT_EQ(way.distance.value, 0);
    EXPECT_EQ(way.bearing_deg, 0);
    EXPECT_GE(way_between({0, 0}, {-1e-9, 1}).bearing_deg, 0);
}

TEST(ToEarth, TakesTheCentralMeridianOfAZoneToItsLongitude) {
    // By definition of UTM: zone 32's central meridian is 9 degrees east, x = 500 000 m there.
    const ToEarth to_earth("EPSG:25832");
    const auto place = to_earth({500000, 0, {}});
    ASSERT_TRUE(place);
    EXPECT_NEAR(place->lon, 9.0, 1e-9);
    EXPECT_NEAR(place->lat, 0.0, 1e-9);
}

TEST(ToEarth, GoesThereAndBack) {
    for (const auto* crs : {"EPSG:25832", "EPSG:4326", "EPSG:4258", "EPSG:3857"}) {
        const ToEarth to_earth(crs);
        const LonLat place{11.2999, 48.1327};
        const auto point = to_earth.back(place);
        ASSERT_TRUE(point) << crs;
        const auto again = to_earth(*point);
        ASSERT_TRUE(again) << crs;
        EXPECT_NEAR(again->lon, place.lon, 1e-9) << crs;
        EXPECT_NEAR(again->lat, place.lat, 1e-9) << crs;
    }
}

TEST(ToEarth, CarriesNothingFromASystemThatIsNone) {
    for (const auto* crs : {"", "nonsense", "EPSG:0", R"(LOCAL_CS["field",UNIT["metre",1]])"}) {
        EXPECT_FALSE(ToEarth(crs)({1, 2, {}})) << crs;
        EXPECT_FALSE(own_position({11, 48}, crs)) << crs;
    }
    EXPECT_FALSE(ToEarth("EPSG:25832")({NAN, 2, {}}));
}

TEST(OwnPosition, ShrinksDegreesOfLongitudeOnly) {
    EXPECT_NEAR(own_position({11, 60}, "EPSG:4258")->x_shrink, 0.5, 1e-9);
    EXPECT_NEAR(own_position({11, 60}, "EPSG:4326")->x_shrink, 0.5, 1e-9);
    EXPECT_EQ(own_position({11, 60}, "EPSG:25832")->x_shrink, 1);
}

TEST(ParseLatLon, ReadsLatitudeFirst) {
    const auto place = parse_lat_lon(" 48.1327, +11.2999 ");
    ASSERT_TRUE(place);
    EXPECT_EQ(place->lat, 48.1327);
    EXPECT_EQ(place->lon, 11.2999);
    EXPECT_EQ(parse_lat_lon("-33.9,18.4")->lat, -33.9);
}

TEST(ParseLatLon, ReadsNothingElse) {
    for (const auto* text :
         {"", ",", "48.1", "48.1;11.2", "91,11", "48,181", "48,1,11,2", "nan,1", "a,b", "48.1,11.2x"}) {
        EXPECT_FALSE(parse_lat_lon(text)) << text;
    }
}

TEST(CompassWords, NameTheNearestOfEight) {
    EXPECT_EQ(compass_words(0), "north");
    EXPECT_EQ(compass_words(359), "north");
    EXPECT_EQ(compass_words(46), "north-east");
    EXPECT_EQ(compass_words(200), "south");
    EXPECT_EQ(compass_words(292), "west");
}

// The forms of RFC 5870, section 6, its examples' coordinates.
TEST(GeoUri, WritesLatitudeFirstAndTheUncertaintyAsU) {
    EXPECT_EQ(geo_uri({16.3695, 48.2010}), "geo:48.201,16.3695");
    EXPECT_EQ(geo_uri({30, 66}, Metres{6.5}), "geo:66,30;u=6.5");
    EXPECT_EQ(geo_uri({16.3695, 48.2010}, Metres{0.05}), "geo:48.201,16.3695;u=0.05");
}

TEST(GeoUri, HasNoExponentNoNegativeZeroAndOneNameForAPole) {
    EXPECT_EQ(geo_uri({-1e-12, 1e-12}), "geo:0,0");
    EXPECT_EQ(geo_uri({123.4, 90}), "geo:90,0");  // RFC 5870, section 3.4.4
    EXPECT_EQ(geo_uri({-118.44, -33.5}), "geo:-33.5,-118.44");
    EXPECT_EQ(geo_uri({100, 10}), "geo:10,100");
}

}  // namespace
}  // namespace pipward::place
