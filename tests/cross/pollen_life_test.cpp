// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/pollen_life.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <map>

#include "pipward/record/words.h"
#include "testing.h"

namespace pipward::cross {
namespace {

constexpr std::array stores{Store::room, Store::refrigerator, Store::freezer, Store::deep_freezer};
const Day collected{20'000};

PollenTest test_after(int days, int grains, int germinated) {
    return {0, "P", collected + days, grains, germinated};
}

double squared_departures(Store store, const std::vector<std::string>& row) {
    double squares = 0;
    for (int month = 1; month <= 6; ++month) {
        const double share = std::stod(row.at(2 + month)) / std::stod(row.at(2));
        squares += std::pow(detail::germination_kept(store, month) - share, 2);
    }
    return squares;
}

TEST(GerminationKept, FollowsTwelvePublishedSeriesFromTheirOwnStart) {
    std::map<Store, std::pair<double, int>> by_store;
    for (const auto& row : testing::oracle_rows("cross-pollen-storage.txt")) {
        const auto store = from_word<Store>(row.at(1)).value();
        by_store[store].first += squared_departures(store, row);
        by_store[store].second += 6;
    }
    EXPECT_EQ(by_store.size(), 4U);
    for (const auto& [store, sums] : by_store) {
        const double error = std::sqrt(sums.first / (sums.second + 3));  // month 0 counts too, and is exact
        const bool frozen = store == Store::freezer || store == Store::deep_freezer;
        EXPECT_EQ(sums.second, 18);
        EXPECT_LE(error, frozen ? 0.02 : 0.07) << to_word(store);
        EXPECT_NEAR(detail::germination_kept_sd(store), std::sqrt(sums.first / sums.second), 0.0006)
            << to_word(store);
    }
}

TEST(GerminationKept, LeavesNoSingleSeriesFarAside) {
    for (const auto& row : testing::oracle_rows("cross-pollen-storage.txt")) {
        const auto store = from_word<Store>(row.at(1)).value();
        EXPECT_LE(std::sqrt(squared_departures(store, row) / 6), 0.085) << row[0] << " " << row[1];
    }
}

TEST(GerminationKept, StandsAtTheFootOfWhatPearPollenKeptForAYear) {
    const auto rows = testing::oracle_rows("cross-pear-pollen-one-year.txt");
    EXPECT_EQ(rows.size(), 2U);
    for (const auto& row : rows) {
        const double kept = 100 * detail::germination_kept(from_word<Store>(row.at(0)).value(), 12);
        EXPECT_GE(kept, std::stod(row.at(1)) - 0.5) << row[0];
        EXPECT_LE(kept, std::stod(row.at(2))) << row[0];
    }
}

TEST(GerminationKept, StartsWholeFallsWithTimeAndFallsFasterWhereItIsWarmer) {
    for (const auto store : stores) {
        EXPECT_EQ(detail::germination_kept(store, 0), 1);
        EXPECT_EQ(detail::germination_kept(store, -1), 1);
    }
    for (double months = 0.1; months < 60; months += 0.1) {
        double warmer = 0;
        for (const auto store : stores) {
            EXPECT_LT(detail::germination_kept(store, months), detail::germination_kept(store, months - 0.1));
            EXPECT_GT(detail::germination_kept(store, months), warmer);
            warmer = detail::germination_kept(store, months);
        }
    }
}

TEST(Germination, OfUntestedFreshPollenIsTheTablesMonthZero) {
    const auto fresh = detail::germination_at(Store::freezer, collected, {}, collected, collected);
    EXPECT_DOUBLE_EQ(fresh.mean, (79 + 98 + 68 + 59) / 400.0);
    EXPECT_NEAR(fresh.sd, 0.17, 0.005);
    EXPECT_GT(detail::chance_usable(fresh, {0.3}), 0.99);
}

TEST(Germination, IsCarriedForwardFromTheLatestTestAtItsAge) {
    const std::vector tests{test_after(60, 200, 100)};
    const Day use = collected + 300;
    const auto at_use = detail::germination_at(Store::freezer, collected, tests, use, use);
    const double ratio = detail::germination_kept(Store::freezer, 300 / detail::days_a_month) /
                         detail::germination_kept(Store::freezer, 60 / detail::days_a_month);
    EXPECT_NEAR(at_use.mean, 0.5 * ratio, 1e-12);
}

TEST(Germination, OnTheDayOfATestIsTheTest) {
    const std::vector tests{test_after(200, 300, 60)};
    const auto now = detail::germination_at(Store::room, collected, tests, collected + 200, collected + 200);
    EXPECT_DOUBLE_EQ(now.mean, 0.2);
    EXPECT_NEAR(now.sd, std::sqrt(0.2 * 0.8 / 300), 0.002);
}

TEST(Germination, WeighsTestsOfOneFortnightByTheirGrains) {
    const std::vector tests{test_after(100, 300, 150), test_after(100, 100, 90)};
    const auto now =
        detail::germination_at(Store::freezer, collected, tests, collected + 100, collected + 100);
    EXPECT_DOUBLE_EQ(now.mean, 240.0 / 400);
}

TEST(Germination, LetsALaterTestReplaceAnOlderOne) {
    const std::vector tests{test_after(200, 100, 5), test_after(10, 1000, 900)};
    const auto now =
        detail::germination_at(Store::refrigerator, collected, tests, collected + 200, collected + 200);
    EXPECT_DOUBLE_EQ(now.mean, 0.05);
}

TEST(Germination, PassesOverTestsThatCannotBe) {
    const std::vector tests{test_after(50, 0, 0), test_after(50, 10, 11), test_after(-1, 100, 1),
                            test_after(90, 100, 1)};
    const Day as_of = collected + 80;
    const auto untested = detail::germination_at(Store::freezer, collected, {}, as_of, as_of);
    EXPECT_EQ(detail::germination_at(Store::freezer, collected, tests, as_of, as_of).mean, untested.mean);
    EXPECT_FALSE(detail::last_tested(collected, tests, as_of));
}

TEST(Germination, IsSurerTheMoreGrainsWereCounted) {
    double before = 1;
    for (const int grains : {10, 30, 100, 1000}) {
        const std::vector tests{test_after(30, grains, grains / 2)};
        const auto now =
            detail::germination_at(Store::freezer, collected, tests, collected + 30, collected + 40);
        EXPECT_LT(now.sd, before);
        before = now.sd;
    }
    EXPECT_GE(before, 0.015 * 0.5);
}

TEST(Germination, IsNeverTakenForCertainAfterATestWithoutGermination) {
    const std::vector tests{test_after(30, 20, 0)};
    const auto now = detail::germination_at(Store::freezer, collected, tests, collected + 30, collected + 30);
    EXPECT_EQ(now.mean, 0);
    EXPECT_GT(now.sd, 0.02);
}

TEST(ChanceUsable, IsHalfAtTheLimitAndGrowsWithGermination) {
    EXPECT_DOUBLE_EQ(detail::chance_usable({0.3, 0.1}, {0.3}), 0.5);
    double before = 0;
    for (double mean = 0; mean <= 1; mean += 0.05) {
        const double chance = detail::chance_usable({mean, 0.1}, {0.3});
        EXPECT_GT(chance, before);
        EXPECT_LE(chance, 1);
        before = chance;
    }
    EXPECT_EQ(detail::chance_usable({0.4, 0}, {0.3}), 1);
    EXPECT_EQ(detail::chance_usable({0.2, 0}, {0.3}), 0);
}

}  // namespace
}  // namespace pipward::cross
