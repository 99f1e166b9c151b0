// SPDX-License-Identifier: MIT
#include "pipward/record/reader_days.h"
#include "days.h"

#include <gtest/gtest.h>

#include <array>

#include "pipward/record/table.h"

namespace pipward::record {
namespace {

TEST(WeekdayName, IsKnownForFamousDays) {
    EXPECT_EQ(weekday_name(testing::day_of("1970-01-01")), "Thu");
    EXPECT_EQ(weekday_name(testing::day_of("1969-12-31")), "Wed");
    EXPECT_EQ(weekday_name(testing::day_of("2024-02-29")), "Thu");
    EXPECT_EQ(weekday_name(testing::day_of("1945-05-08")), "Tue");
}

TEST(ReaderDay, HasItsYearWhereThatIsAnotherThanTheOneSpokenOf) {
    EXPECT_EQ(reader_day(testing::day_of("2026-04-07"), 2026), "Tue 7 Apr");
    EXPECT_EQ(reader_day(testing::day_of("2026-04-07"), 2025), "Tue 7 Apr 2026");
    EXPECT_EQ(reader_day(testing::day_of("1970-01-01"), {}), "Thu 1 Jan 1970");
}

TEST(WithReaderDays, SaysDaysOfSentencesAsTablesDo) {
    const auto until = say("Collect by {}, store until {}.", to_iso(testing::day_of("2026-04-07")),
                           verbatim(to_iso(testing::day_of("2027-03-01"))));
    EXPECT_EQ(until.in(with_reader_days(in_english, 2026)),
              "Collect by Tue 7 Apr, store until Mon 1 Mar 2027.");
    EXPECT_EQ(until.in(in_english), "Collect by 2026-04-07, store until 2027-03-01.");
    EXPECT_EQ(until.text(), "Collect by 2026-04-07, store until 2027-03-01.") << "programs read ISO 8601";
}

TEST(WithReaderDays, SaysTheDayInTheWordsOfTheHost) {
    const Wording german = [](std::string_view form) {
        return form == "Tue"              ? "Di"
               : form == "{} Apr"         ? "{}. Apr"
               : form == "Collect by {}." ? "Bis {} sammeln."
                                          : std::string(form);
    };
    EXPECT_EQ(say("Collect by {}.", "2026-04-07").in(with_reader_days(german, 2026)),
              "Bis Di 7. Apr sammeln.");
}

TEST(WithReaderDays, LeavesAllElseThatIsVerbatim) {
    const auto words = with_reader_days(in_english, 2026);
    for (const auto* text :
         {"2026-02-30", "2026-04-07b", "26-01", "Wrenlea 2026-04-07", "plan-2026-04-07.csv"}) {
        EXPECT_EQ(say("{}", text).in(words), text);
    }
}

TEST(WithStoredDays, KeepsThemWhoeverRunsIt) {
    const auto until = say("until {}", "2026-04-07");
    EXPECT_EQ(until.in(with_stored_days(with_reader_days(in_english, 2026))), "until 2026-04-07");
}

TEST(WithReaderDays, SaysTheDaysInTextsOfTablesAndLeavesTheirDays) {
    Table table;
    table.rows.push_back({{Cell{say("until {}", "2026-04-07")}, Cell{testing::day_of("2026-04-07")}}});
    const auto told = spoken(table, with_reader_days(in_english, 2026));
    EXPECT_EQ(to_text(told.rows[0].cells[0]), "until Tue 7 Apr");
    EXPECT_EQ(to_text(told.rows[0].cells[1]), "2026-04-07");
}

}  // namespace
}  // namespace pipward::record
