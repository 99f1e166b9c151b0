// SPDX-License-Identifier: MIT
// Real weather files as their keepers publish them: units, column orders and gaps nobody arranged for us.
#include <gtest/gtest.h>

#include <algorithm>

#include "pipward/intake/weather_file.h"
#include "pipward/weather/daily_series.h"
#include "pipward/weather/gaps.h"
#include "weather/hourly_file.h"

namespace pipward::intake {
namespace {

using testing::shared_weather;

WeatherFileOptions from(const std::string& file) {
    WeatherFileOptions options;
    options.file = file;
    options.station = "Test";
    return options;
}

const WeatherDay& on(const WeatherImport& import, const std::string& iso) {
    const auto found = std::ranges::find(import.days, *parse_iso_day(iso), &WeatherDay::day);
    if (found == import.days.end()) {
        throw std::runtime_error("no day " + iso);
    }
    return *found;
}

bool says(const WeatherImport& import, const std::string& words) {
    return import.understood.text().find(words) != std::string::npos;
}

#define READ_OR_SKIP(text, name)                                       \
    const auto text = shared_weather(name);                            \
    if (!text) {                                                       \
        GTEST_SKIP() << "The shared file " << name << " is not here."; \
    }

TEST(ImportRealFiles, SeattleInCelsiusWithTheMaximumFirst) {
    READ_OR_SKIP(text, "seattle-weather.csv");
    const auto import = import_csv(*text, from("seattle-weather.csv"));
    ASSERT_EQ(import.days.size(), 1461u);
    EXPECT_TRUE(import.findings.empty());
    EXPECT_TRUE(says(import, "Unit: degrees Celsius")) << import.understood.text();
    EXPECT_EQ(on(import, "2012-01-01").t_min.degrees, 5.0);
    EXPECT_EQ(on(import, "2012-01-01").t_max.degrees, 12.8);
    // Degree-days above 10 by the daily mean, the same sums by two other programs (awk, Python), looked up in
    // notes.
    const std::vector<std::pair<int, double>> sums{
        {2012, 1133.4}, {2013, 1369.2}, {2014, 1490.2}, {2015, 1541.1}};
    for (const auto& [year, expected] : sums) {
        double sum = 0;
        for (const WeatherDay& day : import.days) {
            const double above = (day.t_min.degrees + day.t_max.degrees) / 2 - 10;
            sum += parts_of(day.day).year == year ? std::max(0.0, above) : 0.0;
        }
        EXPECT_NEAR(sum, expected, 0.05) << year;
    }
}

TEST(ImportRealFiles, TwoCitiesInOneFileArePickedApart) {
    READ_OR_SKIP(text, "weather.csv");
    const auto both = import_csv(*text, from("weather.csv"));
    EXPECT_TRUE(both.days.empty());
    ASSERT_EQ(both.findings.size(), 1u);
    EXPECT_EQ(both.findings[0].field, "station_in_file");
    EXPECT_NE(both.findings[0].remedy.text().find("New York; Seattle"), std::string::npos);
    WeatherFileOptions options = from("weather.csv");
    options.station_in_file = "New York";
    const auto one = import_csv(*text, options);
    EXPECT_EQ(one.days.size(), 1461u);
    EXPECT_TRUE(says(one, "Station in the file: New York."));
}

TEST(ImportRealFiles, ChicagoWithoutAUnitIsPlainlyFahrenheit) {
    READ_OR_SKIP(text, "chicago-daily-2001-2016-degF.csv");
    const auto import = import_csv(*text, from("chicago-daily-2001-2016-degF.csv"));
    EXPECT_EQ(import.days.size(), 5698u);
    EXPECT_TRUE(says(import, "Unit: degrees Fahrenheit, as 1 day in 20")) << import.understood.text();
    EXPECT_NEAR(on(import, "2001-01-23").t_min.degrees, -3.889, 0.001);
    EXPECT_NEAR(on(import, "2001-01-23").t_max.degrees, 2.222, 0.001);
}

TEST(ImportRealFiles, LincolnsHeadersNameFahrenheit) {
    READ_OR_SKIP(text, "lincoln-ne-daily-2016-degF.csv");
    const auto import = import_csv(*text, from("lincoln-ne-daily-2016-degF.csv"));
    EXPECT_EQ(import.days.size(), 366u);
    EXPECT_TRUE(says(import, "degrees Fahrenheit, as the header says"));
    EXPECT_NEAR(on(import, "2016-01-01").t_min.degrees, -11.667, 0.001);
}

TEST(ImportRealFiles, MoffettHasHighBeforeLow) {
    READ_OR_SKIP(text, "moffett-field-2007-temperatures.csv");
    const auto import = import_csv(*text, from("moffett-field-2007-temperatures.csv"));
    EXPECT_EQ(import.days.size(), 365u);
    EXPECT_TRUE(says(import, "minimum from \"Low\", maximum from \"High\""));
    EXPECT_NEAR(on(import, "2007-01-01").t_min.degrees, 3.889, 0.001);
    EXPECT_NEAR(on(import, "2007-01-01").t_max.degrees, 16.667, 0.001);
}

TEST(ImportRealFiles, SeatacWithItsTimesOfExtremesIsStillDaily) {
    READ_OR_SKIP(text, "seatac-2007q1-with-times-degF.csv");
    const auto import = import_csv(*text, from("seatac-2007q1-with-times-degF.csv"));
    EXPECT_FALSE(has_errors(import.findings));
    EXPECT_GE(import.days.size(), 89u);
    EXPECT_NEAR(on(import, "2007-01-01").t_max.degrees, 6.111, 0.001);
}

/// The same record with its days as the package has them: year, month and day in columns of their own.
std::string with_three_day_columns(const std::string& text) {
    std::istringstream lines(text);
    std::string result = "year,month,day,tmin,tmax\n";
    std::string line;
    std::getline(lines, line);
    while (std::getline(lines, line)) {
        const auto cells = testing::split(line, ',');
        result += cells[0].substr(0, 4) + ',' + std::to_string(std::stoi(cells[0].substr(5, 2))) + ',' +
                  std::to_string(std::stoi(cells[0].substr(8, 2))) + ',' + cells[1] + ',' + cells[2] + '\n';
    }
    return result;
}

TEST(ImportRealFiles, BadajozReadsAlikeWithOneDayColumnOrThree) {
    READ_OR_SKIP(text, "badajoz-daily-1955-2015.csv");
    const auto one = import_csv(*text, from("badajoz"));
    const auto three = import_csv(with_three_day_columns(*text), from("badajoz"));
    ASSERT_EQ(one.days.size(), 21908u);
    ASSERT_EQ(three.days.size(), one.days.size());
    EXPECT_TRUE(says(three, "day from \"year\", \"month\" and \"day\""));
    for (std::size_t i = 0; i < one.days.size(); ++i) {
        ASSERT_EQ(one.days[i].day, three.days[i].day);
        ASSERT_EQ(one.days[i].t_max, three.days[i].t_max);
    }
    const auto gaps = weather::fill_gaps(weather::daily_series(one.days, "Test")).gaps;
    EXPECT_EQ(std::ranges::count(gaps, false, &weather::Gap::filled), 13);
}

TEST(ImportRealFiles, HourlyFilesAreRefused) {
    for (const char* name : {"seattle-weather-hourly-normals.csv", "seattle-temps.csv", "sf-temps.csv"}) {
        READ_OR_SKIP(text, name);
        const auto import = import_csv(*text, from(name));
        EXPECT_TRUE(import.days.empty()) << name;
        ASSERT_EQ(import.findings.size(), 1u) << name;
        EXPECT_NE(import.findings[0].message.text().find("hourly"), std::string::npos) << name;
    }
}

TEST(ImportRealFiles, MonthlyNormalsAreRefused) {
    READ_OR_SKIP(text, "colorado-monthly-normals-1961-1990.csv");
    const auto import = import_csv(*text, from("colorado"));
    EXPECT_TRUE(import.days.empty());
    EXPECT_TRUE(has_errors(import.findings));
}

}  // namespace
}  // namespace pipward::intake
