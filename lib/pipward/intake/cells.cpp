// SPDX-License-Identifier: MIT
#include "pipward/intake/cells.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "pipward/record/spreadsheet_text.h"
#include "pipward/value/utf8.h"

namespace pipward::intake {
namespace {

constexpr std::string_view minus_sign = "\xE2\x88\x92";

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool is_figure(char c) {
    return c >= '0' && c <= '9';
}

bool is_capital(char c) {
    return c >= 'A' && c <= 'Z';
}

/// "+A1", "-$B$2*3": a sign and then a cell's name.
bool is_sum_of_cells(std::string_view text) {
    if (!text.starts_with('+') && !text.starts_with('-')) {
        return false;
    }
    auto rest = text.substr(1);
    rest.remove_prefix(rest.starts_with('$') ? 1 : 0);
    const auto letters = static_cast<std::size_t>(std::ranges::find_if_not(rest, is_capital) - rest.begin());
    rest.remove_prefix(letters);
    rest.remove_prefix(rest.starts_with('$') ? 1 : 0);
    return letters >= 1 && letters <= 3 && !rest.empty() && is_figure(rest.front());
}

/// "#REF!", "#NAME?", "#N/A", "#####": what a spreadsheet shows instead of a value.
bool is_error_value(std::string_view text) {
    return text.size() > 1 && text.starts_with('#') &&
           (text.ends_with('!') || text.ends_with('?') || text == "#N/A" || text == "#NV" ||
            text.find_first_not_of('#') == std::string_view::npos);
}

}  // namespace

std::string lower_case(std::string_view text) {
    std::string result(text);
    std::ranges::transform(result, result.begin(), lower);
    return result;
}

bool says_nothing(std::string_view text) {
    static constexpr std::array<std::string_view, 6> nothings{"n/a", "na", "null", "none", "nan", "<null>"};
    text = trimmed(text);
    return text.find_first_not_of("-?.") == text.npos ||
           std::ranges::find(nothings, lower_case(text)) != nothings.end();
}

std::optional<double> read_number(std::string_view text, std::string_view unit) {
    text = trimmed(text);
    if (!unit.empty() && text.size() > unit.size() && text.ends_with(unit)) {
        text = trimmed(text.substr(0, text.size() - unit.size()));
    }
    text.remove_prefix(text.starts_with('+') ? 1 : 0);
    std::string figures(text);
    if (figures.starts_with(minus_sign)) {
        figures.replace(0, minus_sign.size(), "-");
    }
    if (figures.find('.') == std::string::npos && std::ranges::count(figures, ',') == 1) {
        figures[figures.find(',')] = '.';
    }
    double value = 0;
    const auto [end, trouble] = std::from_chars(figures.data(), figures.data() + figures.size(), value);
    const bool all = trouble == std::errc{} && end == figures.data() + figures.size();
    return all && std::isfinite(value) ? std::optional{value} : std::nullopt;
}

std::optional<Finding> formula_or_error(std::string_view text) {
    if (is_error_value(text)) {
        return wrong_cell(text, say("A spreadsheet's error stands here instead of a value."),
                          say("Correct it in the spreadsheet, or type the value."));
    }
    if (text.starts_with('=') || text.starts_with('@') || is_sum_of_cells(text)) {
        return wrong_cell(text, say("This is a formula, not a value."),
                          say("Copy and paste the cells as values in the spreadsheet, or type the value."));
    }
    return std::nullopt;
}

bool may_have_thousands(std::string_view text) {
    text.remove_prefix(text.starts_with('-') || text.starts_with('+') ? 1 : 0);
    const auto first = text.find_first_of(".,");
    if (first == std::string_view::npos || first == 0 || first > 3 || text.front() == '0') {
        return false;
    }
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool parted = i >= first && (i - first) % 4 == 0;
        if (parted ? text[i] != '.' && text[i] != ',' : !is_figure(text[i])) {
            return false;
        }
    }
    return (text.size() - first) % 4 == 0;
}

std::string harmless(const std::string& text) {
    return record::harmless_in_spreadsheet(text);
}

std::string_view without_apostrophe(std::string_view text) {
    return record::without_guard(text);
}

Finding wrong_cell(std::string_view text, Sentence message, Sentence remedy) {
    return {Level::error, {}, {}, {}, one_line(text, 60), std::move(message), std::move(remedy)};
}

}  // namespace pipward::intake
