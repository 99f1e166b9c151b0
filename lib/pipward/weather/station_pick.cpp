// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <set>

#include "pipward/weather/table_import.h"

namespace pipward::weather {
namespace {

constexpr std::size_t stations_listed = 20;

std::string station_of(const CsvRecord& record, std::size_t column) {
    return column < record.fields.size() ? record.fields[column] : std::string{};
}

Sentence listed(const std::set<std::string>& stations) {
    std::vector<std::string> names(stations.begin(), stations.end());
    if (names.size() <= stations_listed) {
        return verbatim(fmt::format("{}", fmt::join(names, "; ")));
    }
    names.resize(stations_listed);
    return say("{} and {} more", fmt::format("{}", fmt::join(names, "; ")),
               stations.size() - stations_listed);
}

Finding ask_for_station(const WeatherFileOptions& options, const std::set<std::string>& stations,
                        Sentence message) {
    return {.level = Level::error,
            .table = options.file,
            .row = {},
            .field = "station_in_file",
            .value = options.station_in_file.value_or(""),
            .message = std::move(message),
            .remedy = say("Pick one with the option station_in_file: {}.", listed(stations))};
}

}  // namespace

StationRecords pick_station(std::vector<CsvRecord> records, std::size_t station_column,
                            const WeatherFileOptions& options, Findings& findings) {
    std::set<std::string> stations;
    for (const CsvRecord& record : records) {
        if (auto station = station_of(record, station_column); !station.empty()) {
            stations.insert(std::move(station));
        }
    }
    if (options.station_in_file) {
        if (!stations.contains(*options.station_in_file)) {
            findings.push_back(
                ask_for_station(options, stations, say("The file does not hold this station.")));
        }
        std::erase_if(records, [&](const CsvRecord& record) {
            return station_of(record, station_column) != *options.station_in_file;
        });
        return {*options.station_in_file, std::move(records)};
    }
    if (stations.size() > 1) {
        findings.push_back(
            ask_for_station(options, stations, say("The file holds {} stations.", stations.size())));
        return {};
    }
    return {stations.empty() ? std::string{} : *stations.begin(), std::move(records)};
}

}  // namespace pipward::weather
