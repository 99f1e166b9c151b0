// SPDX-License-Identifier: MIT
#include "pipward/cross/ploidy_attrition.h"

#include <gtest/gtest.h>

#include "testing.h"

namespace pipward::cross {
namespace {

TEST(PloidyAttrition, ScalesTheDiploidCrossIntoTheMeasuredRanges) {
    const auto rows = testing::oracle_rows("cross-ploidy-attrition.txt");
    ASSERT_EQ(rows.size(), 3U);
    const double diploid = (std::stod(rows[0].at(2)) + std::stod(rows[0].at(3))) / 2;
    for (const auto& row : rows) {
        const auto got = ploidy_attrition(std::stoi(row.at(0)), std::stoi(row.at(1)));
        EXPECT_GE(got.factor * diploid, std::stod(row.at(2))) << row[0] << " x " << row[1];
        EXPECT_LE(got.factor * diploid, std::stod(row.at(3))) << row[0] << " x " << row[1];
        EXPECT_TRUE(got.known);
        EXPECT_EQ(got.triploid, row[0] == "3" || row[1] == "3");
    }
}

TEST(PloidyAttrition, TakesUnknownPloidyForDiploidAndSaysWhatNobodyMeasured) {
    EXPECT_EQ(ploidy_attrition({}, {}).factor, 1);
    EXPECT_TRUE(ploidy_attrition({}, {}).known);
    EXPECT_FALSE(ploidy_attrition(4, 2).known);
    EXPECT_FALSE(ploidy_attrition(3, 3).known);
    EXPECT_LT(ploidy_attrition(3, 3).factor, ploidy_attrition(3, 2).factor);
}

}  // namespace
}  // namespace pipward::cross
