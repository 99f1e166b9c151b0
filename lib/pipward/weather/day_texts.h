// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/value/finding.h"
#include "pipward/weather/csv_columns.h"
#include "pipward/weather/csv_text.h"

namespace pipward::weather {

/// What one record says about its day, not yet read as a day.
struct DayText {
    int line = 0;
    std::string date;  ///< columns of year, month and day joined into one
    bool has_clock_time = false;
};

DayText day_text(const CsvRecord& record, const CsvColumns& columns);

/// The first line with a clock time in a file that tells some day more than once: the sign of hourly
/// readings. Nothing otherwise; a daily file may well be stamped with its time of observation.
std::optional<DayText> repeated_with_clock_time(std::span<const DayText> days);
Finding hourly_file(const DayText& where, const std::string& file);

}  // namespace pipward::weather
