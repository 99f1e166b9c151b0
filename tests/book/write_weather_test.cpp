// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "book/book_testing.h"

namespace pipward::book {
namespace {

using testing::day;
using testing::error_of;
using testing::text;

class WriteWeather : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        testing::add(book, "station", {"name", "elevation_m"},
                     {{{text("O'Ridge"), 300.0}, testing::at(500000, 5300000)},
                      {{text("Hollow"), 280.0}, testing::at(500100, 5300000)}});
    }
    WeatherDay reading(const char* when, double low, double high, const char* station = "O'Ridge") {
        return {
            .fid = 0, .station = station, .day = day(when), .t_min = {low}, .t_max = {high}, .source = {}};
    }
};

TEST_F(WriteWeather, AddsReplacesAndLeavesDays) {
    const auto first = write_weather(book, {reading("2026-04-01", 1, 9), reading("2026-04-02", 2, 8)}, false);
    EXPECT_EQ(std::tie(first.added, first.replaced, first.unchanged), std::tuple(2, 0, 0));
    const std::vector<WeatherDay> renewed{reading("2026-04-01", 1, 9), reading("2026-04-02", 3, 8),
                                          reading("2026-04-03", 0, 5)};
    const auto kept = write_weather(book, {renewed[1]}, false);
    EXPECT_EQ(std::tie(kept.added, kept.replaced, kept.unchanged), std::tuple(0, 0, 1));
    const auto second = write_weather(book, renewed, true);
    EXPECT_EQ(std::tie(second.added, second.replaced, second.unchanged), std::tuple(1, 1, 1));
    const auto stored = read_book(book).orchard.weather;
    ASSERT_EQ(stored.size(), 3U);
    EXPECT_EQ(stored[1].t_min, Celsius{3});
    EXPECT_EQ(stored[2].day, day("2026-04-03"));
}

TEST_F(WriteWeather, AForecastBecomesAnObservation) {
    auto forecast = reading("2026-04-01", 1, 9);
    forecast.source = WeatherSource::forecast;
    write_weather(book, {forecast}, false);
    EXPECT_EQ(write_weather(book, {reading("2026-04-01", 2, 7)}, false).replaced, 1);
    EXPECT_EQ(read_book(book).orchard.weather.at(0).source, WeatherSource::observed);
    EXPECT_EQ(read_book(book).orchard.weather.at(0).t_min, Celsius{2});
}

TEST_F(WriteWeather, AForecastNeverTakesThePlaceOfAnObservationUnasked) {
    write_weather(book, {reading("2026-04-01", 1, 9)}, false);
    auto forecast = reading("2026-04-01", 5, 12);
    forecast.source = WeatherSource::forecast;
    EXPECT_EQ(write_weather(book, {forecast}, false).unchanged, 1);
    EXPECT_EQ(read_book(book).orchard.weather.at(0).t_min, Celsius{1});
}

TEST_F(WriteWeather, KeepsStationsApart) {
    write_weather(book, {reading("2026-04-01", 1, 9)}, false);
    EXPECT_EQ(write_weather(book, {reading("2026-04-01", 0, 8, "Hollow")}, true).added, 1);
    EXPECT_EQ(read_book(book).orchard.weather.size(), 2U);
}

TEST_F(WriteWeather, NothingToWriteIsNothingWritten) {
    const auto before = testing::bytes_of(book);
    EXPECT_EQ(write_weather(book, {}, true).added, 0);
    EXPECT_EQ(testing::bytes_of(book), before);
}

TEST_F(WriteWeather, RefusesAStationThatIsNotThere) {
    const auto error = error_of([&] { write_weather(book, {reading("2026-04-01", 1, 9, "Ridge")}, false); });
    EXPECT_EQ(error.trouble(), Trouble::input);
    EXPECT_EQ(error.findings().at(0).value, "Ridge");
    EXPECT_TRUE(read_book(book).orchard.weather.empty());
}

TEST_F(WriteWeather, CollectsEveryFaultAndWritesNothing) {
    const auto error = error_of([&] {
        write_weather(book,
                      {reading("2026-04-01", 9, 1), reading("2026-04-02", 1, 9), reading("2026-04-02", 1, 9),
                       reading("2026-04-03", 1, std::numeric_limits<double>::quiet_NaN()),
                       reading("2026-04-04", 1, 9, "Hollow")},
                      false);
    });
    EXPECT_EQ(error.trouble(), Trouble::input);
    EXPECT_EQ(error.findings().size(), 4U);
    EXPECT_TRUE(read_book(book).orchard.weather.empty());
}

TEST_F(WriteWeather, RefusesForeignTriggersOnTheTable) {
    testing::RawBook(book).run("CREATE TRIGGER evil AFTER INSERT ON weather_day BEGIN DELETE FROM tree; END");
    EXPECT_EQ(error_of([&] { write_weather(book, {reading("2026-04-01", 1, 9)}, false); }).trouble(),
              Trouble::access);
    EXPECT_TRUE(read_book(book).orchard.weather.empty());
}

}  // namespace
}  // namespace pipward::book
