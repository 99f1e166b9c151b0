// SPDX-License-Identifier: MIT
// From the sample's book to the season plan, by the operations that every host runs.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "paths.h"
#include "pipward/book/book.h"
#include "walking.h"

namespace pipward::testing {
namespace {

constexpr auto march_day = "2026-03-20";

operation::Outcome plan(const std::string& book, const std::string& as_of) {
    return run("season-plan", {{"book", book}, {"as-of", as_of}});
}

double mean_width_of_full_bloom(const operation::Outcome& outcome) {
    const auto& windows = table_of(outcome, "bloom_window");
    double days = 0;
    for (const auto& row : windows.rows) {
        days += std::get<Day>(cell_of(windows, row, "full_p90")) -
                std::get<Day>(cell_of(windows, row, "full_p10"));
    }
    return days / static_cast<double>(windows.rows.size());
}

/// The planned way of each goal and donor: "26-01 Kettlefen" -> row.
std::map<std::string, const Row*> planned_ways(const Table& outlook) {
    std::map<std::string, const Row*> ways;
    for (const auto& row : outlook.rows) {
        if (std::get<bool>(cell_of(outlook, row, "best"))) {
            ways[text_of(outlook, row, "cross") + " " + text_of(outlook, row, "donor")] = &row;
        }
    }
    return ways;
}

TEST(SeasonOfTheSample, TheSamePlanTwiceIsTheSameToTheByte) {
    const Scratch scratch;
    const auto book = scratch.sample();
    const auto first = plan(book, march_day);
    const auto second = plan(book, march_day);
    ASSERT_EQ(first.tables.size(), second.tables.size());
    for (std::size_t i = 0; i < first.tables.size(); ++i) {
        ASSERT_EQ(first.tables[i].rows.size(), second.tables[i].rows.size());
        for (std::size_t row = 0; row < first.tables[i].rows.size(); ++row) {
            EXPECT_EQ(first.tables[i].rows[row].cells, second.tables[i].rows[row].cells);
        }
    }
    EXPECT_EQ(first.crs, "EPSG:25832");
    ASSERT_EQ(first.files.size(), 1U);
    EXPECT_EQ(first.files[0].content, second.files[0].content);
}

TEST(SeasonOfTheSample, ALaterDayNarrowsTheWindows) {
    const Scratch scratch;
    const auto book = scratch.sample();
    run("weather-import", {{"book", book},
                           {"file", project_file("sample-gpkg/weather-2026-update.csv")},
                           {"station", "Larkfold"},
                           {"as-of", "2026-04-11"},
                           {"write", "yes"}});
    const double in_january = mean_width_of_full_bloom(plan(book, "2026-01-10"));
    const double in_march = mean_width_of_full_bloom(plan(book, march_day));
    const double in_april = mean_width_of_full_bloom(plan(book, "2026-04-08"));
    EXPECT_GT(in_january, in_march);
    EXPECT_GT(in_march, in_april);
}

TEST(SeasonOfTheSample, EveryWayOfHavingPollenIsPlannedForSomeCross) {
    const Scratch scratch;
    const auto outcome = plan(scratch.sample(), march_day);
    const auto& outlook = table_of(outcome, "cross_outlook");
    std::set<std::string> ways;
    for (const auto& [name, row] : planned_ways(outlook)) {
        if (text_of(outlook, *row, "verdict") != "impossible") {
            ways.insert(text_of(outlook, *row, "way"));
        }
    }
    EXPECT_EQ(ways, (std::set<std::string>{"same day", "stored this spring", "stored from last year",
                                           "forced branch"}));
}

TEST(SeasonOfTheSample, AllelesDecideWhatCannotWorkAndSayWhy) {
    const Scratch scratch;
    const auto outcome = plan(scratch.sample(), march_day);
    const auto& outlook = table_of(outcome, "cross_outlook");
    int none = 0;
    int half = 0;
    for (const auto& row : outlook.rows) {
        const auto match = text_of(outlook, row, "s_match");
        half += match == "half" ? 1 : 0;
        if (match == "none") {
            ++none;
            EXPECT_EQ(text_of(outlook, row, "verdict"), "impossible");
            EXPECT_EQ(number_of(outlook, row, "probability"), 0);
        }
        EXPECT_FALSE(text_of(outlook, row, "why").empty());
    }
    EXPECT_GT(none, 0);
    EXPECT_GT(half, 0);
}

TEST(SeasonOfTheSample, PollenForNextSpringIsCollectedThisOneWithALastSafeDay) {
    const Scratch scratch;
    const auto outcome = plan(scratch.sample(), march_day);
    const auto& tasks = table_of(outcome, "pollen_task");
    int ahead = 0;
    for (const auto& row : tasks.rows) {
        if (text_of(tasks, row, "work") == "collect" && number_of(tasks, row, "season_of_use") == 2027) {
            ++ahead;
            EXPECT_EQ(text_of(tasks, row, "store"), "freezer");
            EXPECT_EQ(text_of(tasks, row, "do_to").substr(0, 4), "2026");
            EXPECT_EQ(text_of(tasks, row, "keep_until").substr(0, 4), "2027");
        }
    }
    EXPECT_GT(ahead, 0);
}

TEST(SeasonOfTheSample, ResultsStandInTheBookAndNothingElseHasChanged) {
    const Scratch scratch;
    const auto book = scratch.sample();
    const auto before = book::read_book(book);
    const auto outcome = plan(book, march_day);
    for (const auto& table : outcome.tables) {
        const auto kept = book::read_result(book, table.shape.name);
        ASSERT_TRUE(kept) << table.shape.name;
        EXPECT_EQ(kept->rows.size(), table.rows.size()) << table.shape.name;
    }
    const auto after = book::read_book(book);
    EXPECT_EQ(before.findings, after.findings);
    EXPECT_EQ(before.orchard.trees.size(), after.orchard.trees.size());
    EXPECT_EQ(before.orchard.bloom_observations.size(), after.orchard.bloom_observations.size());
    EXPECT_EQ(before.orchard.weather.size(), after.orchard.weather.size());
}

TEST(SeasonOfTheSample, APastDayIsLookedFromAgainWithoutCallingWhatCameSinceAMistake) {
    const Scratch scratch;
    const auto outcome = plan(scratch.sample(), "2025-03-20");
    for (const auto& finding : outcome.findings) {
        EXPECT_EQ(finding.message.text().find("in the future"), std::string::npos) << to_text(finding);
    }
    EXPECT_EQ(
        text_of(table_of(outcome, "bloom_window"), table_of(outcome, "bloom_window").rows.at(0), "season"),
        "2025");
}

TEST(SeasonOfTheSample, ThePlantedMistakeIsFlaggedWithItsRow) {
    const Scratch scratch;
    const auto outcome = plan(scratch.sample(), march_day);
    const auto flagged = std::ranges::count_if(outcome.findings, [](const Finding& finding) {
        return finding.level == Level::warning && finding.table == "bloom_observation" &&
               !finding.row.empty();
    });
    EXPECT_EQ(flagged, 1);
}

}  // namespace
}  // namespace pipward::testing
