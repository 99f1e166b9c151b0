// SPDX-License-Identifier: MIT
#include "pipward/paper/day_axis.h"

#include <algorithm>
#include <array>

namespace pipward {
namespace {

std::string month_name(Day day) {
    const auto text = to_short_text(day);
    return text.substr(text.find(' ') + 1);
}

Day next_month(Day day) {
    const auto parts = parts_of(day);
    return parts.month == 12 ? *make_day({parts.year + 1, 1, 1})
                             : *make_day({parts.year, parts.month + 1, 1});
}

}  // namespace

int weekday_of(Day day) {
    constexpr int thursday = 4;  // 1970-01-01
    return ((day.since_1970 + thursday) % 7 + 7) % 7;
}

std::string weekday_name(Day day) {
    static constexpr std::array names{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
    return names[static_cast<std::size_t>(weekday_of(day))];
}

Day monday_of(Day day) {
    return day - (weekday_of(day) + 6) % 7;
}

double DayAxis::day_width() const {
    return (right - left) / (to - from + 1);
}

double DayAxis::start_of(Day day) const {
    return left + (day - from) * day_width();
}

double DayAxis::middle_of(Day day) const {
    return start_of(day) + day_width() / 2;
}

double DayAxis::end_of(Day day) const {
    return start_of(day + 1);
}

std::vector<Day> mondays_of(const DayAxis& axis) {
    std::vector<Day> mondays;
    const Day first = monday_of(axis.from);
    for (Day day = first < axis.from ? first + 7 : first; day <= axis.to; day = day + 7) {
        mondays.push_back(day);
    }
    return mondays;
}

std::vector<MonthSpan> months_of(const DayAxis& axis) {
    std::vector<MonthSpan> months;
    for (Day first = axis.from; first <= axis.to; first = next_month(first)) {
        const Day last = std::min(axis.to, next_month(first) - 1);
        months.push_back({month_name(first), parts_of(first).year, first, last});
    }
    return months;
}

}  // namespace pipward
