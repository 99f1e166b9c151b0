// SPDX-License-Identifier: MIT
#include "pipward/seed/log_rank.h"

#include <gtest/gtest.h>

#include "testing.h"

namespace pipward::seed {
namespace {

GerminationTimes lot_of(const std::string& name) {
    GerminationTimes times;
    for (const auto& row : testing::oracle_rows("seed-log-rank.txt")) {
        if (row[0] == name) {
            auto& into = row[3] == "event" ? times.germinated : times.censored;
            into.push_back({std::stod(row[1]), std::stoi(row[2])});
        }
    }
    return times;
}

// Expected 19.25 and 10.75, chi-square 16.79: Cox & Oakes 1984, from memory.
TEST(LogRank, AgreesWithTheTextbookExample) {
    const auto test = log_rank(lot_of("treated"), lot_of("placebo")).value();
    EXPECT_NEAR(test.expected_a, 19.25, 0.005);
    EXPECT_NEAR(test.expected_b, 10.75, 0.005);
    EXPECT_NEAR(test.chi_square, 16.79, 0.005);
    EXPECT_NEAR(test.p, 0.0000417, 0.0000001);
}

TEST(LogRank, IsTheSameWithTheLotsTurnedRound) {
    const auto one = log_rank(lot_of("treated"), lot_of("placebo")).value();
    const auto other = log_rank(lot_of("placebo"), lot_of("treated")).value();
    EXPECT_NEAR(one.chi_square, other.chi_square, 1e-9);
}

TEST(LogRank, SeesNoDifferenceBetweenALotAndItself) {
    const auto test = log_rank(lot_of("treated"), lot_of("treated")).value();
    EXPECT_NEAR(test.chi_square, 0, 1e-12);
    EXPECT_NEAR(test.p, 1, 1e-6);
}

TEST(LogRank, SaysNothingWhereNothingGerminated) {
    EXPECT_FALSE(log_rank({{}, {{30, 12}}}, {{}, {{30, 9}}}));
    EXPECT_FALSE(log_rank({}, {{{3, 4}}, {}}));
}

}  // namespace
}  // namespace pipward::seed
