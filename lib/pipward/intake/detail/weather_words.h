// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

/// What weather files call their columns, as weather_heading() makes the names; the best-liked first.
namespace pipward::intake::detail {

inline constexpr std::array<std::string_view, 19> day_words{
    "date",      "datum",     "dato",    "fecha",   "data",     "giorno", "datetime",
    "timestamp", "localdate", "obsdate", "dateutc", "yyyymmdd", "valid",  "observationdate",
    "validdate", "time",      "day",     "tag",     "jour"};
inline constexpr std::array<std::string_view, 6> year_words{"year", "yyyy", "yr", "jahr", "annee", "ano"};
inline constexpr std::array<std::string_view, 6> month_words{"month", "mm", "mo", "mon", "monat", "mois"};
inline constexpr std::array<std::string_view, 7> day_of_month_words{"dayofmonth", "dom", "mday", "dd",
                                                                    "day",        "tag", "jour"};
inline constexpr std::array<std::string_view, 12> minimum_words{
    "min", "minimum", "tmin", "low", "lowest", "lo", "tn", "tnk", "mint", "tmn", "minima", "tminimum"};
inline constexpr std::array<std::string_view, 12> maximum_words{
    "max", "maximum", "tmax", "high", "highest", "hi", "tx", "txk", "maxt", "tmx", "maxima", "tmaximum"};
inline constexpr std::array<std::string_view, 9> station_words{
    "station", "stationid", "stationname", "site", "siteid", "location", "place", "name", "city"};

inline bool is_in(std::span<const std::string_view> words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

}  // namespace pipward::intake::detail
