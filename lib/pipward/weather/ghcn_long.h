// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include "pipward/weather/csv_text.h"
#include "pipward/weather/weather_import.h"

namespace pipward::weather {

/// Places of the long form's fields.
namespace ghcn_long {
enum Field : std::size_t { id, date, element, value, measurement_flag, quality_flag, fields_needed };
}

/// GHCN-Daily's long form; a header among the records is no element and falls away.
WeatherImport import_ghcn_long(std::vector<CsvRecord> records, const WeatherFileOptions& options);

void note_rejected(int rejected, const WeatherFileOptions& options, Findings& findings);

}  // namespace pipward::weather
