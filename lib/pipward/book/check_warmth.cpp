// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <cmath>
#include <map>
#include <vector>

#include "pipward/book/detail/check.h"
#include "pipward/math/quantile.h"

namespace pipward::book::detail {
namespace {

// Months differ from the same month of other years by some degrees; temperatures in another unit, or of
// another place, by far more. Common practice, no source.
constexpr double far_off = 12.0;
constexpr int enough_days = 10;
constexpr std::size_t enough_years = 3;

struct Month {
    int days = 0;
    double sum_of_means = 0;
    double sum_of_highs = 0;

    double mean() const { return sum_of_means / days; }
};

using Months = std::map<int, Month>;  // by year
struct MonthOfStation {
    std::string station;
    int month = 0;

    auto operator<=>(const MonthOfStation&) const = default;
};

using MonthsOfPlaces = std::map<MonthOfStation, Months>;

MonthsOfPlaces months_of(const Orchard& orchard) {
    MonthsOfPlaces months;
    for (const auto& day : orchard.weather) {
        if (day.source == WeatherSource::observed && is_believable(day)) {
            const auto parts = parts_of(day.day);
            auto& month = months[{day.station, parts.month}][parts.year];
            ++month.days;
            month.sum_of_means += (day.t_min.degrees + day.t_max.degrees) / 2;
            month.sum_of_highs += day.t_max.degrees;
        }
    }
    return months;
}

std::vector<double> means_of_others(const Months& months, int year) {
    std::vector<double> means;
    for (const auto& [other, month] : months) {
        if (other != year && month.days >= enough_days) {
            means.push_back(month.mean());
        }
    }
    return means;
}

Sentence how_warm(double warmer) {
    return warmer > 0 ? say("The month is {:.1f} °C warmer than the same month of other years.", warmer)
                      : say("The month is {:.1f} °C colder than the same month of other years.", -warmer);
}

}  // namespace

void check_warmth(const Orchard& orchard, Findings& findings) {
    for (const auto& [place, months] : months_of(orchard)) {
        for (const auto& [year, month] : months) {
            const auto others = means_of_others(months, year);
            if (month.days < enough_days || others.size() < enough_years) {
                continue;
            }
            const double warmer = month.mean() - math::middle_value(others);
            if (std::abs(warmer) > far_off) {
                findings.push_back(
                    warning({"weather_day", fmt::format("{} {}-{:02}", place.station, year, place.month),
                             "t_max_c", fmt::format("{:.1f}", month.sum_of_highs / month.days)},
                            how_warm(warmer),
                            say("Check its temperatures: perhaps they are in degrees Fahrenheit or of "
                                "another place; then import them again.")));
            }
        }
    }
}

}  // namespace pipward::book::detail
