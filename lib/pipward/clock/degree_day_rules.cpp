// SPDX-License-Identifier: MIT
#include "pipward/clock/degree_day_rules.h"

#include <fmt/format.h>
#include <array>

#include <algorithm>

#include "pipward/value/finding.h"

namespace pipward::clock {
namespace {

[[noreturn]] void refuse(std::string field, Celsius lower, Celsius upper, Sentence message, Sentence remedy) {
    throw Error(Trouble::input, Finding{.level = Level::error,
                                        .table = {},
                                        .row = {},
                                        .field = std::move(field),
                                        .value = fmt::format("{} and {}", lower.degrees, upper.degrees),
                                        .message = std::move(message),
                                        .remedy = std::move(remedy)});
}

DegreeDays halved(DegreeDays sum) {
    return {sum.value / 2};
}

}  // namespace

// Written as !(a <= b) so that a value that is not a number is refused too.
void require_order(DayRange day) {
    if (!(day.low <= day.high)) {
        refuse("t_min, t_max", day.low, day.high, say("The day's minimum lies above its maximum."),
               say("Correct the day's two temperatures."));
    }
}

void require_order(const Thresholds& thresholds) {
    if (thresholds.cut_off != CutOff::none && !(thresholds.lower <= thresholds.upper)) {
        refuse("thresholds", thresholds.lower, thresholds.upper,
               say("The lower threshold lies above the upper one."),
               say("Give a base below the upper threshold."));
    }
}

DegreeDays cut_off_degree_days(const Thresholds& thresholds, CurveAbove lower, CurveAbove upper) {
    const double width = (thresholds.upper - thresholds.lower).degrees;
    switch (thresholds.cut_off) {
        case CutOff::none:
            return {lower.area};
        case CutOff::horizontal:
            return {lower.area - upper.area};
        case CutOff::intermediate:
            return {std::max(0.0, lower.area - 2 * upper.area)};
        case CutOff::vertical:
            return {std::max(0.0, lower.area - upper.area - width * upper.share)};
    }
    return {};
}

DegreeDays degree_days_by(CurveMethod curve, DayRange day, const Thresholds& thresholds) {
    require_order(day);
    require_order(thresholds);
    return cut_off_degree_days(thresholds, curve(day, thresholds.lower.degrees),
                               curve(day, thresholds.upper.degrees));
}

DegreeDays double_degree_days_by(CurveMethod curve, DayRange today, Celsius next_low,
                                 const Thresholds& thresholds) {
    const auto [low, high] = std::minmax(today.high, next_low);
    return halved(degree_days_by(curve, today, thresholds)) +
           halved(degree_days_by(curve, {low, high}, thresholds));
}

std::span<const Word<CutOff>> words(CutOff) {
    static constexpr std::array table{
        Word<CutOff>{CutOff::none, "none", "no upper threshold"},
        Word<CutOff>{CutOff::horizontal, "horizontal", "above it the rate stays at its highest"},
        Word<CutOff>{CutOff::intermediate, "intermediate", "above it the rate falls as fast as it rose"},
        Word<CutOff>{CutOff::vertical, "vertical", "above it nothing develops"},
    };
    return table;
}

}  // namespace pipward::clock
