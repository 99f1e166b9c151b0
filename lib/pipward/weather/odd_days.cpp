// SPDX-License-Identifier: MIT
#include "pipward/weather/odd_days.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace pipward::weather {
namespace {

using Extreme = Celsius DailyTemperature::*;

constexpr int days_around = 7;
constexpr std::size_t enough_around = 6;
constexpr double far_from_zero = 5;
constexpr int fewest_zeros_on_end = 3;
constexpr double point_tolerance = 5;

const DailyTemperature* observed(const DailySeries& series, Day day) {
    if (day < series.first || day >= series.end()) {
        return nullptr;
    }
    const auto& place = series.days[static_cast<std::size_t>(day - series.first)];
    return place && place->origin == DayOrigin::observed ? &*place : nullptr;
}

bool both_zero(const DailyTemperature& day) {
    return day.t_min.degrees == 0 && day.t_max.degrees == 0;
}

/// One extreme of the days around, sorted; zeros that stand for nothing left out.
std::vector<double> around(const DailySeries& series, Day day, Extreme extreme) {
    std::vector<double> values;
    for (int offset = -days_around; offset <= days_around; ++offset) {
        const auto* other = offset == 0 ? nullptr : observed(series, day + offset);
        if (other != nullptr && !both_zero(*other)) {
            values.push_back((other->*extreme).degrees);
        }
    }
    std::ranges::sort(values);
    return values;
}

/// Whether most readings are written with tenths: only there can a point be lost.
bool has_tenths(const DailySeries& series) {
    std::ptrdiff_t whole = 0;
    std::ptrdiff_t broken = 0;
    for (const auto& day : series.days) {
        if (day) {
            for (const double value : {day->t_min.degrees, day->t_max.degrees}) {
                ++(value == std::round(value) ? whole : broken);
            }
        }
    }
    return broken > whole;
}

/// How many days with two zeros stand on end, this one among them.
int zeros_on_end_at(const DailySeries& series, Day day) {
    const auto is_zero = [&](Day other) {
        const auto* reading = observed(series, other);
        return reading != nullptr && both_zero(*reading);
    };
    int days = 1;
    for (int before = 1; days < fewest_zeros_on_end && is_zero(day - before); ++before) {
        ++days;
    }
    for (int behind = 1; days < fewest_zeros_on_end && is_zero(day + behind); ++behind) {
        ++days;
    }
    return days;
}

OddDay zero_day(const DailySeries& series, Day day) {
    const auto highs = around(series, day, &DailyTemperature::t_max);
    const bool is_far = !highs.empty() && std::abs(highs[highs.size() / 2]) > far_from_zero;
    const bool is_nothing = is_far || zeros_on_end_at(series, day) >= fewest_zeros_on_end;
    return {day, is_nothing ? Oddity::zeros_for_missing : Oddity::both_zero};
}

std::optional<OddDay> far_off(const DailySeries& series, Day day, Extreme extreme, bool with_tenths) {
    const auto others = around(series, day, extreme);
    if (others.size() <= enough_around) {
        return std::nullopt;
    }
    const double low = others[1];
    const double high = others[others.size() - 2];
    const Celsius reading = observed(series, day)->*extreme;
    const double value = reading.degrees;
    if (low - value <= far_off_degrees && value - high <= far_off_degrees) {
        return std::nullopt;
    }
    const bool fits_with_point = with_tenths && value == std::round(value) &&
                                 value / 10 >= low - point_tolerance && value / 10 <= high + point_tolerance;
    return OddDay{day, fits_with_point ? Oddity::point_lost : Oddity::far_off, reading, {low}, {high}};
}

/// Of the lowest, else of the highest.
void add_far_off(const DailySeries& series, Day day, bool with_tenths, std::vector<OddDay>& odd) {
    auto found = far_off(series, day, &DailyTemperature::t_min, with_tenths);
    found = found ? found : far_off(series, day, &DailyTemperature::t_max, with_tenths);
    if (found) {
        odd.push_back(*found);
    }
}

/// How many observed days from `day` on have what `same` calls the same reading.
template <class Same>
int run_from(const DailySeries& series, Day day, Same same) {
    const auto* first = observed(series, day);
    int days = 0;
    while (first != nullptr && observed(series, day + days) != nullptr &&
           same(*first, *observed(series, day + days))) {
        ++days;
    }
    return days;
}

void add_runs(const DailySeries& series, int fewest, auto same, Celsius DailyTemperature::*shown,
              std::vector<OddDay>& odd) {
    for (Day day = series.first; day < series.end();) {
        const int days = run_from(series, day, same);
        if (days >= fewest && !both_zero(*observed(series, day))) {
            odd.push_back({day, Oddity::unchanging, observed(series, day)->*shown, {}, {}, days});
        }
        day = day + std::max(days, 1);
    }
}

void add_unchanging(const DailySeries& series, std::vector<OddDay>& odd) {
    using T = DailyTemperature;
    const auto begin = odd.size();
    add_runs(
        series, days_of_two_unchanging,
        [](const T& a, const T& b) { return a.t_min == b.t_min && a.t_max == b.t_max; }, &T::t_min, odd);
    const auto is_told = [&](Day day) {
        return std::any_of(odd.begin() + static_cast<std::ptrdiff_t>(begin), odd.end(),
                           [&](const OddDay& other) { return other.day == day; });
    };
    for (const Extreme extreme : {&T::t_min, &T::t_max}) {
        std::vector<OddDay> runs;
        add_runs(
            series, days_of_one_unchanging,
            [extreme](const T& a, const T& b) { return a.*extreme == b.*extreme; }, extreme, runs);
        std::ranges::copy_if(runs, std::back_inserter(odd),
                             [&](const OddDay& run) { return !is_told(run.day); });
    }
}

}  // namespace

std::vector<OddDay> odd_days(const DailySeries& series) {
    std::vector<OddDay> odd;
    const bool with_tenths = has_tenths(series);
    for (Day day = series.first; day < series.end(); day = day + 1) {
        const auto* reading = observed(series, day);
        if (reading != nullptr && both_zero(*reading)) {
            odd.push_back(zero_day(series, day));
        } else if (reading != nullptr) {
            add_far_off(series, day, with_tenths, odd);
        }
    }
    add_unchanging(series, odd);
    std::ranges::stable_sort(odd, {}, &OddDay::day);
    return odd;
}

bool is_no_reading(Oddity oddity) {
    return oddity == Oddity::zeros_for_missing || oddity == Oddity::point_lost;
}

}  // namespace pipward::weather
