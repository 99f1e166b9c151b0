// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/day_words.h"

#include <gtest/gtest.h>

namespace pipward::paper {
namespace {

TEST(DayWords, StateTheYearInFull) {
    const auto equinox = *parse_iso_day("2026-03-20");
    EXPECT_EQ(detail::long_day(equinox), "20 March 2026");
    EXPECT_EQ(detail::work_day(equinox), "Fri 20 Mar");
}

}  // namespace
}  // namespace pipward::paper
