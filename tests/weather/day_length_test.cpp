// SPDX-License-Identifier: MIT
#include "pipward/weather/day_length.h"
#include "days.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "testing.h"

namespace pipward::weather {
namespace {

using testing::oracle_rows;

using testing::day;

double hours_from(const std::string& clock) {
    const auto colon = clock.find(':');
    double hours = std::stod(clock.substr(0, colon)) + std::stod(clock.substr(colon + 1)) / 60;
    if (const auto second = clock.find(':', colon + 1); second != std::string::npos) {
        hours += std::stod(clock.substr(second + 1)) / 3600;
    }
    return hours;
}

double day_length(Day on, double latitude) {
    return sun_times(on, Latitude{latitude}).day_length();
}

TEST(DayLength, Fao56ExampleComesOutToTheLastPrintedDigit) {
    for (const auto& row : oracle_rows("weather-fao56.txt")) {
        const Latitude latitude{std::stod(row[0])};
        const int of_year = std::stoi(row[1]);
        EXPECT_NEAR(fao56_declination(of_year), std::stod(row[2]), 0.5e-3);
        EXPECT_NEAR(fao56_sunset_angle(of_year, latitude), std::stod(row[3]), 0.5e-3);
        EXPECT_NEAR(fao56_day_length(of_year, latitude), std::stod(row[4]), 0.05);
        EXPECT_NEAR(fao56_day_length(of_year, latitude), std::stod(row[5]), 0.5e-5);
    }
}

TEST(DayLength, SeptemberAtDecorahIsWithinTwoMinutesInLeapYearsAndFourInAnyYear) {
    for (const auto& row : oracle_rows("weather-day-length-decorah.txt")) {
        for (int year = 2005; year <= 2024; ++year) {
            const Day on = day(year, std::stoi(row[0]), std::stoi(row[1]));
            const double minutes = year % 4 == 0 ? 2 : 4;
            EXPECT_NEAR(day_length(on, 43.30), hours_from(row[2]), minutes / 60) << to_iso(on);
        }
    }
}

TEST(DayLength, PublishedDaysAreWithinTheirTolerance) {
    for (const auto& row : oracle_rows("weather-day-length-published.txt")) {
        const double length = day_length(*parse_iso_day(row[2]), std::stod(row[1]));
        EXPECT_NEAR(length, hours_from(row[3]), std::stod(row[4]) / 60) << row[0] << " " << row[2];
    }
}

TEST(DayLength, ThreeAstronomicalLibrariesAgreeWithinHalfAMinute) {
    for (const auto& row : oracle_rows("weather-day-length-libraries.txt")) {
        const double length = day_length(*parse_iso_day(row[0]), std::stod(row[1]));
        for (std::size_t column = 2; column <= 4; ++column) {
            EXPECT_NEAR(length, std::stod(row[column]), 0.5 / 60) << row[0] << " " << row[1];
        }
    }
}

TEST(DayLength, RefractionAndTheSunsDiscAreCountedIn) {
    for (const auto& row : oracle_rows("weather-day-length-libraries.txt")) {
        EXPECT_GT(day_length(*parse_iso_day(row[0]), std::stod(row[1])) - std::stod(row[5]), 6.0 / 60)
            << row[0] << " " << row[1];
    }
}

TEST(DayLength, PolarSummerHasNoNightAndPolarWinterNoDay) {
    const SunTimes summer = sun_times(day(2024, 6, 21), Latitude{69.7});
    EXPECT_EQ(summer.sunrise, 0);
    EXPECT_EQ(summer.sunset, 24);
    const SunTimes winter = sun_times(day(2024, 12, 22), Latitude{69.7});
    EXPECT_EQ(winter.sunrise, 12);
    EXPECT_EQ(winter.sunset, 12);
    EXPECT_EQ(day_length(day(2024, 6, 21), 90), 24);
    EXPECT_EQ(day_length(day(2024, 6, 21), -90), 0);
    EXPECT_EQ(fao56_day_length(172, Latitude{75}), 24);
    EXPECT_EQ(fao56_day_length(355, Latitude{75}), 0);
}

TEST(DayLength, SunriseAndSunsetMirrorEachOtherAboutNoon) {
    for (double latitude = -65; latitude <= 65; latitude += 5) {
        for (Day on = day(2023, 1, 1); on < day(2024, 1, 1); on = on + 7) {
            const SunTimes sun = sun_times(on, Latitude{latitude});
            EXPECT_NEAR(sun.sunrise + sun.sunset, 24, 1e-12);
            EXPECT_GE(sun.sunset, sun.sunrise);
        }
    }
}

TEST(DayLength, SouthernDaysAreLongWhenNorthernOnesAreShort) {
    EXPECT_LT(day_length(day(2024, 12, 21), 47), 9);
    EXPECT_GT(day_length(day(2024, 12, 21), -47), 15);
}

TEST(DayLength, DeclinationTurnsAtTheTropics) {
    constexpr double tropic = 23.44 * std::numbers::pi / 180;
    EXPECT_NEAR(solar_declination(day(2024, 6, 20)), tropic, 2e-4);
    EXPECT_NEAR(solar_declination(day(2024, 12, 21)), -tropic, 2e-4);
    EXPECT_NEAR(solar_declination(day(2024, 9, 22)), 0, 2e-3);  // equinox 12:44 UT
}

}  // namespace
}  // namespace pipward::weather
