// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/pollen_tube.h"

#include <array>
#include <cmath>

namespace pipward::cross::detail {
namespace {

constexpr double table_begins = 5;
constexpr double warmest = 15;
constexpr std::array<double, 11> index_from_5{8, 9, 10, 11, 12, 14, 17, 20, 25, 35, 50};
constexpr double home = 100;

}  // namespace

TubeIndex tube_index(Celsius daily_mean) {
    if (daily_mean.degrees >= warmest) {
        return {index_from_5.back(), daily_mean.degrees == warmest};
    }
    if (!(daily_mean.degrees >= table_begins)) {
        return {0, false};
    }
    const double at = daily_mean.degrees - table_begins;
    const auto below = static_cast<std::size_t>(at);
    const double part = at - std::floor(at);
    return {index_from_5[below] + part * (index_from_5[below + 1] - index_from_5[below]), true};
}

std::optional<TubeJourney> tube_journey(std::span<const double> daily_means_c) {
    TubeJourney journey;
    double gone = 0;
    for (const double mean : daily_means_c) {
        const auto today = tube_index({mean});
        ++journey.home_on_day;
        journey.inside_table = journey.inside_table && today.inside_table;
        if (gone + today.per_day >= home) {
            journey.days += (home - gone) / today.per_day;
            return journey;
        }
        gone += today.per_day;
        journey.days += 1;
    }
    return std::nullopt;
}

}  // namespace pipward::cross::detail
