// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "pipward/intake/detail/line_findings.h"
#include "pipward/intake/weather_file.h"

/// What a file of weather gives once its cells are read.
namespace pipward::intake::detail {

/// One day's extremes as the file gives them.
struct RawReading {
    int line = 0;
    Day day;
    double t_min = 0;
    double t_max = 0;
};

/// A number, or nothing in one of the many ways of writing nothing, or something that is neither.
struct NumberCell {
    std::optional<double> value{};
    bool is_missing = false;
};
/// Missing: empty, NA, NaN, null, M, dashes and the like, and the figures -99, -99.9, -999, -9999, 999, 9999
/// with their fractions, none of which is a temperature in any unit.
NumberCell read_reading(std::string_view text);

/// An import while it is made.
struct WeatherWork {
    explicit WeatherWork(WeatherFileOptions stated) : options(std::move(stated)) {}

    WeatherFileOptions options;
    WeatherImport import{};
    LineFindings findings{options.file, import.findings};

    /// The import; without days where a finding is an error.
    WeatherImport finished();
};

/// The unit and why; where it is not plain an error that asks.
struct UnitChoice {
    std::optional<TemperatureUnit> unit{};
    Sentence why{};
};
UnitChoice choose_unit(std::span<const RawReading> readings, std::optional<TemperatureUnit> of_heading,
                       bool tenths_possible, WeatherWork& work);

/// Turns readings into days: converted, in order, one a day. Days whose minimum lies above the maximum and
/// temperatures beyond belief are left out with a warning, and are an error where they are more than a tenth
/// of all (the columns are swapped, the unit is wrong); a day told twice alike is kept once; told
/// differently, it is an error.
void take_readings(std::span<const RawReading> readings, TemperatureUnit unit, WeatherWork& work);

/// The records of the one station that is meant, and how the file calls it. An error that lists the stations
/// where there are several and none is chosen, or where the chosen one does not occur.
std::string pick_station(std::vector<Record>& records, std::size_t station_column, WeatherWork& work);

/// Says how many values the keeper's own checks had failed.
void note_rejected(int rejected, WeatherWork& work);

/// The wide form, once the cells are parted. `tenths_possible`: whether figures may be tenths of a degree.
void import_table(const Sheet& sheet, bool tenths_possible, WeatherWork& work);

}  // namespace pipward::intake::detail
