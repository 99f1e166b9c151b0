// SPDX-License-Identifier: MIT
#include "pipward/weather/header_words.h"

#include <algorithm>
#include <array>
#include <vector>

#include "pipward/weather/text_cells.h"

namespace pipward::weather {
namespace {

constexpr std::array<std::string_view, 19> days{
    "date",      "datum",     "dato",    "fecha",   "data",     "giorno", "datetime",
    "timestamp", "localdate", "obsdate", "dateutc", "yyyymmdd", "valid",  "observationdate",
    "validdate", "time",      "day",     "tag",     "jour"};
constexpr std::array<std::string_view, 6> years{"year", "yyyy", "yr", "jahr", "annee", "ano"};
constexpr std::array<std::string_view, 6> months{"month", "mm", "mo", "mon", "monat", "mois"};
constexpr std::array<std::string_view, 7> days_of_month{"dayofmonth", "dom", "mday", "dd",
                                                        "day",        "tag", "jour"};
constexpr std::array<std::string_view, 12> minima{"min", "minimum", "tmin", "low", "lowest", "lo",
                                                  "tn",  "tnk",     "mint", "tmn", "minima", "tminimum"};
constexpr std::array<std::string_view, 12> maxima{"max", "maximum", "tmax", "high", "highest", "hi",
                                                  "tx",  "txk",     "maxt", "tmx",  "maxima",  "tmaximum"};
constexpr std::array<std::string_view, 9> stations{"station",  "stationid", "stationname", "site", "siteid",
                                                   "location", "place",     "name",        "city"};

/// Words that say nothing about which of the two extremes a column holds; longer ones first.
constexpr std::array<std::string_view, 6> idle_words{"temperature", "temp",  "degrees",
                                                     "degree",      "daily", "air"};

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
    for (const std::string_view idle : idle_words) {
        replace_all(word, idle, "");
    }
    return word;
}

bool names_a_temperature(const std::string& word) {
    return std::ranges::find(minima, word) != minima.end() || std::ranges::find(maxima, word) != maxima.end();
}

std::optional<TemperatureUnit> unit_word(std::string_view word) {
    if (word == "c" || word == "celsius" || word == "degc" || word == "centigrade") {
        return TemperatureUnit::celsius;
    }
    if (word == "f" || word == "fahrenheit" || word == "degf") {
        return TemperatureUnit::fahrenheit;
    }
    return std::nullopt;
}

/// "temperaturef", "tminc": the unit's letter grown onto a word that is complete without it.
std::optional<TemperatureUnit> grown_on_unit(const std::string& word) {
    const std::string stem = word.substr(0, word.size() - 1);
    const std::string bare = without_idle_words(stem);
    const bool complete = names_a_temperature(bare) || (bare.empty() && !stem.empty());
    return complete && !names_a_temperature(word) ? unit_word(word.substr(word.size() - 1)) : std::nullopt;
}

bool says_tenths(std::string_view header) {
    const std::string text = lower_case(header);
    return text.find("tenth") != std::string::npos || text.find("0.1") != std::string::npos ||
           text.find("0,1") != std::string::npos;
}

}  // namespace

HeaderWords header_words(std::string_view header) {
    HeaderWords result;
    for (const std::string& word : words_in(std::string(header))) {
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
    if (says_tenths(header)) {
        replace_all(result.name, "tenthsof", "");
        replace_all(result.name, "tenths", "");
        replace_all(result.name, "01", "");
        result.unit = TemperatureUnit::tenths_celsius;
    }
    return result;
}

std::span<const std::string_view> day_names() {
    return days;
}
std::span<const std::string_view> year_names() {
    return years;
}
std::span<const std::string_view> month_names() {
    return months;
}
std::span<const std::string_view> day_of_month_names() {
    return days_of_month;
}
std::span<const std::string_view> minimum_names() {
    return minima;
}
std::span<const std::string_view> maximum_names() {
    return maxima;
}
std::span<const std::string_view> station_names() {
    return stations;
}

}  // namespace pipward::weather
