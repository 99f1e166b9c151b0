// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/pooling.h"

#include <gtest/gtest.h>

#include <cmath>

#include "pipward/bloom/detail/spread.h"

namespace pipward::bloom {
namespace {

struct Dated {
    int accession;
    int season;
    double day;
    double weight = 1;
};

std::vector<detail::PoolRow> rows_of(const std::vector<Dated>& dates) {
    std::vector<detail::PoolRow> rows;
    for (const auto& date : dates) {
        rows.push_back({date.accession, date.season, date.weight, {&date.day, 1}});
    }
    return rows;
}

TEST(Pooling, OneAccessionGetsItsPlainMean) {
    const std::vector<Dated> dates{{0, 0, 100}, {0, 1, 110}, {0, 2, 105}, {0, 3, 97}};
    const auto pooled = detail::pool_needs(rows_of(dates), {1, 4, 1}, 2);
    EXPECT_NEAR(pooled.needs[0][0], 103, 1e-9);
    EXPECT_NEAR(pooled.centre[0], 103, 1e-9);
}

TEST(Pooling, AHeavierNoteCountsForMore) {
    const std::vector<Dated> dates{{0, 0, 100, 1}, {0, 1, 110, 0.25}};
    EXPECT_NEAR(detail::pool_needs(rows_of(dates), {1, 2, 1}, 2).needs[0][0], 102, 1e-9);
}

TEST(Pooling, ANeedLiesBetweenItsOwnMeanAndTheCentre) {
    const std::vector<Dated> dates{{0, 0, 100}, {0, 1, 100}, {1, 0, 112}, {1, 1, 112}};
    const auto pooled = detail::pool_needs(rows_of(dates), {2, 2, 1}, 2);
    EXPECT_NEAR(pooled.centre[0], 106, 1e-6);
    EXPECT_NEAR(pooled.needs[0][0], 103, 1e-6);
    EXPECT_NEAR(pooled.needs[1][0], 109, 1e-6);
}

TEST(Pooling, AnAccessionSeenOnlyInEarlySpringsIsNotMisjudged) {
    // Two accessions with the same need; the second was noted only in springs that ran 6 days early.
    std::vector<Dated> dates;
    for (int season = 0; season < 8; ++season) {
        const double luck = season % 2 == 0 ? -6 : 6;
        for (int accession = 0; accession < 4; ++accession) {
            dates.push_back({accession, season, 110 + luck});
        }
        if (season % 2 == 0) {
            dates.push_back({4, season, 110 + luck});
        }
    }
    const auto pooled = detail::pool_needs(rows_of(dates), {5, 8, 1}, 0.1);
    EXPECT_NEAR(pooled.needs[4][0], pooled.needs[0][0], 1.5);
    EXPECT_GT(pooled.needs[4][0], 108);
}

TEST(Pooling, LearnsHowFarAccessionsDiffer) {
    std::vector<Dated> near;
    std::vector<Dated> far;
    for (int season = 0; season < 6; ++season) {
        for (int accession = 0; accession < 10; ++accession) {
            const double noise = (season * 7 + accession * 3) % 5 - 2.0;
            near.push_back({accession, season, 110 + 0.1 * accession + noise});
            far.push_back({accession, season, 110 + 2.0 * accession + noise});
        }
    }
    const auto alike = detail::pool_strength(rows_of(near), {10, 6, 1});
    const auto apart = detail::pool_strength(rows_of(far), {10, 6, 1});
    EXPECT_LT(apart.pull, 0.3);
    EXPECT_GT(alike.pull, 1);
    EXPECT_NEAR(apart.between_sd, 5.2, 0.8);
}

TEST(Pooling, WithoutNumbersThePullIsTwo) {
    const std::vector<Dated> one{{0, 0, 110}};
    EXPECT_NEAR(detail::pool_strength(rows_of(one), {1, 1, 1}).pull, 2, 0.01);
}

TEST(Pooling, ObservationsOfOneSpringAreWorthFewerThanTheirNumber) {
    EXPECT_EQ(detail::effective_number(1), 1);
    EXPECT_NEAR(detail::effective_number(18), 1.607, 1e-3);
    EXPECT_LT(detail::effective_number(1000), 1 / detail::shared_luck);
}

TEST(Spread, BeginsAtThePriorAndLearns) {
    const std::vector<detail::SpreadRow> none{};
    const auto prior = detail::season_and_own_spread(none, 0, 0);
    EXPECT_NEAR(std::hypot(prior.season_sd, prior.own_sd), 3.5, 1e-9);
    std::vector<detail::SpreadRow> exact;
    std::vector<detail::SpreadRow> wild;
    for (int season = 0; season < 20; ++season) {
        for (int i = 0; i < 5; ++i) {
            exact.push_back({season, i, 0.1 * i});
            wild.push_back({season, i, season % 2 == 0 ? 9.0 : -9.0});
        }
    }
    EXPECT_LT(detail::season_and_own_spread(exact, 20, 5).own_sd, 1.0);
    EXPECT_LT(detail::season_and_own_spread(exact, 20, 5).season_sd, 1.6);
    EXPECT_GT(detail::season_and_own_spread(wild, 20, 5).season_sd, 7);
    EXPECT_LT(detail::season_and_own_spread(wild, 20, 5).own_sd, 1.0);
}

TEST(Spread, WhereNoSeasonHasTwoAccessionsTheWholeIsSharedOut) {
    std::vector<detail::SpreadRow> alone;
    for (int season = 0; season < 200; ++season) {
        alone.push_back({season, 0, season % 2 == 0 ? 2.0 : -2.0});
    }
    const auto spread = detail::season_and_own_spread(alone, 200, 1);
    EXPECT_NEAR(std::hypot(spread.season_sd, spread.own_sd), 2, 0.1);
    EXPECT_NEAR(spread.season_sd * spread.season_sd / (spread.own_sd * spread.own_sd), 1.5, 1e-9);
}

TEST(Spread, AnAccessionHasItsOwn) {
    std::vector<detail::SpreadRow> rows;
    for (int season = 0; season < 30; ++season) {
        for (int i = 0; i < 4; ++i) {
            rows.push_back({season, i, season % 2 == 0 ? 0.5 * i : -0.5 * i});
        }
        rows.push_back({season, 4, season % 2 == 0 ? 6.0 : -6.0});
    }
    const auto spread = detail::season_and_own_spread(rows, 30, 5);
    EXPECT_GT(spread.own_sd_of[4], spread.own_sd);
    EXPECT_LT(spread.own_sd_of[1], spread.own_sd);
}

TEST(Pooling, ASpeciesLeansOnItsOwn) {
    // Two apples on day 120, two pears on day 106, and a third pear noted once, in an usual spring.
    std::vector<Dated> dates;
    for (int season = 0; season < 8; ++season) {
        for (const int apple : {0, 1}) {
            dates.push_back({apple, season, 120});
        }
        for (const int pear : {2, 3}) {
            dates.push_back({pear, season, 106});
        }
    }
    dates.push_back({4, 3, 106});
    detail::PoolShape shape{6, 8, 1, {0, 0, 1, 1, 1, 2}, {0, 1, 1}};
    const auto pooled = detail::pool_needs(rows_of(dates), shape, 2);
    EXPECT_NEAR(pooled.needs[4][0], 106, 0.5);
    EXPECT_NEAR(pooled.species_centres[0][0], 120, 0.5);
    EXPECT_NEAR(pooled.species_centres[1][0], 106, 0.5);
    // Another species of the pears' genus, of which nothing was noted, stands at the genus.
    EXPECT_NEAR(pooled.species_centres[2][0], 106, 1);
    EXPECT_EQ(pooled.centre_of[1], detail::CentreOf::species);
    EXPECT_EQ(pooled.centre_of[2], detail::CentreOf::genus);
}

}  // namespace
}  // namespace pipward::bloom
