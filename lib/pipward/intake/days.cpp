// SPDX-License-Identifier: MIT
#include "pipward/intake/days.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "pipward/intake/cells.h"

namespace pipward::intake {
namespace {

bool all_digits(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

std::optional<int> whole(std::string_view text) {
    int value = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    return all_digits(text) && trouble == std::errc{} ? std::optional{value} : std::nullopt;
}

/// What follows a date: "13:00", "06:00:00Z", "1300" - not the "12 2026" of a date in words.
bool is_clock(std::string_view time) {
    return time.find(':') != time.npos || (time.size() <= 4 && all_digits(time));
}

/// "00:00:00", "0:00", "12:00:00 AM", "00:00:00+01:00".
bool is_midnight(std::string_view time) {
    std::string clock = lower_case(time.substr(0, time.find('+')));
    if (clock.ends_with("am") && clock.starts_with("12")) {
        clock.erase(0, 2);
    }
    return clock.find_first_of("123456789") == std::string::npos;
}

struct DayParts {
    std::array<std::string_view, 3> parts;
    char separator = 0;
};

std::optional<DayParts> split_parts(std::string_view date) {
    const auto first = date.find_first_of("-/.");
    if (first == date.npos) {
        const bool plain = date.size() == 8 && all_digits(date);
        return plain ? std::optional{DayParts{{date.substr(0, 4), date.substr(4, 2), date.substr(6)}}}
                     : std::nullopt;
    }
    const auto second = date.find(date[first], first + 1);
    return second == date.npos
               ? std::nullopt
               : std::optional{DayParts{{date.substr(0, first), date.substr(first + 1, second - first - 1),
                                         date.substr(second + 1)},
                                        date[first]}};
}

std::optional<Day> day_from(std::string_view year, std::string_view month, std::string_view day) {
    if (year.size() != 4 || month.size() > 2 || day.size() > 2) {
        return std::nullopt;
    }
    const auto y = whole(year);
    const auto m = whole(month);
    const auto d = whole(day);
    return y && m && d ? make_day({*y, *m, *d}) : std::nullopt;
}

}  // namespace

Sentence to_text(DateFormat format) {
    switch (format) {
        case DateFormat::year_month_day:
            return say("year-month-day");
        case DateFormat::day_month_year:
            return say("day-month-year");
        case DateFormat::month_day_year:
            return say("month-day-year");
    }
    return {};
}

std::span<const Word<DateFormat>> words(DateFormat) {
    static constexpr std::array table{
        Word<DateFormat>{DateFormat::year_month_day, "year-month-day", "2026-04-12 or 20260412"},
        Word<DateFormat>{DateFormat::day_month_year, "day-month-year", "12/04/2026 or 12.4.2026"},
        Word<DateFormat>{DateFormat::month_day_year, "month-day-year", "4/12/2026"},
    };
    return table;
}

DayCell split_day(std::string_view text) {
    const auto cell = trimmed(text);
    const auto end = cell.find_first_of("T ");
    if (end == cell.npos || !is_clock(cell.substr(end + 1))) {
        return {cell, false};
    }
    return {cell.substr(0, end), !is_midnight(cell.substr(end + 1))};
}

std::optional<Day> parse_day(std::string_view date, DateFormat format) {
    const auto split = split_parts(date);
    if (!split) {
        return std::nullopt;
    }
    const auto& [first, second, third] = split->parts;
    switch (format) {
        case DateFormat::year_month_day:
            return day_from(first, second, third);
        case DateFormat::day_month_year:
            return day_from(third, second, first);
        case DateFormat::month_day_year:
            return split->separator == '.' ? std::nullopt : day_from(third, first, second);
    }
    return std::nullopt;
}

std::optional<Day> read_day(std::string_view text, DateFormat format) {
    const auto date = split_day(text).date;
    const auto year_first = parse_day(date, DateFormat::year_month_day);
    return year_first ? year_first : parse_day(date, format);
}

std::optional<DateFormat> DayOrder::proved() const {
    if (day_first.has_value() == month_first.has_value()) {
        return std::nullopt;
    }
    return day_first ? DateFormat::day_month_year : DateFormat::month_day_year;
}

DayOrder order_of(std::span<const std::string> texts) {
    DayOrder order;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const auto day_first = read_day(texts[i], DateFormat::day_month_year);
        const auto month_first = read_day(texts[i], DateFormat::month_day_year);
        const auto note = [i](std::optional<std::size_t>& place, bool holds) {
            place = holds && !place ? std::optional{i} : place;
        };
        note(order.day_first, day_first && !month_first);
        note(order.month_first, month_first && !day_first);
        note(order.in_doubt, day_first && month_first && *day_first != *month_first);
    }
    return order;
}

}  // namespace pipward::intake
