// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/window.h"

#include <cmath>

#include "pipward/bloom/stage_ladder.h"
#include "pipward/math/quantile.h"

namespace pipward::bloom {
namespace {

// What the ladder leaves open of first bloom and the end; full bloom is what it is hung on.
double stage_noise(Bbch stage, const StageLadder& ladder) {
    if (stage == full_bloom) {
        return 0;
    }
    return stage < full_bloom ? ladder.first_sd_days : ladder.end_sd_days;
}

DayQuantiles calendar_days(const BloomForecast& forecast, const detail::SeasonDayQuantiles& quantiles) {
    return {forecast.day_of(quantiles.p10), forecast.day_of(quantiles.p50), forecast.day_of(quantiles.p90)};
}

}  // namespace

detail::SeasonDayQuantiles detail::quantiles_of(std::vector<double> values) {
    return {math::sample_quantile(values, 0.1), math::sample_quantile(values, 0.5),
            math::sample_quantile(values, 0.9)};
}

std::vector<double> detail::spread_days(std::span<const double> members, double season_sd, double own_sd) {
    const auto nodes = residual_nodes();
    std::vector<double> days;
    days.reserve(members.size() * nodes.size() * nodes.size());
    for (const double member : members) {
        for (const double season : nodes) {
            for (const double own : nodes) {
                days.push_back(member + season * season_sd + own * own_sd);
            }
        }
    }
    return days;
}

std::vector<double> detail::stage_days(const BloomForecast& forecast, const BloomWindow& window, Bbch stage) {
    const auto place = ladder_place(stage, window.ladder)->after_full;
    const double noise = stage_noise(stage, window.ladder);
    const auto& curves = forecast.curves.at(window.offset.degrees);
    auto days = detail::spread_days(
        window.full_bloom, std::hypot(window.season_sd_days, std::sqrt(shared_stage_noise) * noise),
        std::hypot(window.own_sd_days, std::sqrt(1 - shared_stage_noise) * noise));
    const std::size_t each = days.size() / curves.size();
    for (std::size_t i = 0; i < days.size(); ++i) {
        days[i] = ladder_day(curves[i / each], days[i], place);
    }
    return days;
}

void detail::fill_quantiles(BloomWindow& window, const BloomForecast& forecast) {
    const auto of_stage = [&](Bbch stage) {
        return calendar_days(forecast, detail::quantiles_of(detail::stage_days(forecast, window, stage)));
    };
    window.first = of_stage(first_bloom);
    window.full = of_stage(full_bloom);
    window.end = of_stage(bloom_end);
}

double ladder_day(const SeasonCurves& curves, double full_day, DegreeDays after_full) {
    if (after_full.value == 0) {
        return full_day;
    }
    return day_reaching(curves.ladder, value_at(curves.ladder, full_day) + after_full.value);
}

}  // namespace pipward::bloom
