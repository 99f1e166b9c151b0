// SPDX-License-Identifier: MIT
// The hourly curve against hourly temperatures that it never saw: the 1981-2010 hourly normals of Seattle and
// San Francisco (NOAA), and the clock times of real extremes at Seattle-Tacoma airport.
#include <gtest/gtest.h>

#include <cmath>

#include "pipward/weather/day_length.h"
#include "pipward/weather/hours.h"
#include "weather/hourly_file.h"

namespace pipward::weather {
namespace {

using testing::extremes_by_day;
using testing::hour_readings;
using testing::HourReading;
using testing::shared_weather;

constexpr Latitude seattle{47.6};
constexpr double pacific_meridian = -120;
constexpr double seattle_longitude = -122.3;

struct Fit {
    double squares = 0;
    double winter_squares = 0;  ///< December to February
    int hours = 0;
    int winter_hours = 0;
    int cold_hours_true = 0;  ///< below 7.2 °C, October to March
    int cold_hours_ours = 0;

    double rmse() const { return std::sqrt(squares / hours); }
    double winter_rmse() const { return std::sqrt(winter_squares / winter_hours); }
};

void take(Fit& fit, const HourReading& reading, Celsius ours) {
    const double miss = (ours - reading.temperature).degrees;
    const int month = parts_of(reading.day).month;
    fit.squares += miss * miss;
    ++fit.hours;
    if (month == 12 || month <= 2) {
        fit.winter_squares += miss * miss;
        ++fit.winter_hours;
    }
    if (month >= 10 || month <= 3) {
        fit.cold_hours_true += reading.temperature.degrees < 7.2 ? 1 : 0;
        fit.cold_hours_ours += ours.degrees < 7.2 ? 1 : 0;
    }
}

Fit fit_of(const std::vector<HourReading>& readings, Latitude latitude, double longitude) {
    const auto days = extremes_by_day(readings);
    const auto of = [&](Day day, Day otherwise) {
        const auto found = days.find(day);
        return found == days.end() ? days.at(otherwise) : found->second;
    };
    Fit fit;
    for (const HourReading& reading : readings) {
        const SunTimes sun = sun_times(reading.day, latitude);
        const double solar_hour = reading.hour + (longitude - pacific_meridian) / 15;
        // The hour before solar midnight of the zone belongs to the day before.
        const Day day = solar_hour < 0 ? reading.day - 1 : reading.day;
        if (!days.contains(day)) {
            continue;
        }
        take(fit, reading,
             temperature_at(solar_hour < 0 ? solar_hour + 24 : solar_hour,
                            {of(day - 1, day), of(day, day), of(day + 1, day)}, sun));
    }
    return fit;
}

TEST(HourlyCalibration, SeattleNormalsAreWithinOneDegreeAndWinterWithinHalf) {
    const auto text = shared_weather("seattle-weather-hourly-normals.csv");
    if (!text) {
        GTEST_SKIP() << "The shared hourly normals of Seattle are not here.";
    }
    const auto readings = hour_readings(*text, 0, 2, false);
    ASSERT_EQ(readings.size(), 8759u);
    const Fit fit = fit_of(readings, seattle, seattle_longitude);
    EXPECT_LE(fit.rmse(), 1.0);
    EXPECT_LE(fit.winter_rmse(), 0.5);
    EXPECT_NEAR(fit.cold_hours_ours, fit.cold_hours_true, 0.08 * fit.cold_hours_true);
}

TEST(HourlyCalibration, SanFranciscoNormalsWithTheirMissingSpringHourAreWithinOneDegree) {
    const auto text = shared_weather("sf-temps.csv");
    if (!text) {
        GTEST_SKIP() << "The shared hourly normals of San Francisco are not here.";
    }
    const auto readings = hour_readings(*text, 1, 0, true);
    ASSERT_EQ(readings.size(), 8759u);  // 365 x 24 less the hour that the clock jumps over
    EXPECT_EQ(extremes_by_day(readings).size(), 365u);
    const Fit fit = fit_of(readings, Latitude{37.6}, -122.4);
    EXPECT_LE(fit.rmse(), 1.0);
}

TEST(HourlyCalibration, SeattleInFahrenheitTellsTheSameAsInCelsius) {
    const auto celsius = shared_weather("seattle-weather-hourly-normals.csv");
    const auto fahrenheit = shared_weather("seattle-temps.csv");
    if (!celsius || !fahrenheit) {
        GTEST_SKIP() << "The shared hourly normals of Seattle are not here.";
    }
    const Fit a = fit_of(hour_readings(*celsius, 0, 2, false), seattle, seattle_longitude);
    const Fit b = fit_of(hour_readings(*fahrenheit, 0, 1, true), seattle, seattle_longitude);
    EXPECT_NEAR(a.rmse(), b.rmse(), 0.02);
}

double median(std::vector<double> values) {
    std::ranges::sort(values);
    return values[values.size() / 2];
}

double clock_hours(const std::string& hhmm) {
    const int digits = std::stoi(hhmm);
    return digits / 100 + (digits % 100) / 60.0;
}

/// The clock time at which our curve has its maximum on a day of constant weather.
double our_time_of_maximum(Day day) {
    const SunTimes sun = sun_times(day, seattle);
    const DayExtremes same{Celsius{2}, Celsius{9}};
    double best = 0;
    for (double hour = 0; hour < 24; hour += 0.01) {
        if (temperature_at(hour, {same, same, same}, sun) > temperature_at(best, {same, same, same}, sun)) {
            best = hour;
        }
    }
    return best - (seattle_longitude - pacific_meridian) / 15;
}

TEST(HourlyCalibration, RealExtremesFallWhereTheCurveHasThem) {
    const auto text = shared_weather("seatac-2007q1-with-times-degF.csv");
    if (!text) {
        GTEST_SKIP() << "The shared record of the times of extremes is not here.";
    }
    std::vector<double> of_maximum;
    std::vector<double> of_minimum;
    std::istringstream lines(*text);
    std::string line;
    std::getline(lines, line);
    while (std::getline(lines, line)) {
        const auto cells = testing::split(line, ',');
        if (cells.size() == 5 && cells[3] != "NA" && cells[4] != "NA") {
            of_minimum.push_back(clock_hours(cells[3]));
            of_maximum.push_back(clock_hours(cells[4]));
        }
    }
    ASSERT_GE(of_maximum.size(), 80u);
    const Day middle = *make_day({2007, 2, 14});
    EXPECT_NEAR(median(of_maximum), our_time_of_maximum(middle), 1.0);
    EXPECT_NEAR(median(of_minimum), sun_times(middle, seattle).sunrise + 0.15, 1.0);
}

}  // namespace
}  // namespace pipward::weather
