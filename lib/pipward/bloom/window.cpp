// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/window.h"

#include "pipward/bloom/stage_ladder.h"
#include "pipward/math/quantile.h"

namespace pipward::bloom {
namespace {

std::vector<double> stage_days(const std::vector<double>& full_days, const std::vector<SeasonCurves>& curves,
                               Bbch stage) {
    const auto place = ladder_place(stage)->after_full;
    const std::size_t each = full_days.size() / curves.size();
    std::vector<double> days;
    days.reserve(full_days.size());
    for (std::size_t i = 0; i < full_days.size(); ++i) {
        days.push_back(ladder_day(curves[i / each], full_days[i], place));
    }
    return days;
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

void detail::fill_quantiles(BloomWindow& window, const BloomForecast& forecast) {
    const auto& curves = forecast.curves.at(window.offset.degrees);
    const auto days = detail::spread_days(window.full_bloom, window.season_sd_days, window.own_sd_days);
    window.first = calendar_days(forecast, detail::quantiles_of(stage_days(days, curves, first_bloom)));
    window.full = calendar_days(forecast, detail::quantiles_of(days));
    window.end = calendar_days(forecast, detail::quantiles_of(stage_days(days, curves, bloom_end)));
}

double ladder_day(const SeasonCurves& curves, double full_day, DegreeDays after_full) {
    if (after_full.value == 0) {
        return full_day;
    }
    return day_reaching(curves.ladder, value_at(curves.ladder, full_day) + after_full.value);
}

}  // namespace pipward::bloom
