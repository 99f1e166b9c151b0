// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/readings.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "pipward/intake/cells.h"

namespace pipward::intake::detail {
namespace {

constexpr std::array<std::string_view, 16> words_for_nothing{
    "", "na", "n/a", "nan", "null", "none", "nil", "m", "missing", "-", "--", "---", ".", "?", "x", "*"};
constexpr std::array figures_for_nothing{-99.0,   -99.9, -99.99, -999.0, -999.9, -999.99, -9999.0,
                                         -9999.9, 999.0, 999.9,  999.99, 9999.0, 9999.9};

Sentence reversed() {
    return say("The day's minimum lies above its maximum; the day is left out.");
}
Sentence unbelievable() {
    return say("No orchard's air is this cold or hot; the day is left out.");
}

bool believable(double value, TemperatureUnit unit) {
    const auto t = to_celsius(value, unit);
    return t >= coldest_believable && t <= hottest_believable;
}

/// Says so and returns false where the reading cannot be a day's extremes.
bool passes(const RawReading& reading, TemperatureUnit unit, LineFindings& findings) {
    const auto both = fmt::format("{}, {}", reading.t_min, reading.t_max);
    if (!believable(reading.t_min, unit) || !believable(reading.t_max, unit)) {
        findings.of_line(reading.line,
                         {Level::warning, "t_min, t_max", both, unbelievable(),
                          say("Correct it, or state the unit: the file was read in {}.", to_text(unit))});
        return false;
    }
    if (reading.t_min > reading.t_max) {
        findings.of_line(reading.line, {Level::warning, "t_min, t_max", both, reversed(),
                                        say("Correct the day's two temperatures.")});
        return false;
    }
    return true;
}

void refuse_if_common(const Sentence& kind, std::size_t of, LineFindings& findings, Sentence message,
                      Sentence remedy) {
    const int count = findings.count(kind);
    if (static_cast<std::size_t>(count) * 10 > of) {
        findings.forget(kind);
        findings.error("t_min, t_max", fmt::format("{} of {} days", count, of), std::move(message),
                       std::move(remedy));
    }
}

void note_repeated(const RawReading& first, const RawReading& again, LineFindings& findings) {
    if (first.t_min == again.t_min && first.t_max == again.t_max) {
        findings.of_line(again.line, {Level::notice,
                                      "day",
                                      to_iso(again.day),
                                      say("The day occurs twice with the same values; it is used once."),
                                      {}});
        return;
    }
    findings.of_line(
        again.line,
        {Level::error, "day", fmt::format("{} (line {})", to_iso(again.day), first.line),
         say("The day occurs on an earlier line with other temperatures."),
         say("Keep the right one of the two, or name the column of the stations (option station-column).")});
}

std::vector<RawReading> one_a_day(std::vector<RawReading> readings, LineFindings& findings) {
    std::ranges::stable_sort(readings, {}, &RawReading::day);
    std::vector<RawReading> kept;
    for (const RawReading& reading : readings) {
        if (!kept.empty() && kept.back().day == reading.day) {
            note_repeated(kept.back(), reading, findings);
        } else {
            kept.push_back(reading);
        }
    }
    return kept;
}

Sentence days_sentence(const std::vector<WeatherDay>& days) {
    return days.empty() ? say("No day was read.")
                        : say("{} days were read, from {} to {}.", days.size(), to_iso(days.front().day),
                              to_iso(days.back().day));
}

Sentence listed(const std::set<std::string>& stations) {
    constexpr std::size_t most = 20;
    std::vector<std::string> names(stations.begin(), stations.end());
    names.resize(std::min(most, names.size()));
    const auto list = fmt::format("{}", fmt::join(names, "; "));
    return stations.size() <= most ? verbatim(list) : say("{} and {} more", list, stations.size() - most);
}

}  // namespace

NumberCell read_reading(std::string_view text) {
    if (std::ranges::find(words_for_nothing, lower_case(trimmed(text))) != words_for_nothing.end()) {
        return {std::nullopt, true};
    }
    const auto value = read_number(text);
    const bool is_missing = value && std::ranges::any_of(figures_for_nothing, [&](double figure) {
                                return std::abs(*value - figure) < 1e-6;
                            });
    return is_missing ? NumberCell{std::nullopt, true} : NumberCell{value, false};
}

WeatherImport WeatherWork::finished() {
    findings.finish();
    if (findings.any_error()) {
        import.days.clear();
    }
    return std::move(import);
}

void take_readings(std::span<const RawReading> readings, TemperatureUnit unit, WeatherWork& work) {
    auto& findings = work.findings;
    std::vector<RawReading> good;
    std::ranges::copy_if(readings, std::back_inserter(good),
                         [&](const RawReading& reading) { return passes(reading, unit, findings); });
    for (const RawReading& reading : one_a_day(std::move(good), findings)) {
        work.import.days.push_back({.fid = 0,
                                    .station = work.options.station,
                                    .day = reading.day,
                                    .t_min = to_celsius(reading.t_min, unit),
                                    .t_max = to_celsius(reading.t_max, unit),
                                    .source = work.options.source});
    }
    refuse_if_common(reversed(), readings.size(), findings,
                     say("On many days the minimum lies above the maximum: the columns seem swapped."),
                     say("Name them with the options t-min-column and t-max-column."));
    refuse_if_common(unbelievable(), readings.size(), findings,
                     say("Too many temperatures are implausible in {}: the unit seems wrong.", to_text(unit)),
                     say("State the right unit with the option unit."));
    work.import.understood += verbatim(" ") + days_sentence(work.import.days);
}

std::string pick_station(std::vector<Record>& records, std::size_t station_column, WeatherWork& work) {
    std::set<std::string> stations;
    for (const Record& record : records) {
        stations.insert(record.at(station_column));
    }
    stations.erase("");
    const auto& wanted = work.options.station_in_file;
    const auto ask = [&](Sentence message) {
        work.findings.error("station_in_file", wanted.value_or(""), std::move(message),
                            say("Choose one with the option station-in-file: {}.", listed(stations)));
    };
    if (wanted) {
        if (!stations.contains(*wanted)) {
            ask(say("The file does not hold this station."));
        }
        std::erase_if(records, [&](const Record& record) { return record.at(station_column) != *wanted; });
        return *wanted;
    }
    if (stations.size() > 1) {
        ask(say("The file holds {} stations.", stations.size()));
        records.clear();
    }
    return stations.size() == 1 ? *stations.begin() : std::string{};
}

void note_rejected(int rejected, WeatherWork& work) {
    if (rejected > 0) {
        work.findings.of_file(
            {},
            {Level::notice,
             "quality flag",
             std::to_string(rejected),
             rejected == 1
                 ? say("1 value that failed a quality check of the file's keeper was rejected.")
                 : say("{} values that failed a quality check of the file's keeper were rejected.", rejected),
             {}});
    }
}

}  // namespace pipward::intake::detail
