// SPDX-License-Identifier: MIT
#include "pipward/weather/ghcn_long.h"

#include <fmt/format.h>

#include <map>
#include <optional>

#include "pipward/weather/reading_rows.h"
#include "pipward/weather/table_import.h"
#include "pipward/weather/text_cells.h"

namespace pipward::weather {
namespace {

struct LongDay {
    int line = 0;
    std::optional<double> t_min;
    std::optional<double> t_max;
};

class LongImport {
  public:
    explicit LongImport(const WeatherFileOptions& options)
        : options_(options), lines_(options.file, import_.findings) {}

    WeatherImport run(std::vector<CsvRecord> records) {
        std::erase_if(records, [](const CsvRecord& record) {
            return record.fields.size() < ghcn_long::fields_needed ||
                   (record.fields[ghcn_long::element] != "TMIN" &&
                    record.fields[ghcn_long::element] != "TMAX");
        });
        StationRecords picked = pick_station(std::move(records), ghcn_long::id, options_, import_.findings);
        options_.station = options_.station.empty() ? picked.station : options_.station;
        for (const CsvRecord& record : picked.records) {
            take(record);
        }
        if (!has_errors(import_.findings)) {
            finish(picked.station);
        }
        lines_.finish();
        if (has_errors(import_.findings)) {
            import_.days.clear();
        }
        return std::move(import_);
    }

  private:
    void take(const CsvRecord& record) {
        const auto day = parse_day(record.fields[ghcn_long::date], DayFormat::year_month_day);
        const NumberCell number = parse_number(record.fields[ghcn_long::value]);
        if (!day || (!number.value && !number.is_missing)) {
            lines_.add(Level::warning, record.line, day ? "value" : "date",
                       record.fields[day ? ghcn_long::value : ghcn_long::date],
                       say("The line cannot be read; it is left out."), say("Fetch the file again."));
        } else if (!trimmed(record.fields[ghcn_long::quality_flag]).empty()) {
            ++rejected_;
        } else if (number.value) {
            put(record, *day, *number.value);
        }
    }

    void put(const CsvRecord& record, Day day, double tenths) {
        LongDay& place = days_[day];
        place.line = place.line == 0 ? record.line : place.line;
        auto& extreme = record.fields[ghcn_long::element] == "TMIN" ? place.t_min : place.t_max;
        if (extreme && *extreme != tenths) {
            lines_.add(Level::error, record.line, record.fields[ghcn_long::element], to_iso(day),
                       say("The day already has another value of this element."),
                       say("Keep the right one of the two."));
        }
        extreme = tenths;
    }

    void finish(const std::string& station_in_file) {
        std::vector<RawReading> readings;
        for (const auto& [day, extremes] : days_) {
            if (extremes.t_min && extremes.t_max) {
                readings.push_back({extremes.line, day, *extremes.t_min, *extremes.t_max});
            }
        }
        note_rejected(rejected_, options_, import_.findings);
        note_half_days(days_.size() - readings.size());
        import_.understood =
            say("GHCN-Daily in its long form: elements TMIN and TMAX in tenths of a degree Celsius, as that "
                "form has it. Station in the file: {}.",
                station_in_file);
        if (readings.empty()) {
            refuse_empty();
            return;
        }
        take_readings(readings, TemperatureUnit::tenths_celsius, options_, lines_, import_);
    }

    void note_half_days(std::size_t count) {
        if (count > 0) {
            import_.findings.push_back(
                {.level = Level::note,
                 .table = options_.file,
                 .row = {},
                 .field = "TMIN, TMAX",
                 .value = fmt::format("{}", count),
                 .message = say("{} day(s) with only one of the two extremes were left out.", count),
                 .remedy = {}});
        }
    }

    void refuse_empty() {
        import_.findings.push_back({.level = Level::error,
                                    .table = options_.file,
                                    .row = {},
                                    .field = "TMIN, TMAX",
                                    .value = {},
                                    .message = say("No day of the file has both TMIN and TMAX."),
                                    .remedy = say("Choose a station that measures temperature.")});
    }

    WeatherFileOptions options_;
    WeatherImport import_;
    LineFindings lines_;
    std::map<Day, LongDay> days_;
    int rejected_ = 0;
};

}  // namespace

void note_rejected(int rejected, const WeatherFileOptions& options, Findings& findings) {
    if (rejected > 0) {
        findings.push_back(
            {.level = Level::note,
             .table = options.file,
             .row = {},
             .field = "quality flag",
             .value = fmt::format("{}", rejected),
             .message =
                 say("{} value(s) that failed a quality check of the file's keeper were rejected.", rejected),
             .remedy = {}});
    }
}

WeatherImport import_ghcn_long(std::vector<CsvRecord> records, const WeatherFileOptions& options) {
    return LongImport(options).run(std::move(records));
}

}  // namespace pipward::weather
