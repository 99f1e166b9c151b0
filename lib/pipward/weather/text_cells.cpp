// SPDX-License-Identifier: MIT
#include "pipward/weather/text_cells.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace pipward::weather {
namespace {

constexpr std::array<std::string_view, 16> words_for_nothing{
    "", "na", "n/a", "nan", "null", "none", "nil", "m", "missing", "-", "--", "---", ".", "?", "x", "*"};
constexpr std::array figures_for_nothing{-99.0,   -99.9, -99.99, -999.0, -999.9, -999.99, -9999.0,
                                         -9999.9, 999.0, 999.9,  999.99, 9999.0, 9999.9};

bool means_nothing(double value) {
    return std::ranges::any_of(figures_for_nothing,
                               [&](double figure) { return std::abs(value - figure) < 1e-6; });
}

/// A typographic minus and a decimal comma become what the parser knows.
std::string plain_number(std::string_view text) {
    constexpr std::string_view minus_sign = "\xE2\x88\x92";
    std::string plain(text);
    if (plain.starts_with(minus_sign)) {
        plain.replace(0, minus_sign.size(), "-");
    }
    if (plain.starts_with('+')) {
        plain.erase(0, 1);
    }
    if (std::ranges::count(plain, ',') == 1 && plain.find('.') == std::string::npos) {
        plain[plain.find(',')] = '.';
    }
    return plain;
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool all_digits(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, is_digit);
}

/// What follows a date: "13:00", "06:00:00Z", "1300" - not the "12 2026" of a date in words.
bool is_clock(std::string_view time) {
    return time.find(':') != std::string_view::npos || (time.size() <= 4 && all_digits(time));
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
    if (first == std::string_view::npos) {
        if (date.size() != 8 || !all_digits(date)) {
            return std::nullopt;
        }
        return DayParts{{date.substr(0, 4), date.substr(4, 2), date.substr(6, 2)}, 0};
    }
    const char separator = date[first];
    const auto second = date.find(separator, first + 1);
    if (second == std::string_view::npos) {
        return std::nullopt;
    }
    return DayParts{
        {date.substr(0, first), date.substr(first + 1, second - first - 1), date.substr(second + 1)},
        separator};
}

std::optional<Day> day_from(std::string_view year, std::string_view month, std::string_view day) {
    if (year.size() != 4 || month.size() > 2 || day.size() > 2) {
        return std::nullopt;
    }
    const auto y = parse_whole(year);
    const auto m = parse_whole(month);
    const auto d = parse_whole(day);
    return y && m && d ? make_day({*y, *m, *d}) : std::nullopt;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return lower;
}

std::optional<int> parse_whole(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool whole = all_digits(text) && error == std::errc{} && end == text.data() + text.size();
    return whole ? std::optional{value} : std::nullopt;
}

NumberCell parse_number(std::string_view text) {
    if (std::ranges::find(words_for_nothing, lower_case(trimmed(text))) != words_for_nothing.end()) {
        return {std::nullopt, true};
    }
    const std::string plain = plain_number(trimmed(text));
    double value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc{} || end != plain.data() + plain.size() || !std::isfinite(value)) {
        return {};
    }
    return means_nothing(value) ? NumberCell{std::nullopt, true} : NumberCell{value, false};
}

DayCell split_day(std::string_view text) {
    const std::string_view cell = trimmed(text);
    const auto end = cell.find_first_of("T ");
    if (end == std::string_view::npos || !is_clock(cell.substr(end + 1))) {
        return {cell, false};
    }
    return {cell.substr(0, end), !is_midnight(cell.substr(end + 1))};
}

std::optional<Day> parse_day(std::string_view date, DayFormat format) {
    const auto split = split_parts(date);
    if (!split) {
        return std::nullopt;
    }
    const auto& [first, second, third] = split->parts;
    switch (format) {
        case DayFormat::year_month_day:
            return day_from(first, second, third);
        case DayFormat::day_month_year:
            return day_from(third, second, first);
        case DayFormat::month_day_year:
            return split->separator == '.' ? std::nullopt : day_from(third, first, second);
    }
    return std::nullopt;
}

}  // namespace pipward::weather
