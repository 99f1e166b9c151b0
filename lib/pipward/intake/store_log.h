// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "pipward/seed/stratification_clock.h"
#include "pipward/value/finding.h"

namespace pipward::intake {

/// Readings of a cold store, by day, in the order of the file.
struct StoreReadings {
    std::map<Day, seed::StoreDay> days{};  ///< readings of each day that has any
    Findings findings{};  ///< errors for lines that cannot be read; nothing may be calculated then
};

/// Reads a thermometer's log: a heading, the first column a day (ISO 8601, a time of day may follow), the
/// next column that holds a number the temperature in °C. `file` names it in findings.
StoreReadings read_store_log(std::string_view bytes, const std::string& file);

/// The log as the cold clock wants it: a day without readings is not known.
seed::StoreLog log_of(const StoreReadings& readings);

}  // namespace pipward::intake
