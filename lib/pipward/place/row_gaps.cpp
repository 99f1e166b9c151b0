// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_gaps.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/quantile.h"

namespace pipward::place::detail {
namespace {

constexpr double as_wide = 0.12;  // as most gaps, either way
constexpr double most_even = 0.55;
constexpr double whole = 0.2;

bool is_periodic(std::span<const int> skipped) {
    std::vector<std::size_t> at;
    for (std::size_t i = 0; i < skipped.size(); ++i) {
        if (skipped[i] > 0) {
            at.push_back(i);
        }
    }
    if (at.size() < 3) {
        return false;
    }
    const auto step = at[1] - at[0];
    for (std::size_t i = 1; i < at.size(); ++i) {
        if (at[i] - at[i - 1] != step) {
            return false;
        }
    }
    return at.front() <= step && skipped.size() - at.back() <= step;
}

}  // namespace

GapReading read_gaps(std::span<const double> gaps) {
    GapReading reading{std::vector<int>(gaps.size(), 0)};
    const double usual = math::median({gaps.begin(), gaps.end()});
    const auto even =
        std::ranges::count_if(gaps, [&](double gap) { return std::abs(gap / usual - 1) < as_wide; });
    if (static_cast<double>(even) < most_even * static_cast<double>(gaps.size())) {
        return reading;
    }
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        const double times = gaps[i] / usual;
        const double near = std::round(times);
        reading.skipped[i] = near >= 2 && std::abs(times - near) < whole ? static_cast<int>(near) - 1 : 0;
    }
    reading.alleys = is_periodic(reading.skipped);
    return reading;
}

}  // namespace pipward::place::detail
