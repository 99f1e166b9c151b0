// SPDX-License-Identifier: MIT
#include "pipward/intake/weather_file.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace pipward::intake {
namespace {

WeatherFileOptions hill() {
    WeatherFileOptions options;
    options.file = "ghcn.csv";
    options.station = "Hill";
    return options;
}

bool has(const WeatherImport& import, Level level, const std::string& words) {
    return std::ranges::any_of(import.findings, [&](const Finding& one) {
        return one.level == level && one.message.text().find(words) != std::string::npos;
    });
}

constexpr const char* long_rows =
    "XXW00000001,20260301,TMAX,110,,,W,2400\n"
    "XXW00000001,20260301,TMIN,10,,,W,2400\n"
    "XXW00000001,20260301,PRCP,25,,,W,2400\n"
    "XXW00000001,20260302,TMAX,120,,,W,2400\n"
    "XXW00000001,20260302,TMIN,-22,,,W,2400\n"
    "XXW00000001,20260303,TMAX,500,,X,W,2400\n"
    "XXW00000001,20260303,TMIN,30,,,W,2400\n"
    "XXW00000001,20260304,TMAX,-9999,,,W,\n";

void expect_two_days(const WeatherImport& import) {
    ASSERT_EQ(import.days.size(), 2u);
    EXPECT_EQ(to_iso(import.days[0].day), "2026-03-01");
    EXPECT_NEAR(import.days[0].t_min.degrees, 1, 1e-9);
    EXPECT_NEAR(import.days[0].t_max.degrees, 11, 1e-9);
    EXPECT_NEAR(import.days[1].t_min.degrees, -2.2, 1e-9);
    EXPECT_EQ(import.days[1].station, "Hill");
}

TEST(ImportGhcn, LongFormWithoutAHeaderIsInTenthsAndFlaggedValuesAreRejected) {
    const auto import = import_ghcn(long_rows, hill());
    expect_two_days(import);
    EXPECT_TRUE(has(import, Level::notice, "1 value that failed a quality check"));
    EXPECT_TRUE(has(import, Level::notice, "1 day with only one of the two extremes"));
    EXPECT_NE(import.understood.text().find("tenths of a degree Celsius"), std::string::npos);
    EXPECT_NE(import.understood.text().find("XXW00000001"), std::string::npos);
    EXPECT_FALSE(has_errors(import.findings));
}

TEST(ImportGhcn, LongFormWithAHeaderReadsAlike) {
    expect_two_days(import_ghcn(
        std::string("ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n") + long_rows, hill()));
}

TEST(ImportGhcn, LongFormOfSeveralStationsIsPickedByOption) {
    const std::string text = std::string(long_rows) +
                             "XXW00000002,20260301,TMAX,200,,,W,2400\nXXW00000002,20260301,TMIN,90,,,W,2400\n"
                             "XXW00000003,20260301,PRCP,5,,,W,2400\n";
    const auto several = import_ghcn(text, hill());
    EXPECT_TRUE(several.days.empty());
    EXPECT_TRUE(has(several, Level::error, "holds 2 stations"));
    WeatherFileOptions options = hill();
    options.station_in_file = "XXW00000001";
    expect_two_days(import_ghcn(text, options));
}

TEST(ImportGhcn, LongFormTellingADayTwiceDifferentlyIsAnError) {
    const auto import =
        import_ghcn(std::string(long_rows) + "XXW00000001,20260301,TMIN,15,,,W,2400\n", hill());
    EXPECT_TRUE(import.days.empty());
    EXPECT_TRUE(has(import, Level::error, "already has another value"));
}

TEST(ImportGhcn, LongFormWithoutTemperaturesIsAnError) {
    const auto import = import_ghcn("XXW00000001,20260301,PRCP,110,,,W,2400\n", hill());
    EXPECT_TRUE(import.days.empty());
    EXPECT_TRUE(has(import, Level::error, "No day of the file has both"));
}

TEST(ImportGhcn, WideFormHonoursTheFlagsOfTheTemperaturesOnly) {
    WeatherFileOptions options = hill();
    options.unit = TemperatureUnit::celsius;
    const auto import = import_ghcn(
        "\"STATION\",\"NAME\",\"DATE\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\","
        "\"TMIN_ATTRIBUTES\"\n"
        "\"XXW00000001\",\"HILL, "
        "XX\",\"2026-03-01\",\"0.0\",\"T,X,W,\",\"11.0\",\",,W,2400\",\"1.0\",\",,W,\"\n"
        "\"XXW00000001\",\"HILL, XX\",\"2026-03-02\",\"0.0\",\",,W,\",\"12.0\",\"H,,W\",\"-2.2\",\",,W\"\n"
        "\"XXW00000001\",\"HILL, XX\",\"2026-03-03\",\"0.0\",\",,W,\",\"50.0\",\",I,W\",\"3.0\",\",,W\"\n",
        options);
    expect_two_days(import);
    EXPECT_TRUE(has(import, Level::notice, "1 value that failed a quality check"));
    EXPECT_TRUE(has(import, Level::notice, "1 line without a reading"));
}

std::string wide_year(double scale, double offset) {
    std::string text = "STATION,DATE,LATITUDE,TMAX,TMIN\n";
    for (Day day = *make_day({2025, 1, 1}); day < *make_day({2026, 1, 1}); day = day + 1) {
        const int warm = 5 + day_of_year(day) % 25;
        text += fmt::format("XXW00000001,{},47.6,{:.0f},{:.0f}\n", to_iso(day), warm * scale + offset,
                            (warm - 8) * scale + offset);
    }
    return text;
}

TEST(ImportGhcn, WideFormComesInTenthsFahrenheitOrCelsius) {
    for (const auto& [scale, offset, unit] :
         {std::tuple{10.0, 0.0, "tenths of a degree Celsius"}, std::tuple{1.8, 32.0, "degrees Fahrenheit"},
          std::tuple{1.0, 0.0, "degrees Celsius"}}) {
        const auto import = import_ghcn(wide_year(scale, offset), hill());
        ASSERT_EQ(import.days.size(), 365u) << unit;
        EXPECT_NE(import.understood.text().find(std::string("Unit: ") + unit), std::string::npos)
            << import.understood.text();
        EXPECT_NEAR(import.days[19].t_max.degrees, 25, 0.3);
    }
}

TEST(ImportGhcn, KnowsItsOwnFormsFromTheFirstLine) {
    EXPECT_TRUE(looks_like_ghcn(long_rows));
    EXPECT_TRUE(looks_like_ghcn("ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n"));
    EXPECT_TRUE(looks_like_ghcn("\"STATION\",\"NAME\",\"DATE\",\"TMAX\",\"TMIN\"\n"));
    EXPECT_FALSE(looks_like_ghcn("date,t_min,t_max\n"));
    EXPECT_FALSE(looks_like_ghcn("location,date,temp_max,temp_min\n"));
    EXPECT_FALSE(looks_like_ghcn(""));
}

/// A line of fixed width: station, month and element, then 31 values with their flags.
std::string dly_line(const std::string& month, const std::string& element,
                     const std::vector<std::string>& days) {
    std::string line = "XXW00000001" + month + element;
    for (std::size_t i = 0; i < 31; ++i) {
        line += i < days.size() ? days[i] : "-9999   ";
    }
    return line + "\n";
}

// NOAA's readme of GHCN-Daily, section III, has the columns.
TEST(ImportGhcn, LinesOfFixedWidthAreRead) {
    const auto text = dly_line("202603", "PRCP", {"   25  W"}) +
                      dly_line("202603", "TMAX", {"  110  W", "  120  W", "  500 XW", "-9999   "}) +
                      dly_line("202603", "TMIN", {"   10  W", "  -22  W", "   30  W", "   40  W"}) +
                      dly_line("202604", "TMAX", {}) + dly_line("202604", "TMIN", {});
    EXPECT_TRUE(looks_like_dly(text));
    const auto import = read_weather_file(text, hill());
    expect_two_days(import);
    EXPECT_TRUE(has(import, Level::notice, "1 value that failed a quality check"));
    EXPECT_TRUE(has(import, Level::notice, "2 days with only one of the two extremes"));
    EXPECT_NE(import.understood.text().find("fixed width"), std::string::npos);
    EXPECT_FALSE(has_errors(import.findings));
    std::string shortened = text;
    for (auto at = shortened.find(" \n"); at != std::string::npos; at = shortened.find(" \n")) {
        shortened.erase(at, 1);
    }
    expect_two_days(import_ghcn(shortened, hill()));
}

TEST(ImportGhcn, AFixedLineWithARealDayMissingInTheCalendarIsRead) {
    const auto text = dly_line("202602", "TMAX", std::vector<std::string>(28, "  110  W")) +
                      dly_line("202602", "TMIN", std::vector<std::string>(28, "   10  W"));
    EXPECT_EQ(read_weather_file(text, hill()).days.size(), 28u);
    EXPECT_FALSE(looks_like_dly("date,t_min,t_max\n"));
    EXPECT_FALSE(looks_like_dly("XXW00000001,20260301,TMAX,110,,,W,2400\n"));
    EXPECT_FALSE(looks_like_dly(""));
}

TEST(ImportGhcn, EmptyTextIsRefused) {
    EXPECT_TRUE(has(import_ghcn("", hill()), Level::error, "no data lines"));
}

}  // namespace
}  // namespace pipward::intake
