// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/bloom_chart_marks.h"

namespace pipward::paper {
namespace {

constexpr double cap_half = 4;
constexpr double tick_half = 11;

ChartMarks life_line(const DayAxis& axis, const BloomBar& bar, double y) {
    const double x1 = axis.start_of(bar.first);
    const double x2 = axis.end_of(bar.end);
    return {LineMark{MarkRole::life, {x1, y}, {x2, y}},
            LineMark{MarkRole::life, {x1, y - cap_half}, {x1, y + cap_half}},
            LineMark{MarkRole::life, {x2, y - cap_half}, {x2, y + cap_half}}};
}

BoxMark band(const DayAxis& axis, const BloomBar& bar, double y) {
    const double x = axis.start_of(bar.full.p10);
    return {bar.source == bloom::NeedSource::own_observations ? MarkRole::band : MarkRole::lent_band,
            {x, y - detail::band_half},
            axis.end_of(bar.full.p90) - x,
            2 * detail::band_half};
}

LineMark median_tick(const DayAxis& axis, const BloomBar& bar, double y) {
    const double x = axis.middle_of(bar.full.p50);
    return {MarkRole::median, {x, y - tick_half}, {x, y + tick_half}};
}

ChartMarks sign_of_bar(bloom::NeedSource source) {
    const DayAxis axis{{0}, {10}, 0, chart_sign_width};
    return detail::bar_marks(axis, {{}, {1}, {{3}, {5}, {7}}, {9}, source}, chart_sign_height / 2.0);
}

ChartMarks sign_of_as_of() {
    return {
        LineMark{MarkRole::as_of, {chart_sign_width / 2.0, 0}, {chart_sign_width / 2.0, chart_sign_height}}};
}

}  // namespace

ChartMarks detail::bar_marks(const DayAxis& axis, const BloomBar& bar, double y) {
    auto marks = life_line(axis, bar, y);
    marks.emplace_back(band(axis, bar, y));
    marks.emplace_back(median_tick(axis, bar, y));
    return marks;
}

std::vector<ChartSign> bloom_chart_signs() {
    return {
        {sign_of_bar(bloom::NeedSource::own_observations),
         say("From its own observations. Box: 80 % prediction interval of full bloom (8 springs in 10); "
             "tick: its median; thin line: first bloom to end of bloom, medians.")},
        {sign_of_bar(bloom::NeedSource::orchard_mean),
         say("Dashed box: no observations of its own, estimated from its parents or the orchard's mean.")},
        {sign_of_as_of(), say("The reference date; later weather is not known.")},
        {{},
         say("● own observations, and their number; ○\u00a0estimated. Seed, pollen: its role in the wanted "
             "crosses. Dates on the axis are Mondays.")}};
}

}  // namespace pipward::paper
