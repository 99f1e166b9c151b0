// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "pipward/value/sentence.h"
#include "pipward/value/spoken.h"

namespace pipward::value {

/// A calendar day of the proleptic Gregorian calendar, without time or zone.
/// Shape: days since 1970-01-01. Range of text: years 0001 to 9999.
/// Written as ISO 8601 (YYYY-MM-DD).
struct Day {
    std::int32_t since_1970 = 0;  ///< days; negative before 1970

    auto operator<=>(const Day&) const = default;
};

/// So many days later; a negative number goes back.
constexpr Day operator+(Day day, int days) {
    return {day.since_1970 + days};
}
/// So many days earlier.
constexpr Day operator-(Day day, int days) {
    return {day.since_1970 - days};
}
/// Whole days from `b` to `a`.
constexpr int operator-(Day a, Day b) {
    return a.since_1970 - b.since_1970;
}

/// A date in its parts, which need not exist in the calendar.
struct YearMonthDay {
    int year = 1970;  ///< 1..9999
    int month = 1;    ///< 1..12
    int day = 1;      ///< 1..31
};

/// The day, or nothing where the calendar has no such day (2026-02-30).
std::optional<Day> make_day(YearMonthDay parts);
/// The date of the day; always one that exists.
YearMonthDay parts_of(Day day);
/// 1 January is 1.
int day_of_year(Day day);

/// Reads exactly YYYY-MM-DD; anything else, and days that do not exist, give nothing.
std::optional<Day> parse_iso_day(std::string_view text);
/// "2026-04-12". Years below 1000 are filled with zeros to four digits.
std::string to_iso(Day day);
/// "12 Apr": for charts and sheets.
Sentence to_short_text(Day day);

}  // namespace pipward::value
