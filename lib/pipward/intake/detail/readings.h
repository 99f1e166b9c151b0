// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "pipward/intake/detail/line_findings.h"
#include "pipward/intake/detail/sheet_rows.h"
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

/// Whether thermometers can have told of the day: the longest daily series, that of central England, begins
/// in 1772 (from memory), and nobody forecasts 2200.
bool has_thermometers(Day day);

/// An import while it is made.
struct WeatherWork {
    explicit WeatherWork(WeatherFileOptions stated) : options(std::move(stated)) {}

    WeatherFileOptions options;
    WeatherImport import{};
    LineFindings findings{options.file, import.findings};

    /// The import; without days where a finding is an error.
    WeatherImport finished();
};

/// The readings of a file, one a day: what is held does not grow with the lines of the file.
class Readings {
  public:
    explicit Readings(LineFindings& findings) : findings_(findings) {}

    /// A day told twice alike is kept once; told differently, it is an error.
    void add(const RawReading& reading);
    std::vector<RawReading> by_day() const;

  private:
    LineFindings& findings_;
    std::map<Day, RawReading> days_{};
};

/// The unit and why; where it is not plain an error that asks.
struct UnitChoice {
    std::optional<TemperatureUnit> unit{};
    Sentence why{};
};
UnitChoice choose_unit(std::span<const RawReading> readings, std::optional<TemperatureUnit> of_heading,
                       bool tenths_possible, WeatherWork& work);

/// Turns readings, in day order and one a day, into days. Days whose minimum lies above the maximum and
/// temperatures beyond belief are left out with a warning, and are an error where they are more than a tenth
/// of all (the columns are swapped, the unit is wrong); so are zeros for missing days and readings that lost
/// their decimal point, while readings that are merely odd (weather/odd_days.h) are told and kept. A unit
/// that changes half-way is an error.
void take_readings(std::span<const RawReading> readings, TemperatureUnit unit, WeatherWork& work);

/// The stations of a file, as it calls them.
class StationNames {
  public:
    /// Empty names say nothing; after 10,000 others are only counted as more.
    void see(const std::string& name);
    const std::set<std::string>& names() const { return names_; }

  private:
    std::set<std::string> names_{};
};

/// How the file calls the one station that is meant; empty where it names none. An error that lists the
/// stations where there are several and none is chosen, or where the chosen one does not occur.
std::string pick_station(const StationNames& stations, WeatherWork& work);

/// Says how many values the keeper's own checks had failed.
void note_rejected(int rejected, WeatherWork& work);

/// What is special about a table of daily extremes.
struct TableForm {
    bool tenths_possible = false;  ///< whether whole figures may be tenths of a degree
    /// Clears values that their keeper has doubts about; returns how many. May be empty.
    std::function<int(Record&)> reject_flagged{};
};

/// The wide form, one line a day.
void import_table(const SheetRows& sheet, const TableForm& form, WeatherWork& work);

}  // namespace pipward::intake::detail
