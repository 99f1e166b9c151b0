// SPDX-License-Identifier: MIT
#include "pipward/weather/filled_days.h"

#include <gtest/gtest.h>

namespace pipward::weather {
namespace {

TEST(FilledDays, AreCountedInWords) {
    EXPECT_EQ(filled_days_words(1), "1 missing day was filled from its neighbours.");
    EXPECT_EQ(filled_days_words(4), "4 missing days in short gaps were filled from their neighbours.");
}

}  // namespace
}  // namespace pipward::weather
