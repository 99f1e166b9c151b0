// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/weather/csv_text.h"
#include "pipward/weather/weather_import.h"

namespace pipward::weather {

/// What import_csv does once the text is split. `tenths_possible`: see choose_unit.
WeatherImport import_table(const CsvText& csv, const WeatherFileOptions& options, bool tenths_possible);

struct StationRecords {
    std::string station;  ///< as the file names it; empty where it has no such column
    std::vector<CsvRecord> records;
};

/// The records of the one station that is meant. An error that lists the stations where there are several and
/// none is picked, or where the picked one does not occur.
StationRecords pick_station(std::vector<CsvRecord> records, std::size_t station_column,
                            const WeatherFileOptions& options, Findings& findings);

}  // namespace pipward::weather
