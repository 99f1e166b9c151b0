// SPDX-License-Identifier: MIT
#include "pipward/seed/store_log.h"

#include "pipward/weather/csv_text.h"
#include "pipward/weather/text_cells.h"

namespace pipward::seed {
namespace {

constexpr double coldest_store = -40;
constexpr double warmest_store = 50;

Finding wrong_line(std::string_view file, const weather::CsvRecord& record, std::string field,
                   std::string value, Sentence message, Sentence remedy) {
    return {Level::error,     std::string(file), "line " + std::to_string(record.line),
            std::move(field), std::move(value),  std::move(message),
            std::move(remedy)};
}

std::optional<Celsius> temperature_of(const weather::CsvRecord& record) {
    for (std::size_t i = 1; i < record.fields.size(); ++i) {
        if (const auto number = weather::parse_number(record.fields[i]); number.value) {
            return Celsius{*number.value};
        }
    }
    return std::nullopt;
}

void take(StoreReadings& readings, const weather::CsvRecord& record, std::string_view file) {
    const auto& text = record.fields.front();
    const auto day = parse_iso_day(std::string(weather::trimmed(text).substr(0, 10)));
    if (!day) {
        readings.findings.push_back(wrong_line(file, record, "day", text, say("This is no day."),
                                               say("Write days as 2026-11-25; a time of day may follow.")));
        return;
    }
    const auto temperature = temperature_of(record);
    if (!temperature) {
        return;
    }
    if (temperature->degrees < coldest_store || temperature->degrees > warmest_store) {
        readings.findings.push_back(wrong_line(file, record, "temperature",
                                               fmt::format("{}", temperature->degrees),
                                               say("No cold store has this temperature."),
                                               say("Give degrees Celsius, the first number of the line.")));
        return;
    }
    readings.days[*day].push_back(*temperature);
}

}  // namespace

StoreReadings read_store_log(std::string_view text, std::string_view file) {
    const auto csv = weather::read_csv(text, file);
    StoreReadings readings;
    readings.findings = csv.findings;
    for (std::size_t i = 1; i < csv.records.size(); ++i) {
        take(readings, csv.records[i], file);
    }
    if (readings.days.empty() && readings.findings.empty()) {
        readings.findings.push_back({Level::error, std::string(file), "", "", "",
                                     say("The log holds no reading."),
                                     say("It needs a header, then lines such as 2026-12-01 06:00,3.5.")});
    }
    return readings;
}

StoreLog log_of(const StoreReadings& readings) {
    return [&readings](Day day) -> std::optional<StoreDay> {
        const auto found = readings.days.find(day);
        return found == readings.days.end() ? std::nullopt : std::optional{found->second};
    };
}

}  // namespace pipward::seed
