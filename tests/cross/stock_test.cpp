// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/stock.h"

#include <gtest/gtest.h>

namespace pipward::cross {
namespace {

const Day stock_day = make_day({2026, 4, 1}).value();

PollenLot lot_of(Day collected_on, double milligrams, int flowers) {
    PollenLot lot;
    lot.donor = "Wrenlea";
    lot.collected_on = collected_on;
    lot.mass = Milligrams{milligrams};
    lot.flowers = flowers;
    return lot;
}

TEST(Stock, WeighsPollenByWhatWasGatheredUntilTheDay) {
    Orchard orchard;
    orchard.pollen_lots = {lot_of(make_day({2025, 4, 20}).value(), 60, 100),
                           lot_of(make_day({2024, 4, 20}).value(), 20, 100)};
    bloom::BloomForecast forecast;
    forecast.as_of = stock_day;
    const auto before = detail::pollen_per_flower(detail::stock_of(orchard, forecast), "Wrenlea", {1});
    EXPECT_DOUBLE_EQ(before.value, 0.4);  // (60 + 20) mg of 200 flowers

    orchard.pollen_lots.push_back(lot_of(make_day({2026, 4, 20}).value(), 500, 100));
    const auto after = detail::pollen_per_flower(detail::stock_of(orchard, forecast), "Wrenlea", {1});
    EXPECT_DOUBLE_EQ(after.value, before.value);
}

TEST(Stock, FallsBackOnAllDonorsThenOnTheFigureGiven) {
    Orchard orchard;
    bloom::BloomForecast forecast;
    forecast.as_of = stock_day;
    EXPECT_DOUBLE_EQ(detail::pollen_per_flower(detail::stock_of(orchard, forecast), "Corvell", {1}).value, 1);
    orchard.pollen_lots = {lot_of(make_day({2025, 4, 20}).value(), 60, 100)};
    EXPECT_DOUBLE_EQ(detail::pollen_per_flower(detail::stock_of(orchard, forecast), "Corvell", {1}).value,
                     0.6);
}

}  // namespace
}  // namespace pipward::cross
