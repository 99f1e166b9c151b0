// SPDX-License-Identifier: MIT
// What the season's operations do to the book, and how they refuse.
#include <gtest/gtest.h>

#include <algorithm>

#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation {
namespace {

Outcome run(const std::string& id, Form form) {
    form.try_emplace("as-of", "2026-03-20");
    return find_operation(id)->run(form, {});
}

struct Refusal {
    Trouble trouble;
    std::string words;
};

Refusal refusal(const std::string& id, const Form& form) {
    try {
        (void)run(id, form);
    } catch (const Error& error) {
        return {error.trouble(), error.what()};
    }
    ADD_FAILURE() << id << " did not refuse";
    return {Trouble::input, ""};
}

bool says(const Refusal& refused, const std::string& words) {
    return refused.words.find(words) != std::string::npos;
}

std::vector<std::vector<std::string>> as_text(const Table& table) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& row : table.rows) {
        auto& cells = rows.emplace_back();
        std::ranges::transform(row.cells, std::back_inserter(cells),
                               [](const Cell& cell) { return to_text(cell); });
    }
    return rows;
}

const Table& season_table(const Outcome& outcome, const std::string& name) {
    return *std::ranges::find_if(outcome.tables,
                                 [&](const Table& table) { return table.shape.name == name; });
}

TEST(SeasonPlanOperation, LeavesItsTablesInTheBookAsItReturnsThem) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = run("season-plan", {{"book", sample.book()}});
    for (const auto& shape : find_operation("season-plan")->results()) {
        const auto kept = book::read_result(sample.book(), shape.name);
        ASSERT_TRUE(kept) << shape.name;
        EXPECT_EQ(as_text(*kept), as_text(season_table(outcome, shape.name))) << shape.name;
    }
}

TEST(SeasonPlanOperation, IsTheSumOfItsSteps) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Form form{{"book", sample.book()}, {"keep", "no"}};
    const auto whole = run("season-plan", form);
    for (const auto& [step, table] :
         {std::pair{"bloom-fit", "bloom_model"}, std::pair{"bloom-skill", "bloom_left_out"},
          std::pair{"bloom-forecast", "bloom_window"}, std::pair{"cross-outlook", "cross_outlook"}}) {
        const auto part = run(step, form);
        EXPECT_EQ(as_text(season_table(part, table)), as_text(season_table(whole, table))) << step;
    }
}

TEST(SeasonPlanOperation, MakesOneSheetThatNamesTheOrchardAndTheNote) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = run("season-plan", {{"book", sample.book()},
                                             {"keep", "no"},
                                             {"orchard", "Larkfold Orchard"},
                                             {"subtitle", "All of it made up"}});
    ASSERT_EQ(outcome.files.size(), 1U);
    EXPECT_EQ(outcome.files[0].name, "season-sheet.html");
    EXPECT_NE(outcome.files[0].content.find("Larkfold Orchard"), std::string::npos);
    EXPECT_NE(outcome.files[0].content.find("All of it made up"), std::string::npos);
}

TEST(SeasonOperations, WriteNoLeavesEveryByteOfTheBook) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = sample.bytes();
    for (const auto* id : {"season-plan", "bloom-fit", "bloom-skill", "bloom-forecast", "cross-outlook"}) {
        (void)run(id, {{"book", sample.book()}, {"keep", "no"}});
        EXPECT_EQ(sample.bytes(), before) << id;
    }
}

TEST(SeasonOperations, EveryLivingTreeHasAWindowWithItsPoint) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = run("bloom-forecast", {{"book", sample.book()}, {"keep", "no"}});
    const auto orchard = book::read_book(sample.book()).orchard;
    const Day as_of = *parse_iso_day("2026-03-20");
    const auto living = std::ranges::count_if(orchard.trees, [&](const Tree& tree) {
        return tree.accession && (!tree.removed_on || *tree.removed_on > as_of);
    });
    const auto& rows = outcome.tables.at(0).rows;
    EXPECT_EQ(std::ranges::count_if(rows, [](const Row& row) { return row.at.has_value(); }), living);
}

TEST(SeasonOperations, RefuseAnAsOfThatTheWeatherDoesNotReach) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto refused = refusal("bloom-forecast", {{"book", sample.book()}, {"as-of", "2041-03-20"}});
    EXPECT_EQ(refused.trouble, Trouble::input);
    EXPECT_TRUE(says(refused, "no temperatures of the 2041 season, which began on 2040-10-01"));
    EXPECT_TRUE(says(refused, "weather-import"));
}

TEST(SeasonOperations, WarnOfDaysWithoutTemperaturesBeforeAsOf) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome =
        run("bloom-forecast", {{"book", sample.book()}, {"as-of", "2026-04-20"}, {"keep", "no"}});
    EXPECT_TRUE(std::ranges::any_of(outcome.findings, [](const Finding& finding) {
        return finding.level == Level::warning && finding.table == "weather_day" &&
               finding.message.text().find("2026-04-20") != std::string::npos;
    }));
}

TEST(SeasonOperations, RefuseAnAsOfAfterTheSeason) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto refused = refusal("cross-outlook", {{"book", sample.book()}, {"as-of", "2026-08-01"}});
    EXPECT_EQ(refused.trouble, Trouble::input);
    EXPECT_TRUE(says(refused, "The 2026 season ended on 2026-06-30"));
}

TEST(SeasonOperations, RefuseAStationThatTheBookDoesNotHave) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto refused = refusal("chill-heat", {{"book", sample.book()}, {"station", "Larkfol"}});
    EXPECT_EQ(refused.trouble, Trouble::usage);
    EXPECT_TRUE(says(refused, "The book has no station 'Larkfol'. Did you mean 'Larkfold'?"));
}

TEST(SeasonOperations, CarryEarlierFindingsInTheirRefusal) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto observed = run("book-check", {{"book", sample.book()}}).findings;
    ASSERT_FALSE(observed.empty());
    EXPECT_TRUE(says(refusal("bloom-forecast", {{"book", sample.book()}, {"as-of", "2026-08-01"}}),
                     observed.front().message));
}

TEST(SeasonOperations, RefuseAnEmptyBookSayingWhatIsMissing) {
    const testing::SampleCopy folder;
    (void)find_operation("book-new")->run({{"book", folder.path("new.gpkg")}, {"crs", "EPSG:25832"}}, {});
    for (const auto* id : {"season-plan", "bloom-fit", "chill-heat"}) {
        const auto refused = refusal(id, {{"book", folder.path("new.gpkg")}});
        EXPECT_EQ(refused.trouble, Trouble::input) << id;
        EXPECT_TRUE(says(refused, "The book has no weather station.")) << id;
    }
}

TEST(BookCheckOperation, CarriesEveryFindingOfABookWithErrors) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    Table goals{{"cross_goal",
                 "",
                 "",
                 false,
                 {{"code", CellType::text, "", "", ""},
                  {"season", CellType::whole, "", "", ""},
                  {"seed_parent", CellType::text, "", "", ""},
                  {"pollen_parent", CellType::text, "", "", ""},
                  {"seedlings_wanted", CellType::whole, "", "", ""}}},
                {{{"26-98", std::int64_t{2026}, "Nobody", "No one", std::int64_t{10}}},
                 {{"26-99", std::int64_t{2026}, "Nowhere", "No one", std::int64_t{10}}}}};
    book::append_rows(sample.book(), goals);
    for (const auto* id : {"book-check", "season-plan"}) {
        const auto refused = refusal(id, {{"book", sample.book()}});
        EXPECT_EQ(refused.trouble, Trouble::input) << id;
        EXPECT_TRUE(says(refused, "Nobody")) << id;
        EXPECT_TRUE(says(refused, "Nowhere")) << id;
    }
    EXPECT_FALSE(book::read_result(sample.book(), "bloom_window"));
}

TEST(SeasonClockOperation, CountsFromTheSeasonsFirstDayToAsOf) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto rows = as_text(run("chill-heat", {{"book", sample.book()}}).tables.at(0));
    EXPECT_EQ(rows.size(), 171U);  // 1 October to 20 March
    EXPECT_EQ(rows.front().at(1), "2025-10-01");
    EXPECT_EQ(rows.back().at(1), "2026-03-20");
}

TEST(SeasonClockOperation, SumsNeverFallExceptUtahUnits) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto table = run("chill-heat", {{"book", sample.book()}}).tables.at(0);
    for (std::size_t r = 1; r < table.rows.size(); ++r) {
        for (const std::size_t c : {4U, 6U, 7U, 8U, 9U, 10U, 11U}) {
            EXPECT_GE(std::get<double>(table.rows[r].cells[c]), std::get<double>(table.rows[r - 1].cells[c]))
                << table.shape.columns[c].name;
        }
    }
}

TEST(SeasonClockOperation, RefusesToLeapOverALongGap) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto refused =
        refusal("chill-heat", {{"book", sample.book()}, {"from", "2014-01-01"}, {"to", "2014-04-01"}});
    EXPECT_EQ(refused.trouble, Trouble::input);
    EXPECT_TRUE(says(refused, "has no temperatures on 2014-02-03"));
}

TEST(SeasonClockOperation, RefusesDaysAndThresholdsThatContradictEachOther) {
    const auto refused = refusal("chill-heat", {{"book", "b.gpkg"},
                                                {"from", "2026-03-02"},
                                                {"to", "2026-03-01"},
                                                {"cut-off", "vertical"},
                                                {"base-c", "10"},
                                                {"upper-c", "5"}});
    EXPECT_EQ(refused.trouble, Trouble::usage);
    EXPECT_TRUE(says(refused, "to is before from."));
    EXPECT_TRUE(says(refused, "upper-c is not above base-c."));
}

Outcome import(const testing::SampleCopy& sample, const std::string& csv, Form more = {}) {
    more["book"] = sample.book();
    more["file"] = sample.put("days.csv", csv);
    more["unit"] = "celsius";
    more.emplace("write", "yes");
    more.emplace("as-of", "2027-12-31");
    return find_operation("weather-import")->run(more, {});
}

TEST(WeatherImportOperation, AddsNewDaysAndLeavesOldOnesUnlessTold) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const std::string csv = "date,t_min,t_max\n2026-03-20,-1.5,19.5\n2026-03-31,3,14\n";
    const auto counts = [](const Outcome& outcome) {
        const auto row = as_text(outcome.tables.at(0)).at(0);
        return std::vector<std::string>(row.begin() + 3, row.end());  // days, added, replaced, unchanged
    };
    using Counts = std::vector<std::string>;
    EXPECT_EQ(counts(import(sample, csv)), (Counts{"2", "1", "0", "1"}));
    EXPECT_EQ(counts(import(sample, csv)), (Counts{"2", "0", "0", "2"}));
    EXPECT_EQ(counts(import(sample, csv, {{"replace-existing", "yes"}})), (Counts{"2", "0", "1", "1"}));
}

TEST(WeatherImportOperation, ShowsFirstWhatWritingWouldDo) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = sample.bytes();
    const std::string csv = "date,t_min,t_max\n2026-03-20,-1.5,19.5\n2026-03-31,3,14\n";
    const auto shown = import(sample, csv, {{"write", "no"}, {"replace-existing", "yes"}});
    EXPECT_EQ(sample.bytes(), before);
    EXPECT_EQ(as_text(shown.tables.at(0)),
              as_text(import(sample, csv, {{"replace-existing", "yes"}}).tables.at(0)));
}

TEST(WeatherImportOperation, TellsHowItUnderstoodTheFile) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto summary =
        import(sample, "Datum;Tmin;Tmax\n31.03.2026;3,5;14,0\n13.04.2026;1;2\n").summary.text();
    EXPECT_NE(summary.find("Tmin"), std::string::npos) << summary;
    EXPECT_NE(summary.find("2 days added"), std::string::npos) << summary;
}

TEST(WeatherImportOperation, NamesParametersByTheirKeysAndWritesNothingInDoubt) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = sample.bytes();
    try {
        (void)import(sample, "when,low,high\n2026-03-31,3,14\n2026-04-01,20,10\n", {{"day-column", "Datum"}});
        FAIL() << "it did not refuse";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        EXPECT_EQ(std::string(error.what()).find("day_column"), std::string::npos);
    }
    EXPECT_EQ(sample.bytes(), before);
}

TEST(WeatherImportOperation, ReadsNoFileThatIsNotThere) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    try {
        (void)find_operation("weather-import")
            ->run({{"book", sample.book()}, {"file", sample.path("no.csv")}, {"as-of", "2026-03-20"}}, {});
        FAIL() << "it did not refuse";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::access);
        EXPECT_NE(std::string(error.what()).find("no.csv"), std::string::npos);
    }
}

}  // namespace
}  // namespace pipward::operation
