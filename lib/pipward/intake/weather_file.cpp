// SPDX-License-Identifier: MIT
#include "pipward/intake/weather_file.h"

#include <algorithm>
#include <array>
#include <map>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/readings.h"
#include "pipward/intake/detail/weather_columns.h"

namespace pipward::intake {
namespace {

using detail::RawReading;
using detail::WeatherWork;

/// Places of the long form's fields.
enum Field : std::size_t { id, date, element, value, measurement_flag, quality_flag, fields_needed };

using Fields = std::vector<std::string>;

bool is_extreme(const std::string& element) {
    return element == "TMIN" || element == "TMAX";
}

bool is_long(const Fields& first) {
    return first.size() >= fields_needed &&
           (lower_case(first[element]) == "element" ||
            (first[id].size() == 11 && first[element].size() == 4 && first[date].size() == 8 &&
             parse_day(first[date], DateFormat::year_month_day)));
}

std::size_t place_of(const Fields& headings, std::string_view wanted, const auto& name_of) {
    const auto found = std::ranges::find(headings, wanted, name_of);
    return static_cast<std::size_t>(found - headings.begin());
}

std::string name_in(const std::string& heading) {
    return detail::weather_heading(heading).name;
}

bool is_wide(const Fields& headings) {
    return place_of(headings, "station", lower_case) < headings.size() &&
           place_of(headings, "date", lower_case) < headings.size() &&
           place_of(headings, "tmax", name_in) < headings.size();
}

bool is_ghcn(const Sheet& sheet) {
    return !sheet.records.empty() &&
           (is_long(sheet.records.front().fields) || is_wide(sheet.records.front().fields));
}

/// The second of the flags parted by commas.
bool fails_quality(std::string_view flags) {
    const auto first = flags.find(',');
    const auto rest = first == flags.npos ? std::string_view{} : flags.substr(first + 1);
    return !trimmed(rest.substr(0, rest.find(','))).empty();
}

/// Clears values that their keeper has doubts about; how many.
int reject_flagged(Sheet& sheet) {
    int rejected = 0;
    const auto headings = sheet.records.front().fields;
    for (const std::string name : {"tmin", "tmax"}) {
        const auto number = place_of(headings, name, name_in);
        const auto flags = place_of(headings, name + "_attributes", lower_case);
        for (std::size_t i = 1; i < sheet.records.size() && std::max(number, flags) < headings.size(); ++i) {
            auto& fields = sheet.records[i].fields;
            if (std::max(number, flags) < fields.size() && fails_quality(fields[flags])) {
                fields[number].clear();
                ++rejected;
            }
        }
    }
    return rejected;
}

struct LongDay {
    int line = 0;
    std::optional<double> t_min{};
    std::optional<double> t_max{};
};

using LongDays = std::map<Day, LongDay>;

void put(const Record& record, Day day, double tenths, LongDays& days, WeatherWork& work) {
    auto& place = days[day];
    place.line = place.line == 0 ? record.line : place.line;
    auto& extreme = record.fields[element] == "TMIN" ? place.t_min : place.t_max;
    if (extreme && *extreme != tenths) {
        work.findings.of_line(record.line, {Level::error, record.fields[element], to_iso(day),
                                            say("The day already has another value of this element."),
                                            say("Keep the right one of the two.")});
    }
    extreme = tenths;
}

LongDays long_days(const std::vector<Record>& records, WeatherWork& work) {
    LongDays days;
    int rejected = 0;
    for (const auto& record : records) {
        const auto day = parse_day(record.fields[date], DateFormat::year_month_day);
        const auto number = detail::read_reading(record.fields[value]);
        if (!day || (!number.value && !number.is_missing)) {
            work.findings.of_line(
                record.line, {Level::warning, day ? "value" : "date", record.fields[day ? value : date],
                              say("The line cannot be read; it is left out."), say("Get the file again.")});
        } else if (!record.fields[quality_flag].empty()) {
            ++rejected;
        } else if (number.value) {
            put(record, *day, *number.value, days, work);
        }
    }
    if (!work.findings.any_error()) {
        note_rejected(rejected, work);
    }
    return days;
}

std::vector<RawReading> whole_days(const LongDays& days, WeatherWork& work) {
    std::vector<RawReading> readings;
    for (const auto& [day, extremes] : days) {
        if (extremes.t_min && extremes.t_max) {
            readings.push_back({extremes.line, day, *extremes.t_min, *extremes.t_max});
        }
    }
    if (const auto half = days.size() - readings.size(); half > 0) {
        work.findings.of_file(
            {}, {Level::notice,
                 "TMIN, TMAX",
                 std::to_string(half),
                 half == 1 ? say("1 day with only one of the two extremes was left out.")
                           : say("{} days with only one of the two extremes were left out.", half),
                 {}});
    }
    return readings;
}

/// A heading among the records is no element and falls away.
void import_long(std::vector<Record> records, WeatherWork& work) {
    std::erase_if(records, [](const Record& record) {
        return record.fields.size() < fields_needed || !is_extreme(record.fields[element]);
    });
    const auto station = pick_station(records, id, work);
    work.options.station = work.options.station.empty() ? station : work.options.station;
    const auto days = long_days(records, work);
    if (work.findings.any_error()) {
        return;
    }
    const auto readings = whole_days(days, work);
    work.import.understood =
        say("GHCN-Daily in its long form: elements TMIN and TMAX in tenths of a degree Celsius, as that "
            "form has it. Station in the file: {}.",
            station);
    if (readings.empty()) {
        work.findings.error("TMIN, TMAX", {}, say("No day of the file has both TMIN and TMAX."),
                            say("Choose a station that measures temperature."));
        return;
    }
    take_readings(readings, TemperatureUnit::tenths_celsius, work);
}

WeatherImport import_ghcn_sheet(Sheet sheet, WeatherWork& work) {
    if (!sheet.records.empty() && is_long(sheet.records.front().fields)) {
        import_long(std::move(sheet.records), work);
        return work.finished();
    }
    const int rejected = sheet.records.empty() ? 0 : reject_flagged(sheet);
    detail::import_table(sheet, true, work);
    work.import = work.finished();
    note_rejected(rejected, work);
    return std::move(work.import);
}

enum class Form { plain, ghcn, by_itself };

WeatherImport import_as(Form form, std::string_view bytes, const WeatherFileOptions& options) {
    WeatherWork work(options);
    auto sheet = read_sheet(bytes, options.file, detail::heads_weather);
    work.import.findings = sheet.findings;
    if (sheet.is_refused()) {
        return work.finished();
    }
    if (form == Form::ghcn || (form == Form::by_itself && is_ghcn(sheet))) {
        return import_ghcn_sheet(std::move(sheet), work);
    }
    detail::import_table(sheet, false, work);
    return work.finished();
}

}  // namespace

WeatherImport read_weather_file(std::string_view bytes, const WeatherFileOptions& options) {
    return import_as(Form::by_itself, bytes, options);
}

WeatherImport import_csv(std::string_view bytes, const WeatherFileOptions& options) {
    return import_as(Form::plain, bytes, options);
}

bool looks_like_ghcn(std::string_view bytes) {
    return is_ghcn(read_sheet(bytes.substr(0, bytes.find_first_of("\r\n")), {}, detail::heads_weather));
}

WeatherImport import_ghcn(std::string_view bytes, const WeatherFileOptions& options) {
    return import_as(Form::ghcn, bytes, options);
}

}  // namespace pipward::intake
