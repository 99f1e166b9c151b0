// SPDX-License-Identifier: MIT
#include "pipward/place/transformation.h"

#include <gtest/gtest.h>

#include <array>

#include "pipward/place/whereabouts_check.h"
#include "testing.h"

namespace pipward::place {
namespace {

TEST(Transformation, AgreesWithPublishedPoints) {
    for (const auto& row : testing::oracle_rows("place-transformations.txt")) {
        const std::array from{MapPoint{std::stod(row[2]), std::stod(row[3]), Metres{7}}};
        const Transformation transformation(row[0], row[1], from);
        const auto there = transformation(from[0]);
        ASSERT_TRUE(there) << row[0];
        EXPECT_NEAR(there->x, std::stod(row[4]), std::stod(row[6])) << row[0];
        EXPECT_NEAR(there->y, std::stod(row[5]), std::stod(row[6])) << row[0];
        EXPECT_EQ(there->height->value, 7) << "a height is kept as it is";
    }
}

TEST(Transformation, TellsItsPublishedAccuracy) {
    const std::array alice{MapPoint{386352, 7381850, {}}};
    const auto facts = Transformation("EPSG:28353", "EPSG:7853", alice).facts();
    ASSERT_TRUE(facts.accuracy);
    EXPECT_DOUBLE_EQ(facts.accuracy->value, 0.01) << "EPSG:8048";
    EXPECT_FALSE(facts.ballpark);
    EXPECT_NE(facts.name.find("GDA94 to GDA2020 (1)"), std::string::npos) << facts.name;
}

TEST(Transformation, OfOneSystemIntoItselfIsExactAndHasNoName) {
    const std::array point{MapPoint{522400, 5331200, {}}};
    const Transformation transformation("EPSG:25832", "EPSG:25832", point);
    EXPECT_TRUE(transformation.is_possible());
    EXPECT_TRUE(transformation.facts().name.empty());
    EXPECT_EQ(transformation.facts().accuracy->value, 0);
    EXPECT_EQ(transformation(point[0])->x, 522400);
}

TEST(Transformation, SaysWhereTheDatumsAreLeftOut) {
    // Nobody has published how this ellipsoid lies on the earth.
    const std::string unplaced =
        "GEOGCS[\"Somewhere\",DATUM[\"Nobody's\",SPHEROID[\"Bessel 1841\",6377397.155,299.1528128]],"
        "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]]";
    const std::array point{MapPoint{9.3, 48.1, {}}};
    const Transformation transformation(unplaced, "EPSG:25832", point);
    ASSERT_TRUE(transformation.is_possible());
    EXPECT_TRUE(transformation.facts().ballpark);
}

TEST(Transformation, IsNotPossibleFromASystemThatIsNotKnown) {
    const std::array point{MapPoint{1, 2, {}}};
    const Transformation transformation("EPSG:99999999", "EPSG:25832", point);
    EXPECT_FALSE(transformation.is_possible());
    EXPECT_FALSE(transformation(point[0]));
}

TEST(SystemName, IsForPeople) {
    EXPECT_EQ(system_name("EPSG:25832"), "ETRS89 / UTM zone 32N (EPSG:25832)");
    EXPECT_EQ(system_name("no system"), "");
    EXPECT_TRUE(has_ellipsoidal_heights("EPSG:4979"));
    EXPECT_FALSE(has_ellipsoidal_heights("EPSG:25832"));
}

TEST(PlaceJudge, TellsExchangedNumbersFromMereDistance) {
    const std::array known{LonLat{9.30, 48.13}};
    const PlaceJudge judge("EPSG:4326", known);
    EXPECT_EQ(judge({9.31, 48.14, {}}), PlaceDoubt::none);
    EXPECT_EQ(judge({48.14, 9.31, {}}), PlaceDoubt::exchanged);
    EXPECT_EQ(judge({20, 40, {}}), PlaceDoubt::far);
    EXPECT_EQ(judge({9.31, 148, {}}), PlaceDoubt::nowhere);
    EXPECT_GT(judge.away({20, 40, {}})->value, 1e6);
    const PlaceJudge metric("EPSG:25832", known);
    EXPECT_EQ(metric({9.31, 48.14, {}}), PlaceDoubt::degrees);
}

}  // namespace
}  // namespace pipward::place
