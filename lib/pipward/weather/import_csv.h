// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "pipward/weather/weather_import.h"

namespace pipward::weather {

/// Reads a table of daily extremes with a header line: comma, semicolon or tab, decimal point or comma,
/// columns in any order and under many names, days in any order of their parts, Celsius or Fahrenheit. What
/// the file does not make plain is asked for by a finding that names the option, never guessed. A day without
/// both readings is left out and counted, never zero. Hourly files are refused. `understood` tells how the
/// file was read.
WeatherImport import_csv(std::string_view text, const WeatherFileOptions& options);

}  // namespace pipward::weather
