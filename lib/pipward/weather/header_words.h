// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "pipward/weather/weather_import.h"

namespace pipward::weather {

/// A column's header taken apart: "Max Temp (°F)" is the name "max" in degrees Fahrenheit.
struct HeaderWords {
    std::string
        name;  ///< lower case, letters and digits only, without unit, "temperature", "daily" and the like
    std::optional<TemperatureUnit> unit;
};

HeaderWords header_words(std::string_view header);

/// Names as header_words makes them, the best-liked first.
std::span<const std::string_view> day_names();
std::span<const std::string_view> year_names();
std::span<const std::string_view> month_names();
std::span<const std::string_view> day_of_month_names();
std::span<const std::string_view> minimum_names();
std::span<const std::string_view> maximum_names();
std::span<const std::string_view> station_names();

}  // namespace pipward::weather
