// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/effective_pollination.h"

#include <algorithm>

#include "pipward/cross/detail/pollen_tube.h"
#include "pipward/math/quantile.h"

namespace pipward::cross::detail {
namespace {

// 'Comice', Tromp & Borsboom 1994: middle of the period, plus the tubes' journey at that temperature.
constexpr double cool = 13;
constexpr double warm = 17;
constexpr double life_cool = 5 + 4;
constexpr double life_warm = 3 + 2;

// Colder than measured: half the pace of the measured span, down to where English apples are known to set.
constexpr double coolest_day = 9;
constexpr double slower = 0.5;

// No ovule outlives this, so a longer journey need not be followed.
constexpr std::size_t longest_journey = 12;

}  // namespace

double effective_pollination_days(double ovule_days, double tube_days, double receptive_days) {
    return std::max(0.0, std::min(receptive_days, ovule_days - tube_days));
}

// A straight line through both measured points; half as steep below the cooler one.
double ovule_life_days(Celsius daily_mean) {
    constexpr double days_a_degree = (life_cool - life_warm) / (warm - cool);
    const double degrees = std::clamp(daily_mean.degrees, coolest_day, warm);
    return life_cool + days_a_degree * (cool - degrees) * (degrees < cool ? slower : 1);
}

double effective_pollination_days(std::span<const double> daily_means_c) {
    const auto journey = tube_journey(daily_means_c.first(std::min(longest_journey, daily_means_c.size())));
    if (!journey) {
        return 0;
    }
    const auto early = daily_means_c.first(
        std::min<std::size_t>(static_cast<std::size_t>(stigma_days), daily_means_c.size()));
    return effective_pollination_days(ovule_life_days({math::mean(early)}), journey->days);
}

}  // namespace pipward::cross::detail
