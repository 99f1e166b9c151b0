// SPDX-License-Identifier: MIT
#include "pipward/paper/day_axis.h"

#include <algorithm>

namespace pipward::paper {
namespace {

Sentence month_name(Day day) {
    switch (parts_of(day).month) {
        case 1:
            return say("Jan");
        case 2:
            return say("Feb");
        case 3:
            return say("Mar");
        case 4:
            return say("Apr");
        case 5:
            return say("May");
        case 6:
            return say("Jun");
        case 7:
            return say("Jul");
        case 8:
            return say("Aug");
        case 9:
            return say("Sep");
        case 10:
            return say("Oct");
        case 11:
            return say("Nov");
        default:
            return say("Dec");
    }
}

Day next_month(Day day) {
    const auto parts = parts_of(day);
    return parts.month == 12 ? *make_day({parts.year + 1, 1, 1})
                             : *make_day({parts.year, parts.month + 1, 1});
}

}  // namespace

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

}  // namespace pipward::paper
