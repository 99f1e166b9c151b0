// SPDX-License-Identifier: MIT
// Files that can be read without complaint, and wrongly: each must be told, asked about or refused.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pipward/intake/weather_file.h"
#include "weather/hourly_file.h"

namespace pipward::intake {
namespace {

WeatherFileOptions odd_barn() {
    WeatherFileOptions options;
    options.file = "odd.csv";
    options.station = "Barn";
    return options;
}

struct Reading {
    double t_min = 0;
    double t_max = 0;
};

/// An invented year: warm in July, with weather of some days' length, in tenths.
Reading made(Day day) {
    const double season = 10 - 9 * std::cos((day_of_year(day) - 20) / 58.1);
    const double weather = 3 * std::sin(day.since_1970 * 0.7) + std::sin(day.since_1970 * 2.1);
    const auto tenths = [](double value) { return std::round(value * 10) / 10; };
    return {tenths(season + weather - 4.5), tenths(season + weather + 4.6)};
}

const Day begin = *make_day({2025, 1, 1});

/// A file of 365 days; `line` writes one.
template <class Line>
std::string file_of(Line line, const std::string& header = "date,t_min,t_max") {
    std::string text = header + "\n";
    for (int i = 0; i < 365; ++i) {
        text += line(begin + i, made(begin + i)) + "\n";
    }
    return text;
}

std::string plain(Day day, Reading reading) {
    return fmt::format("{},{:.1f},{:.1f}", to_iso(day), reading.t_min, reading.t_max);
}

const Finding* odd_finding(const WeatherImport& import, Level level, const std::string& words) {
    const auto found = std::ranges::find_if(import.findings, [&](const Finding& one) {
        return one.level == level && one.message.text().find(words) != std::string::npos;
    });
    return found == import.findings.end() ? nullptr : &*found;
}

bool has_day(const WeatherImport& import, Day day) {
    return std::ranges::find(import.days, day, &WeatherDay::day) != import.days.end();
}

TEST(ImportOddFiles, AnOrdinaryYearIsReadWithoutAWord) {
    const auto import = import_csv(file_of(plain), odd_barn());
    EXPECT_EQ(import.days.size(), 365u);
    EXPECT_TRUE(import.findings.empty());
}

TEST(ImportOddFiles, ZerosForMissingDaysAreLeftOutAndTold) {
    const auto text = file_of([](Day day, Reading reading) {
        return plain(day, day - begin >= 190 && day - begin < 195 ? Reading{0, 0} : reading);
    });
    const auto import = import_csv(text, odd_barn());
    EXPECT_EQ(import.days.size(), 360u);
    EXPECT_FALSE(has_day(import, begin + 192));
    const auto* told =
        odd_finding(import, Level::warning, "stand for a missing reading, and the day is left out");
    ASSERT_TRUE(told);
    EXPECT_EQ(told->row, "line 192");
}

TEST(ImportOddFiles, ALostDecimalPointIsLeftOutAndTold) {
    const auto text = file_of([](Day day, Reading reading) {
        if (day - begin == 80) {
            return fmt::format("{},{:.1f},{:.0f}", to_iso(day), reading.t_min, 45.0);
        }
        return day - begin == 30 ? fmt::format("{},-25,{:.1f}", to_iso(day), reading.t_max)
                                 : plain(day, reading);
    });
    const auto import = import_csv(text, odd_barn());
    EXPECT_FALSE(has_day(import, begin + 80));
    EXPECT_FALSE(has_day(import, begin + 30));
    EXPECT_EQ(import.days.size(), 363u);
    EXPECT_TRUE(odd_finding(import, Level::warning, "lost its decimal point"));
}

TEST(ImportOddFiles, AUnitThatChangesHalfWayIsAnErrorThatNamesTheLine) {
    for (const int change : {40, 180, 300}) {
        for (const bool to_fahrenheit : {true, false}) {
            const auto text = file_of([&](Day day, Reading reading) {
                const bool fahrenheit = (day - begin >= change) == to_fahrenheit;
                return plain(
                    day, fahrenheit ? Reading{reading.t_min * 1.8 + 32, reading.t_max * 1.8 + 32} : reading);
            });
            const auto import = import_csv(text, odd_barn());
            const auto* told =
                odd_finding(import, Level::error, "From here on the temperatures seem to be in");
            ASSERT_TRUE(told) << change;
            EXPECT_EQ(told->row, fmt::format("line {}", change + 2));
            EXPECT_EQ(told->value, to_iso(begin + change));
            EXPECT_TRUE(import.days.empty());
        }
    }
}

TEST(ImportOddFiles, AUnitThatChangesOverALongGapIsFoundByTheYearBefore) {
    std::string text = "date,t_min,t_max\n";
    for (int year = 0; year < 2; ++year) {
        for (int i = 60; i < 200; ++i) {
            const auto reading = made(begin + i);
            text += plain(begin + 365 * year + i,
                          year == 0 ? reading : Reading{reading.t_min * 1.8 + 32, reading.t_max * 1.8 + 32}) +
                    "\n";
        }
    }
    const auto import = import_csv(text, odd_barn());
    const auto* told = odd_finding(import, Level::error, "From here on");
    ASSERT_TRUE(told);
    EXPECT_EQ(told->row, "line 142");
}

TEST(ImportOddFiles, DaysToComeCannotHaveBeenObserved) {
    auto options = odd_barn();
    options.today = begin + 300;
    const auto refused = import_csv(file_of(plain), options);
    EXPECT_TRUE(refused.days.empty());
    const auto* told = odd_finding(refused, Level::error, "64 days in the future of 2025-10-28");
    ASSERT_TRUE(told);
    EXPECT_EQ(told->row, "line 303");
    options.source = WeatherSource::forecast;
    EXPECT_EQ(import_csv(file_of(plain), options).days.size(), 365u);
}

// Central Europe: midnight is 23:00 of the day before in winter and 22:00 in summer.
TEST(ImportOddFiles, MidnightsWrittenInUtcAreAskedAbout) {
    const auto text = file_of(
        [](Day day, Reading reading) {
            return fmt::format("{}T{}:00:00Z,{:.1f},{:.1f}", to_iso(day - 1), day - begin < 100 ? 23 : 22,
                               reading.t_min, reading.t_max);
        },
        "timestamp,t_min,t_max");
    const auto asked = import_csv(text, odd_barn());
    EXPECT_TRUE(asked.days.empty());
    const auto* told = odd_finding(asked, Level::error, "time of UTC");
    ASSERT_TRUE(told);
    EXPECT_EQ(told->field, "day_shift");
    auto options = odd_barn();
    options.day_shift = 1;
    const auto shifted = import_csv(text, options);
    ASSERT_EQ(shifted.days.size(), 365u);
    EXPECT_EQ(shifted.days[0].day, begin);
    options.day_shift = 0;
    EXPECT_EQ(import_csv(text, options).days.at(0).day, begin - 1);
}

TEST(ImportOddFiles, AHeadingThatSaysUtcIsHeard) {
    const auto import = import_csv(file_of(
                                       [](Day day, Reading reading) {
                                           return fmt::format("{} 22:00,{:.1f},{:.1f}", to_iso(day),
                                                              reading.t_min, reading.t_max);
                                       },
                                       "date_utc,t_min,t_max"),
                                   odd_barn());
    EXPECT_TRUE(odd_finding(import, Level::error, "time of UTC"));
}

TEST(ImportOddFiles, DaysOfUtcAreSaid) {
    const auto import = import_csv(file_of(
                                       [](Day day, Reading reading) {
                                           return fmt::format("{}T00:00:00Z,{:.1f},{:.1f}", to_iso(day),
                                                              reading.t_min, reading.t_max);
                                       },
                                       "time,t_min,t_max"),
                                   odd_barn());
    EXPECT_EQ(import.days.size(), 365u);
    EXPECT_NE(import.understood.text().find("days of UTC"), std::string::npos);
}

TEST(ImportOddFiles, AYearThatNobodyMeasuredIsLeftOut) {
    const auto import =
        import_csv("date,t_min_c,t_max_c\n0202-03-01,1,11\n2026-03-02,2,12\n9026-03-03,3,13\n", odd_barn());
    ASSERT_EQ(import.days.size(), 1u);
    EXPECT_TRUE(odd_finding(import, Level::warning, "Nobody measured temperatures then"));
}

// Headings of national weather services, from memory.
TEST(ImportOddFiles, HeadingsOfNationalServicesAreKnown) {
    const std::vector<std::pair<std::string, std::string>> files{
        {"STATIONS_ID;MESS_DATUM;QN_3;  FX;QN_4; RSK; TMK; TXK; TNK; TGK;eor",
         "       1605;20250301;   10; 9.1;    3; 0.0; 6.0;11.0; 1.0;-2.0;eor"},
        {"ob_end_time,id_type,src_id,max_air_temp,min_air_temp", "2025-03-01 09:00,DCNN,409,11.0,1.0"},
        {"NUM_POSTE;NOM_USUEL;LAT;LON;ALTI;AAAAMMJJ;RR;QRR;TN;QTN;HTN;QHTN;TX;QTX",
         "07005001;HILL;50.1;1.8;69;20250301;0.0;1;1.0;1;512;9;11.0;1"},
        {"station,day,max_temp_f,min_temp_f", "XXW,2025-03-01,51.8,33.8"},
        {"station_abbr;reference_timestamp;tre200dx;tre200dn", "HIL;01.03.2025 00:00;11.0;1.0"},
        {"time,station,tlmin,tlmax", "2025-03-01T00:00+00:00,105,1.0,11.0"},
        {"Datum;Tiefsttemperatur;H\xC3\xB6"
         "chsttemperatur",
         "01.03.2025;1,0;11,0"},
        {"Date;Temp\xC3\xA9rature minimale;Temp\xC3\xA9rature maximale", "2025-03-01;1,0;11,0"},
    };
    for (const auto& [heading, line] : files) {
        auto options = odd_barn();
        options.unit =
            heading.find("_f") == std::string::npos ? std::optional{TemperatureUnit::celsius} : std::nullopt;
        options.date_format = DateFormat::day_month_year;
        if (line.find("01.03.2025") == std::string::npos) {
            options.date_format = DateFormat::year_month_day;
        }
        const auto import = read_weather_file(heading + "\n" + line + "\n", options);
        ASSERT_EQ(import.days.size(), 1u)
            << heading << (import.findings.empty() ? "" : to_text(import.findings[0]));
        EXPECT_EQ(to_iso(import.days[0].day), "2025-03-01");
        EXPECT_NEAR(import.days[0].t_min.degrees, 1, 1e-9) << heading;
        EXPECT_NEAR(import.days[0].t_max.degrees, 11, 1e-9) << heading;
    }
}

// The archive's own convention, from memory: a preface of any length, then "data".
TEST(ImportOddFiles, APrefaceOfTheBritishArchiveIsPassedOver) {
    std::string text = "Conventions,G,BADC-CSV,1\n";
    for (int i = 0; i < 60; ++i) {
        text += fmt::format("comments,G,\"line {} says min, max and date\"\n", i);
    }
    text += "data\nob_end_time,src_id,max_air_temp,min_air_temp\n2025-03-01 09:00,409,11.0,1.0\nend data\n";
    auto options = odd_barn();
    options.unit = TemperatureUnit::celsius;
    const auto import = read_weather_file(text, options);
    ASSERT_EQ(import.days.size(), 1u);
    EXPECT_NEAR(import.days[0].t_max.degrees, 11, 1e-9);
}

TEST(ImportOddFiles, AnHourLongerThanMemoryIsWalkedThroughNotHeld) {
    // 200,000 lines of one day: what is held is one day; the others are counted.
    std::string text = "date,t_min,t_max\n";
    for (int i = 0; i < 200'000; ++i) {
        text += "2025-03-01,1.0,11.0\n";
    }
    auto options = odd_barn();
    options.unit = TemperatureUnit::celsius;
    const auto import = import_csv(text, options);
    EXPECT_EQ(import.days.size(), 1u);
    EXPECT_EQ(import.findings.size(), 21u);
}

TEST(ImportOddFiles, RealStationsRaiseHardlyAnAlarm) {
    int days = 0;
    int alarms = 0;
    for (const auto* name : {"badajoz-daily-1955-2015.csv", "chicago-daily-2001-2016-degF.csv",
                             "lincoln-ne-daily-2016-degF.csv", "seattle-weather.csv"}) {
        const auto text = testing::shared_weather(name);
        if (!text) {
            GTEST_SKIP() << "The shared file " << name << " is not here.";
        }
        auto options = odd_barn();
        options.t_min_column =
            std::string(name).starts_with("chi") ? std::optional<std::string>("temp_min") : std::nullopt;
        options.t_max_column =
            std::string(name).starts_with("chi") ? std::optional<std::string>("temp_max") : std::nullopt;
        const auto import = import_csv(*text, options);
        EXPECT_FALSE(has_errors(import.findings)) << name;
        days += static_cast<int>(import.days.size());
        alarms += static_cast<int>(import.findings.size());
    }
    EXPECT_GT(days, 29'000);
    EXPECT_LE(alarms, 6);
}

}  // namespace
}  // namespace pipward::intake
