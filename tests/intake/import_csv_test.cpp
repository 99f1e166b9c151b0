// SPDX-License-Identifier: MIT
#include "pipward/intake/weather_file.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace pipward::intake {
namespace {

WeatherFileOptions barn() {
    WeatherFileOptions options;
    options.file = "spring.csv";
    options.station = "Barn";
    options.unit = TemperatureUnit::celsius;
    return options;
}

WeatherFileOptions barn_without_unit() {
    WeatherFileOptions options = barn();
    options.unit.reset();
    return options;
}

/// A whole year of one line a day under `header`; `line` writes a day.
template <class Line>
std::string year_of(const std::string& header, Line line) {
    std::string text = header + "\n";
    for (Day day = *make_day({2025, 1, 1}); day < *make_day({2026, 1, 1}); day = day + 1) {
        text += line(day, 10 + 8 * std::sin((day_of_year(day) - 110) / 58.1)) + "\n";
    }
    return text;
}

const Finding* finding(const WeatherImport& import, Level level, const std::string& words) {
    const auto found = std::ranges::find_if(import.findings, [&](const Finding& one) {
        return one.level == level && one.message.text().find(words) != std::string::npos;
    });
    return found == import.findings.end() ? nullptr : &*found;
}

void expect_refused(const WeatherImport& import, const std::string& field, const std::string& words) {
    EXPECT_TRUE(import.days.empty());
    const Finding* error = finding(import, Level::error, words);
    ASSERT_TRUE(error) << words;
    EXPECT_EQ(error->field, field);
    EXPECT_EQ(error->table, "spring.csv");
    EXPECT_FALSE(error->remedy.empty());
}

/// Two days, 1 and 2 March 2026, 1..11 and 2..12 °C.
void expect_two_march_days(const WeatherImport& import) {
    for (const Finding& one : import.findings) {
        ADD_FAILURE() << to_text(one);
    }
    ASSERT_EQ(import.days.size(), 2u);
    EXPECT_EQ(to_iso(import.days[0].day), "2026-03-01");
    EXPECT_NEAR(import.days[0].t_min.degrees, 1, 1e-9);
    EXPECT_NEAR(import.days[0].t_max.degrees, 11, 1e-9);
    EXPECT_EQ(to_iso(import.days[1].day), "2026-03-02");
    EXPECT_NEAR(import.days[1].t_min.degrees, 2, 1e-9);
    EXPECT_NEAR(import.days[1].t_max.degrees, 12, 1e-9);
    EXPECT_EQ(import.days[0].station, "Barn");
}

TEST(ImportCsv, ReadsThePlainTable) {
    const auto import = import_csv("date,t_min,t_max\n2026-03-01,1,11\n2026-03-02,2,12\n", barn());
    expect_two_march_days(import);
    EXPECT_EQ(import.days[0].source, WeatherSource::observed);
    EXPECT_NE(import.understood.text().find("minimum from \"t_min\""), std::string::npos);
    EXPECT_NE(import.understood.text().find("degrees Celsius, as stated"), std::string::npos);
    EXPECT_NE(import.understood.text().find("2 days were read, from 2026-03-01 to 2026-03-02"),
              std::string::npos);
}

TEST(ImportCsv, KnowsManySpellingsOrdersAndDelimiters) {
    const std::vector<std::string> texts{
        "Date,High,Low\r\n2026-03-01,11,1\r\n2026-03-02,12,2\r\n",
        "\xEF\xBB\xBF"
        "DATE;TMIN;TMAX\n2026-03-01;1;11\n2026-03-02;2;12\n",
        "day\tTemp_Min\tTemp_Max\n2026-03-01\t1\t11\n2026-03-02\t2\t12\n",
        "Datum;Tn;Tx\n20260301;1,0;11,0\n20260302;2,0;12,0\n",
        "Date,\"Max. temperature\",\"Minimum temperature\"\n2026/03/01,11,1\n2026/03/02,12,2\n",
        "year,month,day,tmin,tmax\n2026,3,1,1,11\n2026,3,2,2,12\n",
        "Year,Month,Day,Date,Low Temp,High Temp\n0,0,0,2026-03-01,1,11\n0,0,0,2026-03-02,2,12\n",
        "# made by a logger\n\ndate,note,min,max\n2026-03-01,\"wind, \"\"gusts\"\"\nand rain\",1,11\n"
        "2026-03-02,,2,12\n",
        "timestamp,MinTemp,MaxTemp\n2026-03-02T00:00:00,2,12\n2026-03-01T00:00:00,1,11\n",
        "date,min,max\n3/1/2026 12:00:00 AM,1,11\n3/2/2026 12:00:00 AM,2,12\n3/13/2026 12:00:00 AM,,\n",
        "date,min,max\n2026-03-01,1,11\r2026-03-02,+2,12",
    };
    for (const std::string& text : texts) {
        SCOPED_TRACE(text);
        auto import = import_csv(text, barn());
        std::erase_if(import.findings, [](const Finding& one) { return one.level == Level::notice; });
        expect_two_march_days(import);
    }
}

TEST(ImportCsv, TakesTheUnitFromTheHeader) {
    for (const char* header :
         {"date,tmin_f,tmax_f", "date,Low (°F),High (°F)", "date,Min TemperatureF,Max TemperatureF",
          "date,TMIN (Degrees Fahrenheit),TMAX (Degrees Fahrenheit)", "date,min degF,max degF",
          "date,Low \u2109,High \u2109", "date,tminf,tmaxf", "date,min_temp_f,max"}) {
        SCOPED_TRACE(header);
        const auto import = import_csv(std::string(header) + "\n2026-03-01,33.8,51.8\n2026-03-02,35.6,53.6\n",
                                       barn_without_unit());
        expect_two_march_days(import);
        EXPECT_NE(import.understood.text().find("degrees Fahrenheit, as the header says"), std::string::npos);
    }
    for (const char* header :
         {"date,t_min_c,t_max_c", "date,tmin [°C],tmax [°C]", "date,Low Celsius,High Celsius"}) {
        SCOPED_TRACE(header);
        expect_two_march_days(
            import_csv(std::string(header) + "\n2026-03-01,1,11\n2026-03-02,2,12\n", barn_without_unit()));
    }
    expect_two_march_days(import_csv("date,TN (0.1 C),TX (0.1 C)\n2026-03-01,10,110\n2026-03-02,20,120\n",
                                     barn_without_unit()));
}

TEST(ImportCsv, TakesTheUnitFromTheValuesWhereTheyTell) {
    const auto celsius =
        import_csv(year_of("date,min,max",
                           [](Day day, double mean) {
                               return fmt::format("{},{:.1f},{:.1f}", to_iso(day), mean - 5, mean + 5);
                           }),
                   barn_without_unit());
    EXPECT_EQ(celsius.days.size(), 365u);
    EXPECT_NE(celsius.understood.text().find("Unit: degrees Celsius, as 19 days in 20 stay within"),
              std::string::npos);
    const auto fahrenheit = import_csv(year_of("date,min,max",
                                               [](Day day, double mean) {
                                                   return fmt::format("{},{:.0f},{:.0f}", to_iso(day),
                                                                      mean * 1.8 + 24, mean * 1.8 + 40);
                                               }),
                                       barn_without_unit());
    ASSERT_EQ(fahrenheit.days.size(), 365u);
    EXPECT_NE(fahrenheit.understood.text().find("Unit: degrees Fahrenheit, as 1 day in 20"),
              std::string::npos);
    EXPECT_LT(fahrenheit.days[180].t_max.degrees, 30);
}

TEST(ImportCsv, AsksForTheUnitOfAShortColdFile) {
    const auto import = import_csv("date,min,max\n2026-03-01,20,35\n2026-03-02,25,41\n", barn_without_unit());
    expect_refused(import, "unit", "could be Celsius or Fahrenheit");
}

TEST(ImportCsv, AsksForTheUnitOfTenthsAndKelvin) {
    expect_refused(import_csv("date,min,max\n2026-07-01,120,265\n2026-07-02,110,250\n", barn_without_unit()),
                   "unit", "too high for Celsius and for Fahrenheit");
    WeatherFileOptions tenths = barn();
    tenths.unit = TemperatureUnit::tenths_celsius;
    expect_two_march_days(import_csv("date,min,max\n2026-03-01,10,110\n2026-03-02,20,120\n", tenths));
}

TEST(ImportCsv, OneTypingErrorDoesNotDecideTheUnit) {
    auto text = year_of("date,min,max", [](Day day, double mean) {
        return fmt::format("{},{:.1f},{:.1f}", to_iso(day), mean - 5, mean + 5);
    });
    text += "2026-01-01,5,121\n";
    const auto import = import_csv(text, barn_without_unit());
    EXPECT_EQ(import.days.size(), 365u);
    const Finding* warning = finding(import, Level::warning, "this cold or hot");
    ASSERT_TRUE(warning);
    EXPECT_EQ(warning->row, "line 367");
    EXPECT_EQ(warning->value, "5, 121");
}

TEST(ImportCsv, MissingReadingsAreLeftOutAndCountedNeverZero) {
    const auto import = import_csv(
        "date,min,max\n2026-03-01,1,11\n2026-03-02,,12\n2026-03-03,NA,12\n2026-03-04,-9999,12\n"
        "2026-03-05,3,-99.9\n2026-03-06,M,M\n2026-03-07,null,--\n2026-03-08,-999.0,9999\n2026-03-09,nan,4\n"
        "2026-03-10,0,0\n",
        barn());
    ASSERT_EQ(import.days.size(), 2u);
    EXPECT_EQ(to_iso(import.days[1].day), "2026-03-10");
    const Finding* remark = finding(import, Level::notice, "8 lines without a reading");
    ASSERT_TRUE(remark);
    EXPECT_EQ(remark->row, "line 3");
}

TEST(ImportCsv, SpoiltCellsAreNamedWithLineAndValueAndLeftOut) {
    const auto import = import_csv(
        "date,min,max\n2026-03-01,1,11\n2026-02-30,1,11\n2026-03-03,warm,11\n2026-03-04,1,inf\n2026-03-05,1\n"
        "2026-03-06,1,11,7\n2026-03-07,2,12\n2026-03-08,2,12\n2026-03-09,2,12\n2026-03-10,2,12\n",
        barn());
    EXPECT_EQ(import.days.size(), 5u);
    const Finding* day = finding(import, Level::warning, "not a day of the calendar");
    ASSERT_TRUE(day);
    EXPECT_EQ(day->row, "line 3");
    EXPECT_EQ(day->value, "2026-02-30");
    const Finding* cell = finding(import, Level::warning, "not a temperature");
    ASSERT_TRUE(cell);
    EXPECT_EQ(cell->row, "line 4");
    EXPECT_EQ(cell->field, "t_min");
    EXPECT_EQ(cell->value, "warm");
    const Finding* width = finding(import, Level::warning, "has not the 3 fields");
    ASSERT_TRUE(width);
    EXPECT_EQ(width->row, "line 6");
}

TEST(ImportCsv, AReversedDayIsLeftOutAndManyOfThemMeanSwappedColumns) {
    std::string text = "date,min,max\n";
    for (int day = 1; day <= 20; ++day) {
        text += fmt::format("2026-03-{:02},1,11\n", day);
    }
    const auto one = import_csv(text + "2026-03-21,11,1\n", barn());
    EXPECT_EQ(one.days.size(), 20u);
    ASSERT_TRUE(finding(one, Level::warning, "minimum lies above its maximum"));
    EXPECT_EQ(finding(one, Level::warning, "minimum lies above its maximum")->row, "line 22");

    WeatherFileOptions swapped = barn();
    swapped.t_min_column = "max";
    swapped.t_max_column = "min";
    expect_refused(import_csv(text, swapped), "t_min, t_max", "columns seem swapped");
    EXPECT_EQ(import_csv(text, swapped).findings.size(), 1U);
}

TEST(ImportCsv, AWrongUnitShowsInUnbelievableTemperatures) {
    std::string text = "date,min,max\n";
    for (int day = 1; day <= 30; ++day) {
        text += fmt::format("2026-06-{:02},{},{}\n", day, 55, 75 + day % 3);
    }
    expect_refused(import_csv(text, barn()), "t_min, t_max", "the unit seems wrong");
    EXPECT_EQ(import_csv(text, barn_without_unit()).days.size(), 30u);
}

TEST(ImportCsv, ADayTwiceAlikeIsKeptOnceAndDifferentlyIsAnError) {
    const auto alike =
        import_csv("date,min,max\n2026-03-01,1,11\n2026-03-02,2,12\n2026-03-01,1,11\n", barn());
    EXPECT_EQ(alike.days.size(), 2u);
    EXPECT_TRUE(finding(alike, Level::notice, "occurs twice with the same values"));
    const auto different = import_csv("date,min,max\n2026-03-01,1,11\n2026-03-01,2,12\n", barn());
    expect_refused(different, "day", "occurs on an earlier line with other temperatures");
    EXPECT_EQ(finding(different, Level::error, "earlier line")->row, "line 3");
    EXPECT_EQ(finding(different, Level::error, "earlier line")->value, "2026-03-01 (line 2)");
}

TEST(ImportCsv, TheOrderOfDayAndMonthIsTakenFromTheFileOnlyWhereItIsPlain) {
    const auto day_first =
        import_csv("date,min,max\n01/03/2026,1,11\n02/03/2026,2,12\n13/03/2026,,\n", barn());
    EXPECT_EQ(to_iso(day_first.days.at(1).day), "2026-03-02");
    EXPECT_NE(day_first.understood.text().find("day-month-year, as line 4 (13/03/2026) shows"),
              std::string::npos);
    const auto month_first = import_csv("date,min,max\n3/1/2026,1,11\n3/2/2026,2,12\n3/31/2026,,\n", barn());
    EXPECT_EQ(to_iso(month_first.days.at(1).day), "2026-03-02");
    const auto dots = import_csv("date,min,max\n1.3.2026,1,11\n2.3.2026,2,12\n", barn());
    EXPECT_EQ(to_iso(dots.days.at(1).day), "2026-03-02");
}

TEST(ImportCsv, AnAmbiguousOrderIsAskedForAndTheOptionDecides) {
    const std::string text = "date,min,max\n01/03/2026,1,11\n02/03/2026,2,12\n";
    expect_refused(import_csv(text, barn()), "day_format", "with the day first and with the month first");
    WeatherFileOptions options = barn();
    options.date_format = DateFormat::day_month_year;
    expect_two_march_days(import_csv(text, options));
    options.date_format = DateFormat::month_day_year;
    EXPECT_EQ(to_iso(import_csv(text, options).days.at(1).day), "2026-02-03");
    expect_refused(import_csv("date,min,max\n13/03/2026,1,11\n03/14/2026,2,12\n", barn()), "day_format",
                   "Line 2 can only have the day first and line 3 only the month first");
}

TEST(ImportCsv, DaysThatCannotBeReadAreRefused) {
    expect_refused(import_csv("date,min,max\n1 March 2026,1,11\n2 March 2026,2,12\n", barn()), "day_format",
                   "cannot be read");
    expect_refused(import_csv("date,min,max\n1/3/26,1,11\n2/3/26,2,12\n", barn()), "day_format",
                   "cannot be read");
}

TEST(ImportCsv, HourlyFilesAreRefusedWithTheReason) {
    expect_refused(import_csv("date,min,max\n2026-03-01 00:00,1,2\n2026-03-01 01:00,1,2\n", barn()), "day",
                   "looks like an hourly file");
    expect_refused(import_csv("time,temperature\n2026-03-01T01:00:00Z,1\n", barn()), "day",
                   "looks like an hourly file");
}

TEST(ImportCsv, ADailyFileMayBeStampedWithItsTimeOfObservation) {
    expect_two_march_days(import_csv("date,min,max\n2026-03-01 08:00,1,11\n2026-03-02 08:00,2,12\n", barn()));
}

TEST(ImportCsv, MissingAndDoubleColumnsAreNamed) {
    const auto without = import_csv("date,rain\n2026-03-01,1\n", barn());
    expect_refused(without, "t_min_column", "No column was recognised as the daily minimum");
    EXPECT_TRUE(finding(without, Level::error, "daily maximum"));  // all of it, not the first only
    EXPECT_EQ(finding(without, Level::error, "daily minimum")->value, "date, rain");
    expect_refused(import_csv("date,low,min,max\n2026-03-01,1,2,3\n", barn()), "t_min_column",
                   "More than one column could be the daily minimum");
    expect_refused(import_csv("min,max\n1,2\n", barn()), "day_column", "recognised as the day");
}

TEST(ImportCsv, ColumnsCanBeNamedByOption) {
    WeatherFileOptions options = barn();
    options.day_column = "When";
    options.t_min_column = "cold";
    options.t_max_column = "WARM";
    expect_two_march_days(import_csv("when,low,cold,warm\n2026-03-01,9,1,11\n2026-03-02,9,2,12\n", options));
    options.t_min_column = "frigid";
    expect_refused(import_csv("when,low,cold,warm\n2026-03-01,9,1,11\n", options), "t_min_column",
                   "no column of this name");
}

TEST(ImportCsv, OneOfSeveralStationsIsPickedByOption) {
    const std::string text =
        "Location,date,min,max\nHill,2026-03-01,7,8\nBarn yard,2026-03-01,1,11\nBarn yard,2026-03-02,2,12\n";
    const auto several = import_csv(text, barn());
    expect_refused(several, "station_in_file", "holds 2 stations");
    EXPECT_NE(several.findings[0].remedy.text().find("Barn yard; Hill"), std::string::npos);
    WeatherFileOptions options = barn();
    options.station_in_file = "Barn yard";
    expect_two_march_days(import_csv(text, options));
    options.station_in_file = "Lake";
    expect_refused(import_csv(text, options), "station_in_file", "does not hold this station");
    options.station_in_file = "Barn yard";
    expect_refused(import_csv("date,min,max\n2026-03-01,1,2\n", options), "station_in_file",
                   "no column of stations");
}

TEST(ImportCsv, TheStationIsTheBooksOrTheFilesButNeverNameless) {
    WeatherFileOptions nameless = barn();
    nameless.station.clear();
    EXPECT_EQ(import_csv("site,date,min,max\nHill,2026-03-01,7,8\n", nameless).days.at(0).station, "Hill");
    expect_refused(import_csv("date,min,max\n2026-03-01,7,8\n", nameless), "station",
                   "which station this is");
}

TEST(ImportCsv, ForecastDaysAreMarked) {
    WeatherFileOptions options = barn();
    options.source = WeatherSource::forecast;
    EXPECT_EQ(import_csv("date,min,max\n2026-03-01,7,8\n", options).days.at(0).source,
              WeatherSource::forecast);
}

TEST(ImportCsv, EmptyBrokenAndBinaryTextsAreRefused) {
    expect_refused(import_csv("", barn()), "", "no data lines");
    expect_refused(import_csv("date,min,max\n", barn()), "", "no data lines");
    expect_refused(import_csv("# only a comment", barn()), "", "no data lines");
    expect_refused(import_csv("date,min,max\n\"2026-03-01,1,2\n", barn()), "", "never closed");
    expect_refused(import_csv(std::string("PK\0\1binary", 10), barn()), "", "not plain text");
    expect_refused(import_csv("date,min,max\n2026-03-01,,\n", barn()), "t_min, t_max",
                   "No line of the file has a day and both temperatures");
    expect_refused(import_csv("date,min,max\n2026-03-01,3,5,12,1\n", barn()), "", "No line of the file fits");
}

TEST(ImportCsv, TheTwentyFirstFindingOfAKindIsOnlyCounted) {
    std::string text = "date,min,max\n";
    for (int i = 0; i < 300; ++i) {
        text += fmt::format("{},{},{}\n", to_iso(*make_day({2025, 1, 1}) + i), i % 10 == 0 ? "spoilt" : "1",
                            9 + i % 3);
    }
    const auto import = import_csv(text, barn());
    EXPECT_EQ(import.days.size(), 270u);
    EXPECT_EQ(import.findings.size(), 21u);
    EXPECT_TRUE(finding(import, Level::warning, "10 more lines like this"));
}

TEST(ImportCsv, AnyMangledTextIsReadOrRefusedButNeverBreaksTheRules) {
    const std::string whole = year_of("station;date;min;max", [](Day day, double mean) {
        return fmt::format("Barn;{};{:.1f};\"{:.1f}\"", to_iso(day), mean - 5, mean + 5);
    });
    std::uint64_t dice = 7;
    const auto roll = [&](std::size_t sides) {
        dice = dice * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<std::size_t>(dice >> 33) % sides;
    };
    constexpr std::string_view spoilers = "\";,\n\r\t-9.5/ T:aM\xC2\xB0";
    int read = 0;
    for (int round = 0; round < 300; ++round) {
        std::string text = whole.substr(0, 200 + roll(whole.size() - 200));
        for (std::size_t hits = roll(6); hits > 0; --hits) {
            text[roll(text.size())] = spoilers[roll(spoilers.size())];
        }
        const auto import = import_csv(text, barn_without_unit());
        EXPECT_TRUE(!import.days.empty() || has_errors(import.findings));
        EXPECT_TRUE(std::ranges::is_sorted(import.days, {}, &WeatherDay::day));
        for (const WeatherDay& day : import.days) {
            ASSERT_LE(day.t_min, day.t_max);
            ASSERT_GE(day.t_min, coldest_believable);
            ASSERT_LE(day.t_max, hottest_believable);
        }
        read += import.days.empty() ? 0 : 1;
    }
    EXPECT_GT(read, 30);
}

}  // namespace
}  // namespace pipward::intake
