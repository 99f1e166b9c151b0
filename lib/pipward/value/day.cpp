// SPDX-License-Identifier: MIT
#include "pipward/value/day.h"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <chrono>

namespace pipward::value {
namespace {

std::chrono::year_month_day calendar(Day day) {
    return std::chrono::sys_days{std::chrono::days{day.since_1970}};
}

std::optional<int> parse_digits(std::string_view digits) {
    int value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc{} || end != digits.data() + digits.size() || digits.front() == '-') {
        return std::nullopt;
    }
    return value;
}

}  // namespace

std::optional<Day> make_day(YearMonthDay parts) {
    if (parts.year < 1 || parts.year > 9999 || parts.month < 1 || parts.day < 1) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date{std::chrono::year{parts.year},
                                           std::chrono::month{static_cast<unsigned>(parts.month)},
                                           std::chrono::day{static_cast<unsigned>(parts.day)}};
    if (!date.ok()) {
        return std::nullopt;
    }
    return Day{static_cast<std::int32_t>(std::chrono::sys_days{date}.time_since_epoch().count())};
}

YearMonthDay parts_of(Day day) {
    const auto date = calendar(day);
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}

int day_of_year(Day day) {
    return day - *make_day({parts_of(day).year, 1, 1}) + 1;
}

std::optional<Day> parse_iso_day(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = parse_digits(text.substr(0, 4));
    const auto month = parse_digits(text.substr(5, 2));
    const auto day = parse_digits(text.substr(8, 2));
    if (!year || !month || !day) {
        return std::nullopt;
    }
    return make_day({*year, *month, *day});
}

std::string to_iso(Day day) {
    const auto parts = parts_of(day);
    return fmt::format("{:04}-{:02}-{:02}", parts.year, parts.month, parts.day);
}

Sentence to_short_text(Day day) {
    const auto [year, month, number] = parts_of(day);
    switch (month) {
        case 1:
            return say("{} Jan", number);
        case 2:
            return say("{} Feb", number);
        case 3:
            return say("{} Mar", number);
        case 4:
            return say("{} Apr", number);
        case 5:
            return say("{} May", number);
        case 6:
            return say("{} Jun", number);
        case 7:
            return say("{} Jul", number);
        case 8:
            return say("{} Aug", number);
        case 9:
            return say("{} Sep", number);
        case 10:
            return say("{} Oct", number);
        case 11:
            return say("{} Nov", number);
        default:
            return say("{} Dec", number);
    }
}

}  // namespace pipward::value
