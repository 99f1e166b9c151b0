// SPDX-License-Identifier: MIT
#include "pipward/intake/weather_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/readings.h"
#include "pipward/intake/detail/weather_columns.h"

namespace pipward::intake {
namespace {

using detail::RawReading;
using detail::SheetRows;
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

bool is_ghcn(const SheetRows& sheet) {
    return sheet.heading() != nullptr &&
           (is_long(sheet.heading()->fields) || is_wide(sheet.heading()->fields));
}

/// The second of the flags parted by commas.
bool fails_quality(std::string_view flags) {
    const auto first = flags.find(',');
    const auto rest = first == flags.npos ? std::string_view{} : flags.substr(first + 1);
    return !trimmed(rest.substr(0, rest.find(','))).empty();
}

/// Clears values that their keeper has doubts about; how many.
detail::TableForm wide_form(const Fields& headings) {
    struct Flagged {
        std::size_t number;
        std::size_t flags;
    };
    std::vector<Flagged> columns;
    for (const std::string name : {"tmin", "tmax"}) {
        const Flagged places{place_of(headings, name, name_in),
                             place_of(headings, name + "_attributes", lower_case)};
        if (std::max(places.number, places.flags) < headings.size()) {
            columns.push_back(places);
        }
    }
    return {true, [columns](Record& record) {
                int rejected = 0;
                for (const auto& [number, flags] : columns) {
                    if (fails_quality(record.fields[flags])) {
                        record.fields[number].clear();
                        ++rejected;
                    }
                }
                return rejected;
            }};
}

/// One value of an element on a day, as the file has it.
struct LongValue {
    int line = 0;
    std::string element{};
    std::string day_text{};
    std::optional<Day> day{};
    std::string text{};
    bool is_flagged = false;
};

struct LongDay {
    int line = 0;
    std::optional<double> t_min{};
    std::optional<double> t_max{};
};

using LongDays = std::map<Day, LongDay>;

/// Gathers the values of a station; what is held does not grow with the lines of the file.
class LongForm {
  public:
    explicit LongForm(WeatherWork& work) : work_(work) {}

    void take(const LongValue& value) {
        const auto number = detail::read_reading(value.text);
        if (!value.day || !detail::has_thermometers(*value.day) || (!number.value && !number.is_missing)) {
            work_.findings.of_line(
                value.line,
                {Level::warning, value.day ? "value" : "date", value.day ? value.text : value.day_text,
                 say("The line cannot be read; it is left out."), say("Get the file again.")});
        } else if (value.is_flagged) {
            rejected_ += number.is_missing ? 0 : 1;
        } else if (number.value) {
            put(value, *number.value);
        }
    }

    const LongDays& days() const { return days_; }
    int rejected() const { return rejected_; }

  private:
    void put(const LongValue& value, double tenths) {
        auto& place = days_[*value.day];
        place.line = place.line == 0 ? value.line : place.line;
        auto& extreme = value.element == "TMIN" ? place.t_min : place.t_max;
        if (extreme && *extreme != tenths) {
            work_.findings.of_line(value.line, {Level::error, value.element, to_iso(*value.day),
                                                say("The day already has another value of this element."),
                                                say("Keep the right one of the two.")});
        }
        extreme = tenths;
    }

    WeatherWork& work_;
    LongDays days_{};
    int rejected_ = 0;
};

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

void finish_long(const LongForm& form, const Sentence& form_name, const std::string& station,
                 WeatherWork& work) {
    if (work.findings.any_error()) {
        return;
    }
    note_rejected(form.rejected(), work);
    const auto readings = whole_days(form.days(), work);
    work.import.understood = form_name + verbatim(" ") + say("Station in the file: {}.", station);
    if (readings.empty()) {
        work.findings.error("TMIN, TMAX", {}, say("No day of the file has both TMIN and TMAX."),
                            say("Choose a station that measures temperature."));
        return;
    }
    take_readings(readings, TemperatureUnit::tenths_celsius, work);
}

/// Calls `see` with every record of the elements, that in the place of a heading included. A heading is no
/// element.
void each_extreme(const SheetRows& sheet, const std::function<void(const Record&)>& see) {
    const auto is_one = [](const Record& record) {
        return record.fields.size() >= fields_needed && is_extreme(record.fields[element]);
    };
    if (is_one(*sheet.heading())) {
        see(*sheet.heading());
    }
    sheet.each([&](Record&& record) {
        if (is_one(record)) {
            see(record);
        }
        return true;
    });
}

void import_long(const SheetRows& sheet, WeatherWork& work) {
    detail::StationNames stations;
    each_extreme(sheet, [&](const Record& record) { stations.see(record.fields[id]); });
    const auto station = pick_station(stations, work);
    work.options.station = work.options.station.empty() ? station : work.options.station;
    if (work.findings.any_error()) {
        return;
    }
    LongForm form(work);
    each_extreme(sheet, [&](const Record& record) {
        const auto& fields = record.fields;
        if (fields[id] == station) {
            form.take({record.line, fields[element], fields[date],
                       parse_day(fields[date], DateFormat::year_month_day), fields[value],
                       !fields[quality_flag].empty()});
        }
    });
    finish_long(
        form,
        say("GHCN-Daily in its long form: elements TMIN and TMAX in tenths of a degree Celsius, as that "
            "form has it."),
        station, work);
}

WeatherImport import_ghcn_sheet(const SheetRows& sheet, WeatherWork& work) {
    if (sheet.heading() != nullptr && is_long(sheet.heading()->fields)) {
        import_long(sheet, work);
    } else {
        detail::import_table(
            sheet,
            sheet.heading() != nullptr ? wide_form(sheet.heading()->fields) : detail::TableForm{true, {}},
            work);
    }
    return work.finished();
}

constexpr std::size_t dly_id = 11;
constexpr std::size_t dly_head = 21;
constexpr std::size_t dly_value = 5;
constexpr std::size_t dly_day = 8;
constexpr std::size_t dly_quality_flag = 6;

/// One line of fixed width: a month of an element.
struct DlyLine {
    int line = 0;
    std::string_view text{};

    std::string_view station() const { return text.substr(0, dly_id); }
    std::string month() const { return std::string(text.substr(dly_id, 6)); }
    std::string element() const { return std::string(text.substr(dly_id + 6, 4)); }
    std::string_view day(std::size_t number) const {
        const auto begin = dly_head + (number - 1) * dly_day;
        return begin < text.size() ? text.substr(begin, dly_day) : std::string_view{};
    }
};

bool is_dly(std::string_view line) {
    constexpr std::size_t shortest = dly_head + dly_value;
    constexpr std::size_t longest = dly_head + 31 * dly_day;
    const DlyLine one{0, line};
    const auto is_letter_or_digit = [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || c == '_' || c == '-';
    };
    return line.size() >= shortest && line.size() <= longest + 1 &&
           std::ranges::all_of(line.substr(0, dly_head), is_letter_or_digit) &&
           parse_day(one.month() + "01", DateFormat::year_month_day) &&
           read_number(trimmed(one.day(1).substr(0, dly_value)));
}

void each_dly(std::string_view text, const std::function<void(const DlyLine&)>& see) {
    for (int number = 1; !text.empty(); ++number) {
        const auto line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        const DlyLine one{number, line.ends_with('\r') ? line.substr(0, line.size() - 1) : line};
        if (one.text.size() >= dly_head && is_extreme(one.element())) {
            see(one);
        }
    }
}

/// The days that the month does not have are not looked at.
void take_month(const DlyLine& line, LongForm& form) {
    constexpr std::size_t most_days = 31;
    for (std::size_t number = 1; number <= most_days; ++number) {
        const auto date = fmt::format("{}{:02}", line.month(), number);
        const auto cell = line.day(number);
        const auto day = parse_day(date, DateFormat::year_month_day);
        const bool is_real = day || number == 1;
        if (is_real && !cell.empty()) {
            form.take({line.line, line.element(), date, day, std::string(trimmed(cell.substr(0, dly_value))),
                       cell.size() > dly_quality_flag && cell[dly_quality_flag] != ' '});
        }
    }
}

WeatherImport import_dly(std::string_view text, WeatherWork& work) {
    detail::StationNames stations;
    each_dly(text, [&](const DlyLine& line) { stations.see(std::string(line.station())); });
    const auto station = pick_station(stations, work);
    work.options.station = work.options.station.empty() ? station : work.options.station;
    if (!work.findings.any_error()) {
        LongForm form(work);
        each_dly(text, [&](const DlyLine& line) {
            if (line.station() == station) {
                take_month(line, form);
            }
        });
        finish_long(
            form,
            say("GHCN-Daily in lines of fixed width: elements TMIN and TMAX in tenths of a degree Celsius, "
                "as that form has it."),
            station, work);
    }
    return work.finished();
}

enum class Form { plain, ghcn, by_itself };

WeatherImport import_as(Form form, std::string_view bytes, const WeatherFileOptions& options) {
    WeatherWork work(options);
    if (form != Form::plain && looks_like_dly(bytes)) {
        return import_dly(bytes, work);
    }
    const SheetRows sheet(bytes, options.file, detail::heads_weather);
    work.import.findings = sheet.findings();
    if (has_errors(sheet.findings())) {
        return work.finished();
    }
    if (form == Form::ghcn || (form == Form::by_itself && is_ghcn(sheet))) {
        return import_ghcn_sheet(sheet, work);
    }
    detail::import_table(sheet, {}, work);
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
    return is_ghcn(SheetRows(bytes.substr(0, bytes.find_first_of("\r\n")), {}, detail::heads_weather));
}

bool looks_like_dly(std::string_view bytes) {
    return is_dly(bytes.substr(0, bytes.find_first_of("\r\n")));
}

WeatherImport import_ghcn(std::string_view bytes, const WeatherFileOptions& options) {
    return import_as(Form::ghcn, bytes, options);
}

}  // namespace pipward::intake
