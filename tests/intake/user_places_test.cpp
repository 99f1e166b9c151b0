// SPDX-License-Identifier: MIT
#include "pipward/intake/user_places.h"

#include <gtest/gtest.h>

namespace pipward::intake {
namespace {

const std::vector<place::LonLat> near_larkfold{{9.301, 48.134}};

TEST(ReadPlaces, BringsPointsOfTheBooksSystemToTheGround) {
    Findings findings;
    const auto layer =
        read_places({"522400 5331200, 522440 5331200", {}, "", ""}, "EPSG:25832", near_larkfold, findings);
    ASSERT_EQ(layer.features.size(), 1U);
    EXPECT_TRUE(layer.features[0].is_line);
    ASSERT_EQ(layer.features[0].points.size(), 2U);
    EXPECT_NEAR(layer.features[0].points[0].at.lat, 48.134, 0.01);
    EXPECT_TRUE(findings.empty());
}

TEST(ReadPlaces, TakesASystemOfItsOwn) {
    Findings findings;
    const auto layer = read_places({"9.301 48.134, 9.302 48.134", {}, "", "EPSG:4326"}, "EPSG:25832",
                                   near_larkfold, findings);
    EXPECT_NEAR(layer.features.at(0).points.at(0).at.lon, 9.301, 1e-9);
}

TEST(ReadPlaces, RefusesPointsAndAFileAtOnce) {
    Findings findings;
    EXPECT_THROW((void)read_places({"1 2, 3 4", "rows.csv", "", ""}, "EPSG:25832", near_larkfold, findings),
                 Error);
}

TEST(ReadPlaces, RefusesASystemThatNobodyKnows) {
    Findings findings;
    try {
        (void)read_places({"1 2, 3 4", {}, "", "EPSG:1"}, "EPSG:25832", near_larkfold, findings);
        FAIL();
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::usage);
        EXPECT_EQ(error.findings()[0].field, "layer-crs");
    }
}

TEST(ReadPlaces, RefusesDegreesInASystemOfMetres) {
    Findings findings;
    EXPECT_THROW(
        (void)read_places({"9.301 48.134, 9.302 48.134", {}, "", ""}, "EPSG:25832", near_larkfold, findings),
        Error);
}

}  // namespace
}  // namespace pipward::intake
