// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/reader_days.h"
#include "pipward/value/day.h"

namespace pipward::paper {

/// The Monday on or before.
Day monday_of(Day day);

/// Days laid along a line: each day takes an equal piece of it.
struct DayAxis {
    Day from;          ///< the first day shown
    Day to;            ///< the last day shown; not before `from`
    double left = 0;   ///< where `from` begins, in drawing units
    double right = 1;  ///< where `to` ends

    /// In drawing units, above 0.
    double day_width() const;
    double start_of(Day day) const;   ///< midnight
    double middle_of(Day day) const;  ///< noon
    double end_of(Day day) const;     ///< the midnight that ends it
    /// Both ends included.
    bool shows(Day day) const { return day >= from && day <= to; }
};

/// Every Monday on the axis.
std::vector<Day> mondays_of(const DayAxis& axis);

/// The part of one calendar month that an axis shows.
struct MonthSpan {
    Sentence name;  ///< "Apr"
    int year = 0;   ///< of the month
    Day first;      ///< the first day of it that is shown
    Day last;       ///< the last day of it that is shown
};
/// From the first shown to the last, none empty.
std::vector<MonthSpan> months_of(const DayAxis& axis);

}  // namespace pipward::paper
