// SPDX-License-Identifier: MIT
#include "pipward/intake/store_log.h"

#include <fmt/format.h>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/line_findings.h"
#include "pipward/intake/detail/readings.h"
#include "pipward/intake/detail/weather_columns.h"
#include "pipward/intake/sheet.h"

namespace pipward::intake {
namespace {

constexpr Celsius coldest_store{-40};
constexpr Celsius warmest_store{50};

bool heads_a_log(std::string_view heading) {
    const auto word = lower_case(heading);
    return detail::heads_weather(heading) || word == "degrees" || word == "temperature";
}

std::optional<Celsius> temperature_of(const Record& record) {
    for (std::size_t i = 1; i < record.fields.size(); ++i) {
        if (const auto number = detail::read_reading(record.fields[i]); number.value) {
            return Celsius{*number.value};
        }
    }
    return std::nullopt;
}

/// A day, whatever follows it.
std::optional<Day> day_of(const std::string& text) {
    const auto day = read_day(text, DateFormat::year_month_day);
    return day ? day : parse_iso_day(text.substr(0, 10));
}

void take(StoreReadings& readings, const std::string& file, const Record& record) {
    const auto day = day_of(record.at(0));
    const auto temperature = temperature_of(record);
    if (!day) {
        readings.findings.push_back(
            about_file(file, record.line,
                       {Level::error, "day", record.at(0), say("This is no day."),
                        say("Write dates as 2026-11-25; a time of day may follow.")}));
    } else if (temperature && (*temperature < coldest_store || *temperature > warmest_store)) {
        readings.findings.push_back(
            about_file(file, record.line,
                       {Level::error, "temperature", fmt::format("{}", temperature->degrees),
                        say("No cold store has this temperature."),
                        say("Give degrees Celsius, the first number of the line.")}));
    } else if (temperature) {
        readings.days[*day].push_back(*temperature);
    }
}

}  // namespace

StoreReadings read_store_log(std::string_view bytes, const std::string& file) {
    const auto sheet = read_sheet(bytes, file, heads_a_log);
    StoreReadings readings{{}, sheet.findings};
    for (const auto& record : sheet.rows()) {
        take(readings, file, record);
    }
    if (readings.days.empty() && !has_errors(readings.findings)) {
        readings.findings.push_back(
            about_file(file, 0,
                       {Level::error,
                        {},
                        {},
                        say("The log has no temperature."),
                        say("It needs a header, then lines such as 2026-12-01 06:00,3.5.")}));
    }
    return readings;
}

seed::StoreLog log_of(const StoreReadings& readings) {
    return [&readings](Day day) -> std::optional<seed::StoreDay> {
        const auto found = readings.days.find(day);
        return found == readings.days.end() ? std::nullopt : std::optional{found->second};
    };
}

}  // namespace pipward::intake
