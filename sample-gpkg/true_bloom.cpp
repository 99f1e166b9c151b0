// SPDX-License-Identifier: MIT
#include "true_bloom.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/clock/asymcur.h"
#include "pipward/clock/dynamic_model.h"
#include "random_source.h"
#include "site.h"

namespace pipward::larkfold {
namespace {

constexpr Latitude site_latitude{48.13};
constexpr double flower_base = 0;
constexpr double season_luck_days = 1.0;
constexpr double own_luck_days = 0.9;

Day new_year(int year) {
    return *make_day({year, 1, 1});
}

std::vector<weather::DayExtremes> days_of(const TrueWeather& weather, int year, double warmer) {
    std::vector<weather::DayExtremes> days;
    for (Day day = *make_day({year - 1, 10, 1}); day <= *make_day({year, 6, 30}); day = day + 1) {
        const CelsiusStep step{warmer};
        days.push_back({weather.at(day).t_min + step, weather.at(day).t_max + step});
    }
    return days;
}

Spring spring_of(const TrueWeather& weather, int year, double warmer) {
    Spring spring;
    spring.first = *make_day({year - 1, 10, 1});
    const auto days = days_of(weather, year, warmer);
    const auto hours = weather::hourly_temperatures(days, spring.first, site_latitude);
    clock::DynamicModel chill;
    double heat = 0;
    double open = 0;
    for (std::size_t hour = 0; hour < hours.size(); ++hour) {
        if (hour % weather::hours_a_day == weather::hours_a_day / 2) {
            spring.chill.push_back(chill.total().value);
            spring.heat.push_back(heat);
            spring.open.push_back(open);
        }
        chill.hour(hours[hour]);
        heat += clock::asymcur(hours[hour]).value;
        open += std::max(0.0, hours[hour].degrees - flower_base) / static_cast<double>(weather::hours_a_day);
    }
    return spring;
}

/// A running sum at a fractional index, and the fractional index at which it reaches an amount.
double sum_at(const std::vector<double>& sums, double index) {
    const double inside = std::clamp(index, 0.0, static_cast<double>(sums.size() - 1));
    const auto before = std::min(static_cast<std::size_t>(inside), sums.size() - 2);
    return sums[before] + (sums[before + 1] - sums[before]) * (inside - static_cast<double>(before));
}

double index_reaching(const std::vector<double>& sums, double amount) {
    const auto after = std::ranges::lower_bound(sums, amount);
    if (after == sums.begin() || after == sums.end()) {
        return static_cast<double>(after - sums.begin());
    }
    const double before = *(after - 1);
    return static_cast<double>(after - sums.begin()) - 1 + (amount - before) / (*after - before);
}

double luck_days(const std::string& accession, int year) {
    RandomSource season(fmt::format("luck {}", year));
    RandomSource own(fmt::format("luck {} {}", accession, year));
    return season_luck_days * season.normal() + own_luck_days * own.normal();
}

constexpr double pear_hurry = 1.28;  // pears open and fall in so much less warmth than apples

/// An accession's flowers open and fall by up to a twentieth faster or slower than the mean of its kind.
double pace_of(const Parent& parent) {
    const double own = 0.95 + 0.1 * RandomSource("pace " + parent.name).uniform();
    return own * (is_pear(parent) ? pear_hurry : 1);
}

}  // namespace

double warmer_than_station(Metres elevation) {
    const double lower = larkfold_station().elevation.value - elevation.value;
    return rounded(0.0065 * lower, 100);
}

TrueBloom::TrueBloom(const TrueWeather& weather) : weather_(weather) {}

const Spring& TrueBloom::spring(int year, double warmer) {
    const SpringKey key{year, static_cast<int>(std::lround(warmer * 100))};
    const auto found = springs_.find(key);
    return found != springs_.end() ? found->second
                                   : springs_.emplace(key, spring_of(weather_, year, warmer)).first->second;
}

double TrueBloom::full_bloom(const Parent& parent, int year, double warmer) {
    const auto& sums = spring(year, warmer);
    const double first_of_march = *make_day({year, 3, 1}) - sums.first;
    const double start = std::min(index_reaching(sums.chill, parent.chill_portions), first_of_march);
    const double bloom = index_reaching(sums.heat, sum_at(sums.heat, start) + parent.heat);
    return bloom - (new_year(year) - sums.first) + luck_days(parent.name, year);
}

double TrueBloom::after_full(const Parent& parent, Day day, double warmer) {
    const int year = parts_of(day).year;
    const auto& sums = spring(year, warmer);
    const double full = full_bloom(parent, year, warmer) + (new_year(year) - sums.first);
    return pace_of(parent) * (sum_at(sums.open, day - sums.first) - sum_at(sums.open, full));
}

Day TrueBloom::day_at(const Parent& parent, int year, double warmer, double after_full) {
    const auto& sums = spring(year, warmer);
    const double full = full_bloom(parent, year, warmer) + (new_year(year) - sums.first);
    const double amount = sum_at(sums.open, full) + after_full / pace_of(parent);
    return sums.first + static_cast<int>(std::floor(index_reaching(sums.open, amount) + 0.5));
}

}  // namespace pipward::larkfold
