// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

/// What weather files call their columns, as weather_heading() makes the names; the best-liked first.
namespace pipward::intake::detail {

// Those of national weather services stand among them, from memory: of Germany (MESS_DATUM, STATIONS_ID, TNK,
// TXK), Britain (ob_end_time, src_id, min_air_temp, max_air_temp), France (AAAAMMJJ, NUM_POSTE, TN, TX),
// Switzerland (reference_timestamp, tre200dn, tre200dx), Austria (tlmin, tlmax) and the United States (DATE,
// TMIN, TMAX, MIN_TEMP_F).
inline constexpr std::array<std::string_view, 24> day_words{
    "date",      "datum",     "dato",      "fecha",
    "data",      "giorno",    "datetime",  "timestamp",
    "localdate", "obsdate",   "dateutc",   "yyyymmdd",
    "aaaammjj",  "jjjjmmtt",  "valid",     "observationdate",
    "validdate", "messdatum", "obendtime", "referencetimestamp",
    "time",      "day",       "tag",       "jour"};
inline constexpr std::array<std::string_view, 7> year_words{"year",  "yyyy", "yr", "jahr",
                                                            "annee", "an",   "ano"};
inline constexpr std::array<std::string_view, 6> month_words{"month", "mm", "mo", "mon", "monat", "mois"};
inline constexpr std::array<std::string_view, 7> day_of_month_words{"dayofmonth", "dom", "mday", "dd",
                                                                    "day",        "tag", "jour"};
inline constexpr std::array<std::string_view, 18> minimum_words{
    "min", "minimum", "tmin",     "low",     "lowest",   "lo",     "tn",         "tnk",   "mint",
    "tmn", "minima",  "minimale", "minimal", "tminimum", "tiefst", "tiefstwert", "tlmin", "tre200dn"};
inline constexpr std::array<std::string_view, 18> maximum_words{
    "max", "maximum", "tmax",     "high",    "highest",  "hi",     "tx",         "txk",   "maxt",
    "tmx", "maxima",  "maximale", "maximal", "tmaximum", "hochst", "hochstwert", "tlmax", "tre200dx"};
inline constexpr std::array<std::string_view, 16> station_words{
    "station",  "stationid", "stationname", "stationsid", "stationabbr", "site", "siteid", "srcid",
    "numposte", "poste",     "posten",      "location",   "place",       "name", "city",   "stn"};

inline bool is_in(std::span<const std::string_view> words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

}  // namespace pipward::intake::detail
