// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/structures.h"

#include <gtest/gtest.h>

#include <set>

#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::orchard_latitude;
using testing::spring_weather;

SeasonCurves curves_with(double warmer) {
    const auto weather = spring_weather(2022, warmer);
    return season_curves(weather.days, weather.first, orchard_latitude, {0});
}

TEST(Structures, EachMethodHasItsFixedSet) {
    EXPECT_EQ(detail::structures_of(BloomMethod::averaged).size(), 132U);
    EXPECT_EQ(detail::structures_of(BloomMethod::chill_then_heat).size(), 24U);
    EXPECT_EQ(detail::structures_of(BloomMethod::degree_days).size(), 1U);
    EXPECT_EQ(detail::structures_of(BloomMethod::mean_day).size(), 1U);
}

TEST(Structures, EveryStructureHasANameOfItsOwn) {
    for (const auto method : bloom_methods()) {
        const int count = static_cast<int>(detail::structures_of(method).size());
        std::set<std::string> names;
        for (int i = 0; i < count; ++i) {
            names.insert(structure_name(method, i));
        }
        EXPECT_EQ(static_cast<int>(names.size()), count);
        EXPECT_FALSE(names.contains(""));
        EXPECT_EQ(structure_name(method, count), "");
        EXPECT_EQ(structure_name(method, -1), "");
    }
    EXPECT_EQ(structure_name(BloomMethod::chill_then_heat, 3), "sigmoid heat from 60 chill portions");
    EXPECT_EQ(structure_name(BloomMethod::degree_days, 0), "degree-days from 1 January (south: 2 July)");
}

TEST(Structures, ThePriorIsThePublishedOne) {
    for (const auto& structure : detail::structures_of(BloomMethod::averaged)) {
        if (structure.summed == detail::Summed::sigmoid && structure.start_by == detail::StartBy::chill &&
            structure.start == 80 && structure.overlap == 0.06) {
            EXPECT_NEAR(structure.penalty, 12.0 / 18 * 12 / 18 + 1 + 1.2 - 0.7, 1e-12);
        }
        if (structure.summed == detail::Summed::linear_6_25 &&
            structure.start_by == detail::StartBy::season_day && structure.start == 45 &&
            structure.overlap == 0) {
            EXPECT_NEAR(structure.penalty, 0.25, 1e-12);
        }
    }
}

TEST(Structures, AnAmountAndItsDayAreEachOthersInverse) {
    const auto curves = curves_with(0);
    for (const auto method : bloom_methods()) {
        for (const auto& run : detail::runs_of(method, curves, {-0.3})) {
            EXPECT_NEAR(detail::day_of(run, detail::amount_by(run, 112.25)), 112.25, 1e-6);
        }
    }
}

TEST(Structures, AWarmerSpringReachesTheSameAmountEarlier) {
    const auto usual = curves_with(0);
    const auto warmer = curves_with(1);
    for (const auto& structure : {BloomMethod::degree_days, BloomMethod::averaged}) {
        const auto here = detail::runs_of(structure, usual, {});
        const auto there = detail::runs_of(structure, warmer, {});
        int earlier = 0;
        for (std::size_t i = 0; i < here.size(); ++i) {
            const double amount = detail::amount_by(here[i], 115);
            earlier += detail::day_of(there[i], amount) < 115 ? 1 : 0;
        }
        EXPECT_EQ(earlier, static_cast<int>(here.size()));
    }
}

TEST(Structures, AWinterRichInChillAsksForLessHeat) {
    auto poor = curves_with(0);
    auto rich = poor;
    for (double& chill : rich.chill) {
        chill *= 1.2;
    }
    const auto structures = detail::structures_of(BloomMethod::averaged);
    const auto with_poor = detail::runs_of(BloomMethod::averaged, poor, {});
    const auto with_rich = detail::runs_of(BloomMethod::averaged, rich, {});
    for (std::size_t i = 0; i < structures.size(); ++i) {
        if (structures[i].overlap > 0) {
            EXPECT_LT(with_rich[i].factor, with_poor[i].factor);
        } else {
            EXPECT_EQ(with_rich[i].factor, 1);
        }
    }
}

TEST(Structures, AWinterThatNeverReachesTheChillStartsOnFirstMarch) {
    auto curves = curves_with(0);
    for (double& chill : curves.chill) {
        chill = std::min(chill, 20.0);
    }
    const auto structures = detail::structures_of(BloomMethod::chill_then_heat);
    const auto runs = detail::runs_of(BloomMethod::chill_then_heat, curves, {});
    for (std::size_t i = 0; i < structures.size(); ++i) {
        EXPECT_DOUBLE_EQ(runs[i].at_start, value_at(runs[i].sums, detail::latest_start));
    }
}

TEST(Structures, TheMeanDayKnowsHeightOnlyByTheOffset) {
    const auto curves = curves_with(0);
    const auto station = detail::runs_of(BloomMethod::mean_day, curves, {0});
    const auto higher = detail::runs_of(BloomMethod::mean_day, curves, {-0.65});
    EXPECT_NEAR(detail::day_of(higher[0], 110) - detail::day_of(station[0], 110), 3.28, 0.01);
}

}  // namespace
}  // namespace pipward::bloom
