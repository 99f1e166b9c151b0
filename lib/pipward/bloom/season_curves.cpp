// SPDX-License-Identifier: MIT
#include "pipward/bloom/season_curves.h"

#include <algorithm>
#include <cmath>

#include "pipward/bloom/stage_ladder.h"
#include "pipward/clock/arrhenius_forcing.h"
#include "pipward/clock/asymcur.h"
#include "pipward/clock/degree_days.h"
#include "pipward/clock/dynamic_model.h"
#include "pipward/clock/linear_forcing.h"
#include "pipward/clock/sigmoid_forcing.h"

namespace pipward::bloom {
namespace {

constexpr int hours_a_day = 24;
constexpr int pace_days = 7;  // our own judgement; asked for only where no past season lends its days

std::array<double, heat_curve_count> heat_of(Celsius hour) {
    return {clock::sigmoid_forcing(hour).value, clock::arrhenius_forcing(hour).value,
            clock::linear_forcing(hour, {4}, {25}).value, clock::linear_forcing(hour, {6}, {25}).value};
}

// The sums that grow hour by hour.
struct HourlySums {
    clock::DynamicModel chill;
    std::array<double, heat_curve_count> heat{};
    double ladder = 0;
    double asymcur = 0;

    void add(Celsius hour) {
        chill.hour(hour);
        const auto heat_now = heat_of(hour);
        for (int curve = 0; curve < heat_curve_count; ++curve) {
            heat[curve] += heat_now[curve];
        }
        ladder += std::max(0.0, (hour - ladder_base).degrees) / hours_a_day;
        asymcur += pipward::clock::asymcur(hour).value;
    }

    void write_noon(SeasonCurves& curves) const {
        curves.chill.push_back(chill.total().value);
        for (int curve = 0; curve < heat_curve_count; ++curve) {
            curves.heat[curve].push_back(heat[curve]);
        }
        curves.ladder.push_back(ladder);
        curves.asymcur.push_back(asymcur);
    }
};

void add_hourly_sums(SeasonCurves& curves, std::span<const Celsius> hours) {
    HourlySums sums;
    for (std::size_t hour = 0; hour < hours.size(); ++hour) {
        if (hour % hours_a_day == hours_a_day / 2) {
            sums.write_noon(curves);
        }
        sums.add(hours[hour]);
    }
}

// Half of a day's degree-days are taken to be there by its noon: the single sine knows no hour, and is the
// same on both sides of its peak.
void add_daily_sums(SeasonCurves& curves, std::span<const weather::DayExtremes> days) {
    double before = 0;
    for (const auto& day : days) {
        const double today =
            clock::single_sine_degree_days({day.t_min, day.t_max}, {.lower = degree_day_base}).value;
        curves.degree_days.push_back(before + today / 2);
        before += today;
        curves.mean_temperature.push_back((day.t_min.degrees + day.t_max.degrees) / 2);
    }
}

std::vector<weather::DayExtremes> moved(std::span<const weather::DayExtremes> days, CelsiusStep offset) {
    std::vector<weather::DayExtremes> colder;
    for (const auto& day : days.first(std::min<std::size_t>(days.size(), season_length))) {
        colder.push_back({day.t_min + offset, day.t_max + offset});
    }
    return colder;
}

void extend_sum(std::vector<double>& sums) {
    const int known = static_cast<int>(sums.size());
    const int paced = std::min(pace_days, known - 1);
    const double pace = paced > 0 ? (sums.back() - sums[known - 1 - paced]) / paced : 0;
    while (sums.size() < season_length) {
        sums.push_back(sums.empty() ? 0 : sums.back() + pace);
    }
}

void extend_mean(std::vector<double>& temperatures) {
    const int known = static_cast<int>(temperatures.size());
    const int averaged = std::min(pace_days, known);
    double total = 0;
    for (int i = known - averaged; i < known; ++i) {
        total += temperatures[i];
    }
    temperatures.resize(season_length, averaged > 0 ? total / averaged : 0);
}

void reserve_all(SeasonCurves& curves) {
    for (auto* sums : running_sums(curves)) {
        sums->reserve(season_length);
    }
    curves.mean_temperature.reserve(season_length);
}

}  // namespace

std::array<std::vector<double>*, running_sum_count> running_sums(SeasonCurves& curves) {
    auto& [sigmoid, arrhenius, above_4, above_6] = curves.heat;
    return {&curves.chill, &sigmoid,       &arrhenius,      &above_4,
            &above_6,      &curves.ladder, &curves.asymcur, &curves.degree_days};
}

std::array<const std::vector<double>*, running_sum_count> running_sums(const SeasonCurves& curves) {
    const auto& [sigmoid, arrhenius, above_4, above_6] = curves.heat;
    return {&curves.chill, &sigmoid,       &arrhenius,      &above_4,
            &above_6,      &curves.ladder, &curves.asymcur, &curves.degree_days};
}

SeasonCurves season_curves(std::span<const weather::DayExtremes> days, Day first, Latitude latitude,
                           CelsiusStep offset) {
    const auto here = moved(days, offset);
    SeasonCurves curves;
    reserve_all(curves);
    curves.known_days = static_cast<int>(here.size());
    if (!here.empty()) {
        add_hourly_sums(curves, weather::hourly_temperatures(here, first, latitude));
        add_daily_sums(curves, here);
    }
    for (auto* sums : running_sums(curves)) {
        extend_sum(*sums);
    }
    extend_mean(curves.mean_temperature);
    return curves;
}

SeasonCurves with_remainder(const SeasonCurves& known, const SeasonCurves& past, int days) {
    const int keep = std::clamp(std::min(days, known.known_days), 0, season_length);
    if (keep == 0) {
        return past;
    }
    SeasonCurves joined = known;
    const auto into = running_sums(joined);
    const auto from = running_sums(past);
    for (int which = 0; which < running_sum_count; ++which) {
        auto& sums = *into[which];
        const auto& lent = *from[which];
        const double step = sums[keep - 1] - lent[keep - 1];
        for (int i = keep; i < season_length; ++i) {
            sums[i] = lent[i] + step;
        }
    }
    std::copy(past.mean_temperature.begin() + keep, past.mean_temperature.end(),
              joined.mean_temperature.begin() + keep);
    joined.known_days = std::max(keep, past.known_days);
    return joined;
}

double value_at(std::span<const double> sums, double season_day) {
    const double last = static_cast<double>(sums.size()) - 1;
    const double at = std::clamp(season_day - season_first, 0.0, last);
    const auto below = static_cast<std::size_t>(at);
    if (below + 1 >= sums.size()) {
        return sums.back();
    }
    return sums[below] + (at - static_cast<double>(below)) * (sums[below + 1] - sums[below]);
}

double day_reaching(std::span<const double> sums, double target) {
    const auto reached = std::ranges::lower_bound(sums, target);
    if (reached == sums.end()) {
        return season_last + 1;
    }
    if (reached == sums.begin()) {
        return season_first;
    }
    const auto above = static_cast<double>(reached - sums.begin());
    const double before = *(reached - 1);
    return season_first + above - 1 + (target - before) / (*reached - before);
}

}  // namespace pipward::bloom
