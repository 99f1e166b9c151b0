// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/intake/days.h"
#include "pipward/intake/sheet.h"
#include "pipward/record/orchard.h"

/// Foreign files of daily weather as days of a station.
namespace pipward::intake {

/// In which unit a file writes its temperatures.
enum class TemperatureUnit {
    celsius,        ///< degrees Celsius
    fahrenheit,     ///< degrees Fahrenheit
    tenths_celsius  ///< tenths of a degree Celsius, in whole figures
};

/// "degrees Celsius"
Sentence to_text(TemperatureUnit unit);
/// The units as they are typed.
std::span<const Word<TemperatureUnit>> words(TemperatureUnit);
/// By the definitions of the scales.
Celsius to_celsius(double value, TemperatureUnit unit);

/// What may be stated instead of being found out. Column names are those in the file's header, in any case.
struct WeatherFileOptions {
    std::string file;                                ///< how findings name the file
    std::string station;                             ///< the book's station; empty: as the file calls it
    WeatherSource source = WeatherSource::observed;  ///< of every day of the file
    std::optional<std::string> station_in_file;      ///< which one, where the file holds several
    std::optional<std::string> day_column;      ///< found by its heading where not given, as the next three
    std::optional<std::string> t_min_column;    ///< of the lowest temperatures
    std::optional<std::string> t_max_column;    ///< of the highest temperatures
    std::optional<std::string> station_column;  ///< of a file with several stations
    std::optional<TemperatureUnit> unit;        ///< found out where not given
    std::optional<DateFormat> date_format;      ///< found out where not given
    /// Days to add to the file's dates, -1..1; asked for where they are stamped with a time of UTC that is
    /// not midnight.
    std::optional<int> day_shift{};
    /// Days behind it cannot have been observed: an error. Nothing: not looked at.
    std::optional<Day> today{};
};

/// A weather file as it was read.
struct WeatherImport {
    std::vector<WeatherDay> days;  ///< in day order, one a day; none where a finding is an error
    Sentence understood;           ///< sentences: which columns, which unit and why, which days
    Findings findings;             ///< row = "line 12"
};

/// Readings outside these cannot be air temperatures of an orchard: they are typing errors or another unit.
inline constexpr Celsius coldest_believable{-60};
inline constexpr Celsius hottest_believable{60};  ///< both included

/// Either of the two below, by the file's first lines.
WeatherImport read_weather_file(std::string_view bytes, const WeatherFileOptions& options);

/// Reads a table of daily extremes with a header line: columns in any order and under many names, days in any
/// order of their parts, decimal point or comma, Celsius or Fahrenheit. Of the file no more than its days is
/// held. What the file does not make plain is asked for by a finding that names the option, never guessed. A
/// day without both readings is left out and counted, never zero. Hourly files are refused. `understood`
/// tells how the file was read.
///
/// The unit is told by the first of these that can: the option; the headers; the values. Of the values the
/// *warm mark* is looked at, which one maximum in twenty exceeds: above 130 it is neither Celsius nor
/// Fahrenheit (but tenths of a degree Celsius in GHCN files of whole figures); above 50 it is Fahrenheit, for
/// nowhere is one day in twenty so hot in Celsius; otherwise it is Celsius where the file has 200 days or
/// more, for so many days pass through a summer, and in Fahrenheit none of them would be warmer than 10
/// °C. A shorter file that stays below 50 could be either: an error that asks.
WeatherImport import_csv(std::string_view bytes, const WeatherFileOptions& options);

/// Whether the first line is one that NOAA's GHCN-Daily files have, in any of the forms below.
bool looks_like_ghcn(std::string_view bytes);

/// Whether the first line is one of GHCN-Daily's lines of fixed width.
bool looks_like_dly(std::string_view bytes);

/// Reads NOAA's Global Historical Climatology Network, daily (Menne et al. 2012, J. Atmos. Oceanic Technol.
/// 29:897). The forms, from memory of their documentation:
/// - wide, as Climate Data Online gives it: header STATION, NAME, DATE, TMAX, TMIN and more, in Celsius or
/// Fahrenheit as chosen at the download, or in whole tenths of a degree Celsius in the files by station.
/// Columns TMAX_ATTRIBUTES and TMIN_ATTRIBUTES hold flags parted by commas, the second for quality.
/// - long, by station or by year, with or without a header: ID, YYYYMMDD, ELEMENT, VALUE, MFLAG, QFLAG,
/// SFLAG, OBSTIME; elements TMIN and TMAX in tenths of a degree Celsius.
/// - of fixed width (.dly), by station, a line a month and element: ID in columns 1 to 11, year 12 to 15,
/// month 16 to 17, element 18 to 21, then for each of 31 days the value in 5 columns, -9999 where missing,
/// and the flags of measurement, quality and source in one each (section III of the archive's readme). Values
/// with a quality flag have failed a check of their keeper: they are rejected and counted. Of the options the
/// long form and that of fixed width know file, station, station_in_file and source.
WeatherImport import_ghcn(std::string_view bytes, const WeatherFileOptions& options);

}  // namespace pipward::intake
