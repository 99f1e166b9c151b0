// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/readings.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <ranges>
#include <set>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/unit_change.h"
#include "pipward/weather/odd_days.h"

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

void refuse_changed_unit(std::span<const RawReading> readings, WeatherWork& work) {
    if (const auto change = find_unit_change(readings)) {
        work.findings.of_file(say("line {}", change->line),
                              {Level::error, "unit", to_iso(change->day),
                               say("From here on the temperatures seem to be in {}, before it in {}.",
                                   to_text(change->after), to_text(change->before)),
                               say("Part the file here, and import each part with the option unit.")});
    }
}

void refuse_days_to_come(std::span<const RawReading> readings, WeatherWork& work) {
    const auto& today = work.options.today;
    if (!today || work.options.source != WeatherSource::observed) {
        return;
    }
    const auto first = std::ranges::upper_bound(readings, *today, {}, &RawReading::day);
    if (const auto number = readings.end() - first; number > 0) {
        work.findings.of_file(
            say("line {}", first->line),
            {Level::error, "day", to_iso(first->day),
             number == 1
                 ? say("A day in the future of {} cannot have been observed.", to_iso(*today))
                 : say("{} days in the future of {} cannot have been observed.", number, to_iso(*today)),
             say("If they are a forecast, import them from a file of their own with source forecast; else "
                 "correct the dates.")});
    }
}

Remark remark_of(const weather::OddDay& odd) {
    using enum weather::Oddity;
    const auto reading = fmt::format("{:.1f}", odd.reading.degrees);
    switch (odd.oddity) {
        case zeros_for_missing:
            return {Level::warning, "t_min, t_max", "0, 0",
                    say("Both temperatures are 0, unlike the days around: they seem to stand for a missing "
                        "reading, and the day is left out."),
                    say("Leave cells without a reading empty.")};
        case both_zero:
            return {Level::warning, "t_min, t_max", "0, 0",
                    say("Both temperatures are 0: do they stand for a missing reading?"),
                    say("If so, leave the cells empty and import the file again with replace-existing.")};
        case point_lost:
            return {Level::warning, "t_min, t_max", reading,
                    say("The temperature is ten times what the days around have: it seems to have lost its "
                        "decimal point, and the day is left out."),
                    say("Correct it.")};
        case far_off:
            return {Level::warning, "t_min, t_max", reading,
                    say("The temperature lies far off those of the days around; it was taken as it stands."),
                    say("Check it; correct it in the file if it is wrong, and import that again with "
                        "replace-existing.")};
        case unchanging:
            return {Level::warning, "t_min, t_max", reading,
                    say("A temperature stays the same for {} days from here: the thermometer may be stuck.",
                        odd.days),
                    say("Leave out the days on which it was.")};
    }
    return {};
}

int line_of(std::span<const RawReading> readings, Day day) {
    const auto found = std::ranges::lower_bound(readings, day, {}, &RawReading::day);
    return found == readings.end() ? 0 : found->line;
}

/// Where a point was lost shows in the unit of the file alone.
weather::OddDay in_unit(weather::OddDay odd, TemperatureUnit unit) {
    if (odd.oddity == weather::Oddity::point_lost && unit == TemperatureUnit::fahrenheit) {
        odd.oddity = weather::Oddity::far_off;
    }
    return odd;
}

void leave_out_odd_days(std::span<const RawReading> readings, TemperatureUnit unit, WeatherWork& work) {
    auto& days = work.import.days;
    std::set<Day> no_readings;
    for (const auto& found : weather::odd_days(weather::daily_series(days, work.options.station))) {
        const auto odd = in_unit(found, unit);
        work.findings.of_line(line_of(readings, odd.day), remark_of(odd));
        if (weather::is_no_reading(odd.oddity)) {
            no_readings.insert(odd.day);
        }
    }
    std::erase_if(days, [&](const WeatherDay& day) { return no_readings.contains(day.day); });
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

bool has_thermometers(Day day) {
    constexpr int first_year = 1772;
    constexpr int last_year = 2200;
    const int year = parts_of(day).year;
    return year >= first_year && year <= last_year;
}

void Readings::add(const RawReading& reading) {
    const auto [first, is_new] = days_.try_emplace(reading.day, reading);
    if (!is_new) {
        note_repeated(first->second, reading, findings_);
    }
}

std::vector<RawReading> Readings::by_day() const {
    const auto readings = std::views::values(days_);
    return {readings.begin(), readings.end()};
}

void take_readings(std::span<const RawReading> readings, TemperatureUnit unit, WeatherWork& work) {
    auto& findings = work.findings;
    std::vector<RawReading> good;
    std::ranges::copy_if(readings, std::back_inserter(good),
                         [&](const RawReading& reading) { return passes(reading, unit, findings); });
    refuse_if_common(reversed(), readings.size(), findings,
                     say("On many days the minimum lies above the maximum: the columns seem swapped."),
                     say("Name them with the options t-min-column and t-max-column."));
    refuse_if_common(unbelievable(), readings.size(), findings,
                     say("Too many temperatures are implausible in {}: the unit seems wrong.", to_text(unit)),
                     say("State the right unit with the option unit."));
    refuse_changed_unit(readings, work);
    refuse_days_to_come(readings, work);
    for (const RawReading& reading : good) {
        work.import.days.push_back({.fid = 0,
                                    .station = work.options.station,
                                    .day = reading.day,
                                    .t_min = to_celsius(reading.t_min, unit),
                                    .t_max = to_celsius(reading.t_max, unit),
                                    .source = work.options.source});
    }
    if (work.options.source == WeatherSource::observed && !findings.any_error()) {
        leave_out_odd_days(good, unit, work);
    }
    work.import.understood += verbatim(" ") + days_sentence(work.import.days);
}

void StationNames::see(const std::string& name) {
    constexpr std::size_t most = 10'000;
    if (!name.empty() && names_.size() < most) {
        names_.insert(name);
    }
}

std::string pick_station(const StationNames& stations, WeatherWork& work) {
    const auto& names = stations.names();
    const auto& wanted = work.options.station_in_file;
    const auto ask = [&](Sentence message) {
        work.findings.error("station_in_file", wanted.value_or(""), std::move(message),
                            say("Choose one with the option station-in-file: {}.", listed(names)));
    };
    if (wanted) {
        if (!names.contains(*wanted)) {
            ask(say("The file does not hold this station."));
        }
        return *wanted;
    }
    if (names.size() > 1) {
        ask(say("The file holds {} stations.", names.size()));
    }
    return names.size() == 1 ? *names.begin() : std::string{};
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
