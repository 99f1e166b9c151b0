// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/season_update.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pipward::bloom {
namespace {

TEST(SeasonUpdate, WithoutObservationsNothingMoves) {
    const auto update = detail::update_season({}, 2.5);
    EXPECT_EQ(update.others.luck, 0);
    EXPECT_DOUBLE_EQ(update.others.luck_sd, 2.5);
    const auto moved = update.of("Apple A", "", 1.5);
    EXPECT_EQ(moved.by, 0);
    EXPECT_EQ(moved.own_sd, 1.5);
}

// Two accessions, one note each; checked by summing the joint density over a fine grid of (s, e).
TEST(SeasonUpdate, AgreesWithBruteForce) {
    constexpr double season_sd = 2;
    const std::vector<detail::ObservationDeparture> remarks{{"A", 2.5, 1.2, 1.5}, {"B", 0.5, 1.0, 1.0}};
    const auto update = detail::update_season(remarks, season_sd);
    double total = 0;
    double luck = 0;
    double moved_a = 0;
    double square_a = 0;
    for (double s = -12; s <= 12; s += 0.05) {
        for (double e = -12; e <= 12; e += 0.05) {
            const double a = (2.5 - s - e) / 1.2;
            const double b_variance = 1.0 + 1.0;
            const double density =
                std::exp(-0.5 * (s * s / 4 + e * e / 2.25 + a * a + (0.5 - s) * (0.5 - s) / b_variance));
            total += density;
            luck += density * s;
            moved_a += density * (s + e);
            square_a += density * (s + e) * (s + e);
        }
    }
    const auto moved = update.of("A", "", 1.5);
    EXPECT_NEAR(update.species.at("").luck, luck / total, 1e-3);
    EXPECT_NEAR(moved.by, moved_a / total, 1e-3);
    const double variance = square_a / total - moved.by * moved.by;
    EXPECT_NEAR(std::hypot(moved.season_sd, moved.own_sd), std::sqrt(variance), 1e-3);
}

TEST(SeasonUpdate, ObservationsNarrowTheNotedMostAndTheOthersABit) {
    const std::vector<detail::ObservationDeparture> remarks{
        {"A", 3, 1, 1.5}, {"B", 3, 1, 1.5}, {"C", 3, 1, 1.5}};
    const auto update = detail::update_season(remarks, 2.5);
    const auto observed = update.of("A", "", 1.5);
    const auto other = update.of("D", "", 1.5);
    EXPECT_GT(other.by, 1);
    EXPECT_GT(observed.by, other.by);
    EXPECT_LT(observed.by, 3);
    EXPECT_LT(other.season_sd, 2.5);
    EXPECT_LT(std::hypot(observed.season_sd, observed.own_sd), std::hypot(other.season_sd, other.own_sd));
}

// A pear's note, summed over a fine grid of what all share and what the pears have beside it.
TEST(SeasonUpdate, ANoteTellsLessOfAnotherSpecies) {
    const std::vector<detail::ObservationDeparture> remarks{{"Pear A", 4, 1, 1.5, "Pyrus communis"}};
    const auto update = detail::update_season(remarks, 2.5);
    constexpr double shared = 0.8 * 2.5 * 2.5;
    constexpr double apart = 0.2 * 2.5 * 2.5;
    double total = 0;
    double of_all = 0;
    double of_pears = 0;
    for (double s = -14; s <= 14; s += 0.05) {
        for (double g = -14; g <= 14; g += 0.05) {
            const double rest = 4 - s - g;
            const double density =
                std::exp(-0.5 * (s * s / shared + g * g / apart + rest * rest / (1.0 + 2.25)));
            total += density;
            of_all += density * s;
            of_pears += density * (s + g);
        }
    }
    EXPECT_NEAR(update.of("Apple A", "Malus domestica", 1.5).by, of_all / total, 1e-3);
    EXPECT_NEAR(update.of("Pear B", "Pyrus communis", 1.5).by, of_pears / total, 1e-3);
    EXPECT_LT(of_all, of_pears);
}

TEST(SeasonUpdate, ASlipOfThePenIsTakenForOne) {
    const std::vector<detail::ObservationDeparture> near{{"A", 5, 1, 1.5}};
    const std::vector<detail::ObservationDeparture> slip{{"A", 40, 1, 1.5}};
    EXPECT_LT(detail::update_season(slip, 2.5).species.at("").luck,
              2 * detail::update_season(near, 2.5).species.at("").luck);
}

}  // namespace
}  // namespace pipward::bloom
