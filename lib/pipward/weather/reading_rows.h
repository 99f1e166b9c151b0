// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>

#include "pipward/weather/file_conventions.h"

namespace pipward::weather {

/// Findings about single lines: after twenty of one kind the rest are only counted.
class LineFindings {
  public:
    LineFindings(std::string file, Findings& findings) : file_(std::move(file)), findings_(findings) {}

    void add(Level level, int line, std::string field, std::string value, Sentence message, Sentence remedy);
    /// Adds how many were left unsaid. Once, at the end.
    void finish();
    int count(const Sentence& message) const;
    /// Takes back what was said of such lines: a finding on the whole file says it better.
    void forget(const Sentence& message);

  private:
    struct Kind {
        Level level = Level::note;
        int count = 0;
        Sentence message = {};
    };

    std::string file_;
    Findings& findings_;
    std::map<std::string, Kind> kinds_;  ///< by message
};

/// Turns readings into days: converted, in order, one a day. Days whose minimum lies above the maximum and
/// temperatures beyond belief are left out with a warning, and are an error where they are more than a tenth
/// of all (the columns are swapped, the unit is wrong); a day told twice alike is kept once; told
/// differently, it is an error. Where a finding is an error `import.days` stays empty.
void take_readings(std::span<const RawReading> readings, TemperatureUnit unit,
                   const WeatherFileOptions& options, LineFindings& lines, WeatherImport& import);

}  // namespace pipward::weather
