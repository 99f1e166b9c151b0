// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/climate.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pipward::bloom::detail {
namespace {

// Heat before mid-February moves bloom little, and winters have not warmed as springs have.
constexpr SeasonDay climate_from = 45;
constexpr SeasonDay climate_to = weather::shortest_season_end;
constexpr double usual_noise = 1.4;  // kelvin, of the mean of these ten weeks at 39 and 51 degrees N

constexpr double stands_still = 0.25;

// Kelvin a year. Springs over temperate land have warmed by some 0.3 kelvin a decade since about 1970 (IPCC
// AR6 WG1, from memory); what a station's own record says decides between these.
constexpr std::array possible_trends{YearlyTrend{0, 0.3}, YearlyTrend{0.02, 0.4}, YearlyTrend{0.04, 0.3}};

double spring_mean(const weather::SeasonWeather& season) {
    double sum = 0;
    for (SeasonDay day = climate_from; day <= climate_to; ++day) {
        const auto& extremes = season.days[static_cast<std::size_t>(day - season_first)];
        sum += (extremes.t_min.degrees + extremes.t_max.degrees) / 2;
    }
    return sum / (climate_to - climate_from + 1);
}

bool is_whole(const weather::SeasonWeather& season) {
    return season.days.size() > static_cast<std::size_t>(climate_to - season_first);
}

std::vector<YearValue> spring_means(std::span<const weather::SeasonWeather> seasons) {
    std::vector<YearValue> means;
    for (const auto& season : seasons) {
        if (is_whole(season)) {
            means.push_back({season.season.year, spring_mean(season)});
        }
    }
    return means;
}

CelsiusStep in_steps(double kelvin) {
    return climate_step * (std::round(kelvin / climate_step.degrees) + 0.0);  // + 0.0: never minus zero
}

}  // namespace

WanderingLevel spring_climate(std::span<const weather::SeasonWeather> seasons) {
    return {spring_means(seasons), usual_noise, stands_still, possible_trends};
}

std::vector<LentSeason> lent_seasons(std::span<const weather::SeasonWeather> seasons, Season target) {
    std::vector<weather::SeasonWeather> others;
    std::ranges::copy_if(seasons, std::back_inserter(others),
                         [&](const auto& season) { return season.season != target; });
    const auto climate = spring_climate(others);
    const auto distance = [&](const auto& season) { return std::abs(season.season.year - target.year); };
    std::ranges::stable_sort(others, {}, distance);
    others.resize(std::min<std::size_t>(others.size(), nearest_seasons));
    std::ranges::sort(others, {}, &weather::SeasonWeather::season);
    if (others.size() == 1) {
        return {{others.front().season, {}}};
    }
    const auto [now, sd] = climate.at(target.year);
    std::vector<LentSeason> lent;
    for (const auto& season : others) {
        const double warmer = now - climate.at(season.season.year).mean;
        // What is usual now is not known to the tenth of a kelvin.
        lent.push_back({season.season, in_steps(warmer + sd)});
        lent.push_back({season.season, in_steps(warmer - sd)});
    }
    return lent;
}

}  // namespace pipward::bloom::detail
