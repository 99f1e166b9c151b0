// SPDX-License-Identifier: MIT
#include "pipward/place/row_layout.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace pipward::place {
namespace {

constexpr double a_centimetre = 0.01;

RowCourse course_in(const std::string& crs, const std::vector<MapPoint>& points) {
    return {"1", to_ground(points, ToEarth(crs))};
}

LaidRow laid(const RowCourse& course, const RowRule& rule) {
    Findings findings;
    auto row = lay_row(course, rule, findings);
    EXPECT_TRUE(findings.empty()) << (findings.empty() ? "" : to_text(findings[0]));
    return row.value_or(LaidRow{});
}

std::string complaint(const RowCourse& course, const RowRule& rule) {
    Findings findings;
    EXPECT_FALSE(lay_row(course, rule, findings));
    return findings.empty() ? "" : findings[0].message.text();
}

/// Two points about `length` metres apart near Larkfold, in any system.
std::vector<MapPoint> row_points(const std::string& crs, double bearing, double length) {
    const LonLat start{9.301, 48.134};
    const ToEarth to_earth(crs);
    return {*to_earth.back(start), *to_earth.back(way_from(start, bearing, Metres{length}))};
}

const std::vector<std::string> systems{"EPSG:25832", "EPSG:25831", "EPSG:4326", "EPSG:4258",
                                       "EPSG:3857",  "EPSG:3035",  "EPSG:31467"};

TEST(LayRow, HasTrueSpacingOnTheGroundInEverySystem) {
    for (const auto& crs : systems) {
        for (const double bearing : {0.0, 33.0, 90.0, 201.0}) {
            const auto points = row_points(crs, bearing, 300.004);
            const auto row = laid(course_in(crs, points), {Metres{1.25}});
            ASSERT_EQ(row.positions.size(), 241u) << crs << " " << bearing;
            // Measured on the map's own coordinates, as a field worker would check them: out and back.
            const ToEarth to_earth(crs);
            const auto first = *to_earth(*to_map(row.positions.front(), to_earth));
            for (std::size_t i = 0; i < row.positions.size(); ++i) {
                const auto there = *to_earth(*to_map(row.positions[i], to_earth));
                EXPECT_NEAR(way_between(first, there).distance.value, 1.25 * static_cast<double>(i),
                            a_centimetre)
                    << crs << " " << bearing;
            }
        }
    }
}

TEST(LayRow, CorrectsForTheMapsScale) {
    // On the web's Mercator map at 48 degrees a metre of the ground is about one and a half of the map.
    const auto points = row_points("EPSG:3857", 90, 30);
    const auto row = laid(course_in("EPSG:3857", points), {Metres{3}});
    const ToEarth to_earth("EPSG:3857");
    const auto a = *to_map(row.positions[0], to_earth);
    const auto b = *to_map(row.positions[1], to_earth);
    EXPECT_NEAR(std::hypot(b.x - a.x, b.y - a.y), 3 / std::cos(48.134 * M_PI / 180), 0.02);
}

TEST(LayRow, CountsAPositionAtTheVeryEnd) {
    EXPECT_EQ(laid(course_in("EPSG:25832", row_points("EPSG:25832", 70, 30)), {Metres{3}}).positions.size(),
              11u);
    EXPECT_EQ(laid(course_in("EPSG:25832", row_points("EPSG:25832", 70, 29.9)), {Metres{3}}).positions.size(),
              10u);
}

TEST(LayRow, KeepsTheHeadlandFreeAtBothEnds) {
    const auto course = course_in("EPSG:25832", row_points("EPSG:25832", 70, 40));
    const auto row = laid(course, {Metres{3}, 1, Metres{6}});
    EXPECT_EQ(row.positions.size(), 10u);
    EXPECT_NEAR(way_between(course.points[0].at, row.positions[0].at).distance.value, 6, 1e-4);
    EXPECT_NEAR(row.length.value, 27, 1e-9);
}

TEST(LayRow, DrawsALineFromTheFirstPositionToTheLastSoThatItGivesThePositionsAgain) {
    const ToEarth to_earth("EPSG:25832");
    for (const int count : {1, 2, 7}) {
        auto course = course_in("EPSG:25832", row_points("EPSG:25832", 70, 40));
        course.from_the_end = count == 7;
        const auto row = laid(course, {Metres{3}, 5, Metres{2}, count});
        TreeRow record;
        record.spacing = Metres{3};
        for (const auto& corner : row.course) {
            record.line.push_back(*to_map(corner, to_earth));
        }
        const auto again = positions_on(record, to_earth);
        ASSERT_EQ(again.size(), static_cast<std::size_t>(count));
        for (std::size_t i = 0; i < again.size(); ++i) {
            EXPECT_LT(way_between(again[i].at, row.positions[i].at).distance.value, 1e-3);
        }
    }
}

TEST(LayRow, FollowsABentRowWithItsSpacingAlongTheCourse) {
    const LonLat start{9.301, 48.134};
    const auto corner = way_from(start, 74, Metres{50});
    const auto end = way_from(corner, 80, Metres{50});
    const auto row = laid({"1", {{start}, {corner}, {end}}}, {Metres{2.5}});
    ASSERT_EQ(row.positions.size(), 41u);
    EXPECT_LT(way_between(row.positions[20].at, corner).distance.value, 1e-4);
    EXPECT_EQ(row.course.size(), 3u);
}

TEST(LayRow, KeepsHeightsAndMeasuresTheSlopeBetweenThem) {
    const LonLat start{9.301, 48.134};
    const auto end = way_from(start, 0, Metres{100});
    const auto row = laid({"1", {{start, Metres{400}}, {end, Metres{420}}}}, {Metres{2}});
    EXPECT_EQ(row.positions.size(), 51u);  // 101.99 m along the slope
    ASSERT_TRUE(row.positions[1].height);
    EXPECT_NEAR(row.positions[1].height->value, 400.392, 0.001);
}

TEST(LayRow, SaysWhatIsWrongWithACourse) {
    const LonLat start{9.301, 48.134};
    const auto end = way_from(start, 74, Metres{50});
    const auto back = way_from(start, 74, Metres{20});
    EXPECT_EQ(complaint({"1", {{start}, {start}}}, {Metres{2}}), "The row has no length.");
    EXPECT_EQ(complaint({"1", {{start}}}, {Metres{2}}), "The row has no length.");
    EXPECT_EQ(complaint({"1", {}}, {Metres{2}}), "The row has no length.");
    EXPECT_NE(complaint({"1", {{start}, {end}, {back}}}, {Metres{2}}).find("turns back"), std::string::npos);
    EXPECT_NE(complaint({"1", {{start}, {end}}}, {Metres{2}, 1, Metres{30}}).find("room for 0"),
              std::string::npos);
    EXPECT_NE(complaint({"1", {{start}, {end}}}, {Metres{2}, 1, {}, 27}).find("room for 26"),
              std::string::npos);
    EXPECT_NE(complaint({"1", {{start}, {{20, 60}}}}, {Metres{1}}).find("would have"), std::string::npos);
}

TEST(BlockCourses, LieAtTheirDistanceOnTheWantedSideAndAlternate) {
    const LonLat start{9.301, 48.134};
    const RowCourse base{"R09", {{start}, {way_from(start, 74, Metres{90})}}};
    const auto courses = block_courses(base, {4, Metres{3.5}, Side::left, true});
    ASSERT_EQ(courses.size(), 4u);
    EXPECT_EQ(courses[1].name, "R10");
    for (std::size_t row = 0; row < courses.size(); ++row) {
        const auto way = way_between(start, courses[row].points[0].at);
        EXPECT_NEAR(way.distance.value, 3.5 * static_cast<double>(row), 1e-4);
        EXPECT_EQ(courses[row].from_the_end, row % 2 == 1);
        if (row > 0) {
            EXPECT_NEAR(way.bearing_deg, 344, 1e-3);
        }
    }
}

TEST(BlockCourses, NumberedFromTheOtherEndStillStandInSquare) {
    const LonLat start{9.301, 48.134};
    const RowCourse base{"1", {{start}, {way_from(start, 74, Metres{91})}}};
    const auto courses = block_courses(base, {2, Metres{4}, Side::right, true});
    const auto one = laid(courses[0], {Metres{3}});
    const auto two = laid(courses[1], {Metres{3}});
    ASSERT_EQ(one.positions.size(), two.positions.size());
    EXPECT_NEAR(way_between(one.positions.back().at, two.positions.front().at).distance.value, 4, 1e-4);
    EXPECT_NEAR(std::abs(one.bearing_deg - two.bearing_deg), 180, 0.01);
}

TEST(NextName, CountsOn) {
    EXPECT_EQ(next_name("9"), "10");
    EXPECT_EQ(next_name("R09"), "R10");
    EXPECT_EQ(next_name("B99"), "B100");
    EXPECT_EQ(next_name("A"), "B");
    EXPECT_FALSE(next_name("Z"));
    EXPECT_FALSE(next_name("gate"));
    EXPECT_FALSE(next_name(""));
}

}  // namespace
}  // namespace pipward::place
