// SPDX-License-Identifier: MIT
#include "weather_story.h"

#include <algorithm>
#include <array>

#include "random_source.h"
#include "site.h"

namespace pipward::larkfold {
namespace {

constexpr YearMonthDay story_first{2011, 10, 1};
constexpr YearMonthDay story_last{2026, 6, 30};
constexpr int forecast_days = 10;
constexpr int days_to_import = 22;

/// What is usual in the middle of a month on a central European hillside; between two middles the numbers
/// run straight.
struct Normal {
    double mean;     ///< °C
    double range;    ///< lowest to highest of a day, kelvin
    double daily;    ///< standard deviation of the day-to-day departure, kelvin
    double monthly;  ///< standard deviation of the month's own departure, kelvin
    double winter;   ///< how much of the winter's character the month takes on
};
constexpr std::array<Normal, 12> normals{{
    {0.2, 5.4, 3.4, 1.5, 1.0},
    {1.2, 7.2, 3.4, 1.5, 1.0},
    {4.9, 9.8, 2.9, 1.2, 0.5},
    {9.0, 11.6, 2.7, 1.1, 0.0},
    {13.2, 11.8, 2.6, 1.0, 0.0},
    {16.7, 12.0, 2.8, 1.1, 0.0},
    {18.6, 12.4, 2.7, 1.1, 0.0},
    {18.2, 12.2, 2.7, 1.1, 0.0},
    {13.9, 10.8, 2.7, 1.1, 0.0},
    {9.3, 8.2, 2.9, 1.2, 0.0},
    {4.2, 6.0, 3.1, 1.3, 0.5},
    {1.1, 5.0, 3.4, 1.5, 1.0},
}};

constexpr double day_memory = 0.75;
constexpr double month_memory = 0.30;
constexpr double range_memory = 0.45;
constexpr double range_spread = 0.32;
constexpr double winter_spread = 1.3;
// Square roots of 1 - memory^2, written out: what keeps the departures at their standard deviation.
constexpr double day_news = 0.6614378277661477;
constexpr double month_news = 0.9539392014169457;
constexpr double range_news = 0.8930285549745875;

Day day_at(YearMonthDay parts) {
    return *make_day(parts);
}

double between(double from, double to, double share) {
    return from + (to - from) * share;
}

/// Where a day lies between the middles of two months.
struct MonthPlace {
    int month = 0;  ///< of the middle before it, counted on from January of the story's first year
    double share = 0;
};

MonthPlace month_place(Day day) {
    const auto parts = parts_of(day);
    const int month = (parts.year - story_first.year) * 12 + parts.month - 1;
    constexpr double usual_month = 30.4375;
    const double past_middle = (parts.day - 15.5) / usual_month;
    return past_middle < 0 ? MonthPlace{month - 1, past_middle + 1} : MonthPlace{month, past_middle};
}

const Normal& normal_of(int month) {
    return normals[static_cast<std::size_t>(month % 12)];
}

double usual(double Normal::*number, MonthPlace place) {
    return between(normal_of(place.month).*number, normal_of(place.month + 1).*number, place.share);
}

std::vector<double> winter_characters() {
    RandomSource source("weather: winters");
    std::vector<double> characters;
    for (int year = story_first.year; year <= story_last.year; ++year) {
        characters.push_back(winter_spread * source.normal());
    }
    return characters;
}

/// One departure a month, in kelvin: the month's own and its part of the winter's (named by the year of its
/// January, counted from the story's first year).
std::vector<double> month_departures() {
    RandomSource source("weather: months");
    const auto winters = winter_characters();
    std::vector<double> departures;
    double own = 0;
    const int months = (story_last.year - story_first.year + 1) * 12 + 1;
    for (int month = 0; month < months; ++month) {
        own = month_memory * own + month_news * source.normal();
        const auto winter = std::min(static_cast<std::size_t>((month + 6) / 12), winters.size() - 1);
        departures.push_back(own * normal_of(month).monthly + normal_of(month).winter * winters[winter]);
    }
    return departures;
}

/// Sun makes summer days warm and winter nights cold, so the range follows the departure with the season.
double range_factor(double chance_part, double departure, double usual_range) {
    const double sun = 0.10 * departure * (usual_range - 8.5) / 3.5;
    return std::clamp(1 + range_spread * chance_part + sun, 0.25, 1.75);
}

weather::DayExtremes extremes_of(double mean, double range) {
    return {{rounded(mean - range / 2, 10)}, {rounded(mean + range / 2, 10)}};
}

WeatherDay row_of(Day day, const weather::DayExtremes& extremes, WeatherSource source) {
    WeatherDay row;
    row.station = larkfold_station().name;
    row.day = day;
    row.t_min = extremes.t_min;
    row.t_max = extremes.t_max;
    row.source = source;
    return row;
}

/// The logger stood still twice: a short gap that neighbours can fill, and one that spoils its season.
bool is_missing(Day day) {
    const bool flat_battery = day >= day_at({2019, 4, 8}) && day <= day_at({2019, 4, 9});
    const bool broken_logger = day >= day_at({2014, 2, 3}) && day <= day_at({2014, 3, 9});
    return flat_battery || broken_logger;
}

/// Half a degree wrong tomorrow, two and a half on the tenth day.
weather::DayExtremes forecast_of(const weather::DayExtremes& truth, int lead, RandomSource& source) {
    const double error = (0.3 + 0.22 * lead) * source.normal();
    const double range = (truth.t_max - truth.t_min).degrees * (1 + 0.08 * source.normal());
    const double mean = (truth.t_min.degrees + truth.t_max.degrees) / 2 + error;
    return extremes_of(mean, std::max(range, 1.0));
}

}  // namespace

Day demonstration_day() {
    return day_at({2026, 3, 20});
}

TrueWeather true_weather() {
    RandomSource source("weather: days");
    const auto months = month_departures();
    TrueWeather weather{day_at(story_first), {}};
    double departure = 0;
    double range = 0;
    for (Day day = weather.first; day <= day_at(story_last); day = day + 1) {
        departure = day_memory * departure + day_news * source.normal();
        range = range_memory * range + range_news * source.normal();
        const auto place = month_place(day);
        const auto month = static_cast<std::size_t>(place.month);
        const double slow = between(months[month], months[month + 1], place.share);
        const double mean = usual(&Normal::mean, place) + slow + departure * usual(&Normal::daily, place);
        const double usual_range = usual(&Normal::range, place);
        weather.days.push_back(extremes_of(mean, usual_range * range_factor(range, departure, usual_range)));
    }
    return weather;
}

std::vector<WeatherDay> station_record(const TrueWeather& weather) {
    std::vector<WeatherDay> rows;
    for (Day day = weather.first; day <= demonstration_day(); day = day + 1) {
        if (!is_missing(day)) {
            rows.push_back(row_of(day, weather.at(day), WeatherSource::observed));
        }
    }
    RandomSource source("weather: forecast");
    for (int lead = 1; lead <= forecast_days; ++lead) {
        const Day day = demonstration_day() + lead;
        rows.push_back(row_of(day, forecast_of(weather.at(day), lead, source), WeatherSource::forecast));
    }
    return rows;
}

std::vector<WeatherDay> later_days(const TrueWeather& weather) {
    std::vector<WeatherDay> rows;
    for (int later = 1; later <= days_to_import; ++later) {
        const Day day = demonstration_day() + later;
        rows.push_back(row_of(day, weather.at(day), WeatherSource::observed));
    }
    return rows;
}

}  // namespace pipward::larkfold
