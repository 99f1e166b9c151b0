// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/unit_change.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/math/quantile.h"

namespace pipward::intake::detail {
namespace {

using enum TemperatureUnit;

constexpr std::size_t side = 10;
constexpr int longest_gap = 31;
constexpr int days_of_a_year = 365;
constexpr double least_leap = 20;
constexpr double tolerance = 8;  // in degrees Celsius

struct Medians {
    double t_min = 0;
    double t_max = 0;
};

Medians medians_of(std::span<const RawReading> readings) {
    std::array<std::vector<double>, 2> values;
    for (const auto& reading : readings) {
        values[0].push_back(reading.t_min);
        values[1].push_back(reading.t_max);
    }
    return {math::middle_value(std::move(values[0])), math::middle_value(std::move(values[1]))};
}

/// The readings to hold those from `at` on against: the last ones, or those of the year before after a long
/// gap.
std::span<const RawReading> before(std::span<const RawReading> readings, std::size_t at) {
    if (readings[at].day - readings[at - 1].day <= longest_gap) {
        return readings.subspan(at - side, side);
    }
    const auto wanted = readings[at].day - days_of_a_year;
    const auto begin = std::ranges::lower_bound(readings, wanted, {}, &RawReading::day);
    const auto place = static_cast<std::size_t>(begin - readings.begin());
    const bool is_near = place + side <= at && readings[place].day - wanted <= longest_gap;
    return is_near ? readings.subspan(place, side) : std::span<const RawReading>{};
}

double from_celsius(double degrees, TemperatureUnit unit) {
    return unit == fahrenheit ? degrees * 1.8 + 32 : unit == tenths_celsius ? degrees * 10 : degrees;
}

struct Pair {
    TemperatureUnit before;
    TemperatureUnit after;
};

bool explains(const Pair& pair, double low, double high) {
    const double expected = from_celsius(to_celsius(low, pair.before).degrees, pair.after);
    const double unit = from_celsius(1, pair.after) - from_celsius(0, pair.after);
    return std::abs(high - low) >= least_leap && std::abs(high - expected) < tolerance * unit;
}

std::optional<Pair> change_at(const Medians& before, const Medians& after) {
    // Tenths are told by whole figures as well; here their leap alone must be beyond any weather.
    constexpr std::array pairs{Pair{celsius, fahrenheit}, Pair{fahrenheit, celsius},
                               Pair{celsius, tenths_celsius}, Pair{tenths_celsius, celsius}};
    constexpr double leap_of_tenths = 30;
    for (const Pair& pair : pairs) {
        const bool tenths = pair.before == tenths_celsius || pair.after == tenths_celsius;
        const bool leaps = !tenths || std::abs(after.t_min - before.t_min) >= leap_of_tenths;
        if (leaps && explains(pair, before.t_min, after.t_min) && explains(pair, before.t_max, after.t_max)) {
            return pair;
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<UnitChange> find_unit_change(std::span<const RawReading> by_day) {
    std::optional<UnitChange> found;
    double steepest = 0;
    for (std::size_t at = side; at + side <= by_day.size(); ++at) {
        const auto earlier = before(by_day, at);
        const auto old = earlier.empty() ? Medians{} : medians_of(earlier);
        const auto now = medians_of(by_day.subspan(at, side));
        const auto pair = earlier.empty() ? std::nullopt : change_at(old, now);
        if (!pair && found) {
            return found;
        }
        // Where the medians leap most; on either side of it they already feel the change.
        const double leap = std::abs(by_day[at].t_max - by_day[at - 1].t_max);
        if (pair && leap > steepest) {
            steepest = leap;
            found = UnitChange{by_day[at].line, by_day[at].day, pair->before, pair->after};
        }
    }
    return found;
}

}  // namespace pipward::intake::detail
