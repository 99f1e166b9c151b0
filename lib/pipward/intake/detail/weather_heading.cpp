// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <utility>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/weather_columns.h"
#include "pipward/intake/detail/weather_words.h"

namespace pipward::intake::detail {
namespace {

/// Words that say nothing about which of the two extremes a column holds; longer ones first.
constexpr std::array<std::string_view, 9> idle_words{"temperature", "temperatur", "temp", "degrees", "degree",
                                                     "daily",       "luft",       "air",  "tages"};

/// Letters with marks that occur in headings of European files, as plain ones.
constexpr std::array<std::pair<std::string_view, std::string_view>, 10> plain_letters{{{"\xC3\xA9", "e"},
                                                                                       {"\xC3\xA8", "e"},
                                                                                       {"\xC3\x89", "e"},
                                                                                       {"\xC3\xB6", "o"},
                                                                                       {"\xC3\x96", "o"},
                                                                                       {"\xC3\xA1", "a"},
                                                                                       {"\xC3\xAD", "i"},
                                                                                       {"\xC3\xB3", "o"},
                                                                                       {"\xC3\xA4", "a"},
                                                                                       {"\xC3\xB1", "n"}}};

bool is_letter_or_digit(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
}

void replace_all(std::string& text, std::string_view from, std::string_view to) {
    for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
        text.replace(at, from.size(), to);
    }
}

std::vector<std::string> words_in(std::string text) {
    replace_all(text, "\xE2\x84\x83", " c ");  // the single sign for degrees Celsius
    replace_all(text, "\xE2\x84\x89", " f ");
    for (const auto& [marked, plain] : plain_letters) {
        replace_all(text, marked, plain);
    }
    std::vector<std::string> words;
    bool inside = false;
    for (const char c : lower_case(text)) {
        if (is_letter_or_digit(c)) {
            inside ? words.back() += c : words.emplace_back(1, c);
        }
        inside = is_letter_or_digit(c);
    }
    return words;
}

std::string without_idle_words(std::string word) {
    for (const auto idle : idle_words) {
        replace_all(word, idle, "");
    }
    return word;
}

bool names_a_temperature(std::string_view word) {
    return is_in(minimum_words, word) || is_in(maximum_words, word);
}

std::optional<TemperatureUnit> unit_word(std::string_view word) {
    constexpr std::array<std::string_view, 4> celsius{"c", "celsius", "degc", "centigrade"};
    constexpr std::array<std::string_view, 3> fahrenheit{"f", "fahrenheit", "degf"};
    return is_in(celsius, word)      ? std::optional{TemperatureUnit::celsius}
           : is_in(fahrenheit, word) ? std::optional{TemperatureUnit::fahrenheit}
                                     : std::nullopt;
}

/// "temperaturef", "tminc": the unit's letter grown onto a word that is complete without it.
std::optional<TemperatureUnit> grown_on_unit(const std::string& word) {
    const std::string stem = word.substr(0, word.size() - 1);
    const std::string bare = without_idle_words(stem);
    const bool complete = names_a_temperature(bare) || (bare.empty() && !stem.empty());
    return complete && !names_a_temperature(word) ? unit_word(word.substr(word.size() - 1)) : std::nullopt;
}

bool says_tenths(std::string_view heading) {
    constexpr std::array<std::string_view, 3> signs{"tenth", "0.1", "0,1"};
    const std::string text = lower_case(heading);
    return std::ranges::any_of(signs, [&](auto sign) { return text.find(sign) != std::string::npos; });
}

}  // namespace

WeatherHeading weather_heading(std::string_view heading) {
    WeatherHeading result;
    for (const std::string& word : words_in(std::string(heading))) {
        if (const auto unit = unit_word(word)) {
            result.unit = unit;
        } else if (const auto grown = grown_on_unit(word)) {
            result.unit = grown;
            result.name += word.substr(0, word.size() - 1);
        } else if (word != "deg") {
            result.name += word;
        }
    }
    if (const std::string bare = without_idle_words(result.name); !bare.empty()) {
        result.name = bare;
    }
    if (says_tenths(heading)) {
        for (const auto* tenths : {"tenthsof", "tenths", "01"}) {
            replace_all(result.name, tenths, "");
        }
        result.unit = TemperatureUnit::tenths_celsius;
    }
    return result;
}

}  // namespace pipward::intake::detail
