// SPDX-License-Identifier: MIT
#include "pipward/value/day.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

TEST(Day, CountsFromTheFirstOfJanuary1970) {
    EXPECT_EQ(make_day({1970, 1, 1})->since_1970, 0);
    EXPECT_EQ(make_day({1969, 12, 31})->since_1970, -1);
    // 2000-03-01 is 11017 days after 1970-01-01: `date -u -d 2000-03-01 +%s` divided by 86400.
    EXPECT_EQ(make_day({2000, 3, 1})->since_1970, 11017);
}

TEST(Day, RefusesDaysThatDoNotExist) {
    EXPECT_FALSE(make_day({2026, 2, 29}));
    EXPECT_TRUE(make_day({2028, 2, 29}));
    EXPECT_FALSE(make_day({2100, 2, 29}));
    EXPECT_FALSE(make_day({2026, 13, 1}));
    EXPECT_FALSE(make_day({2026, 6, 31}));
    EXPECT_FALSE(make_day({2026, 0, 1}));
    EXPECT_FALSE(make_day({0, 1, 1}));
    EXPECT_FALSE(make_day({10000, 1, 1}));
}

TEST(Day, ReadsIsoOnly) {
    EXPECT_EQ(parse_iso_day("2026-03-20"), make_day({2026, 3, 20}));
    for (const auto* text : {"2026-3-20", "20260320", "2026/03/20", "2026-03-2x", "2026-03-20 ", "-026-03-20",
                             "", "2026-02-30", "2026-+3-20"}) {
        EXPECT_FALSE(parse_iso_day(text)) << text;
    }
}

TEST(Day, TextAndPartsComeBackForEveryDayOfFourCenturies) {
    const Day first = *make_day({1900, 1, 1});
    for (int n = 0; n < 146097; n += 13) {
        const Day day = first + n;
        EXPECT_EQ(parse_iso_day(to_iso(day)), day);
        EXPECT_EQ(make_day(parts_of(day)), day);
    }
}

TEST(Day, KnowsItsPlaceInTheYear) {
    EXPECT_EQ(day_of_year(*make_day({2026, 1, 1})), 1);
    EXPECT_EQ(day_of_year(*make_day({2026, 12, 31})), 365);
    EXPECT_EQ(day_of_year(*make_day({2028, 12, 31})), 366);
    // FAO-56 (Allen et al. 1998), example 8: 3 September is day 246.
    EXPECT_EQ(day_of_year(*make_day({2026, 9, 3})), 246);
}

TEST(Day, ShortTextIsEnglishAndHasNoYear) {
    EXPECT_EQ(to_short_text(*make_day({2026, 4, 9})), "9 Apr");
}

}  // namespace
}  // namespace pipward
