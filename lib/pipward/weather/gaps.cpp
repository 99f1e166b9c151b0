// SPDX-License-Identifier: MIT
#include "pipward/weather/gaps.h"

namespace pipward::weather {
namespace {

using Days = std::vector<std::optional<DailyTemperature>>;

/// First index at or after `from` that has (or lacks) a reading; the size where there is none.
std::size_t next_where(const Days& days, std::size_t from, bool has_reading) {
    while (from < days.size() && days[from].has_value() != has_reading) {
        ++from;
    }
    return from;
}

DailyTemperature blend(const DailyTemperature& before, const DailyTemperature& after, double share) {
    return {before.t_min + (after.t_min - before.t_min) * share,
            before.t_max + (after.t_max - before.t_max) * share, DayOrigin::interpolated};
}

void fill(Days& days, std::size_t begin, std::size_t end) {
    const DailyTemperature before = *days[begin - 1];
    const DailyTemperature after = *days[end];
    const auto steps = static_cast<double>(end - begin + 1);
    for (std::size_t i = begin; i < end; ++i) {
        days[i] = blend(before, after, static_cast<double>(i - begin + 1) / steps);
    }
}

bool lies_in_winter(const Gap& gap, Hemisphere hemisphere) {
    const Day last = gap.first + gap.length - 1;
    const Day anchor = anchor_of(season_of(last, hemisphere), hemisphere);
    return gap.first - anchor >= season_first && last - anchor <= winter_rest_ends;
}

// `longest` tells the longest gap to be filled where a gap lies.
template <class Longest>
GapReport fill_up_to(const DailySeries& series, Longest longest) {
    GapReport report{series, {}};
    Days& days = report.series.days;
    std::size_t begin = next_where(days, next_where(days, 0, true), false);
    for (std::size_t end = next_where(days, begin, true); end < days.size();
         end = next_where(days, begin, true)) {
        Gap gap{series.first + static_cast<int>(begin), static_cast<int>(end - begin)};
        gap.filled = gap.length <= longest(gap);
        if (gap.filled) {
            fill(days, begin, end);
        }
        report.gaps.push_back(gap);
        begin = next_where(days, end, false);
    }
    return report;
}

}  // namespace

GapReport fill_gaps(const DailySeries& series, int longest) {
    return fill_up_to(series, [&](const Gap&) { return longest; });
}

GapReport fill_gaps(const DailySeries& series, Hemisphere hemisphere) {
    return fill_up_to(series, [&](const Gap& gap) {
        return lies_in_winter(gap, hemisphere) ? longest_filled_winter_gap : longest_filled_gap;
    });
}

}  // namespace pipward::weather
