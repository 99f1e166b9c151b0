// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "pipward/weather/weather_import.h"

namespace pipward::weather {

/// Whether the first line is one that NOAA's GHCN-Daily files have, in any of the forms below.
bool looks_like_ghcn(std::string_view text);

/// Reads NOAA's Global Historical Climatology Network, daily (Menne et al. 2012, J. Atmos. Oceanic Technol.
/// 29:897). The forms, from memory of their documentation:
/// - wide, as Climate Data Online gives it: header STATION, NAME, DATE, TMAX, TMIN and more, in Celsius or
/// Fahrenheit as
///   chosen at the download, or in whole tenths of a degree Celsius in the files by station. Columns
///   TMAX_ATTRIBUTES and TMIN_ATTRIBUTES hold flags parted by commas, the second for quality.
/// - long, by station or by year, with or without a header: ID, YYYYMMDD, ELEMENT, VALUE, MFLAG, QFLAG,
/// SFLAG, OBSTIME;
///   elements TMIN and TMAX in tenths of a degree Celsius.
/// Values with a quality flag have failed a check of their keeper: they are rejected and counted.
/// Of the options the long form knows file, station, station_in_file and source.
WeatherImport import_ghcn(std::string_view text, const WeatherFileOptions& options);

}  // namespace pipward::weather
