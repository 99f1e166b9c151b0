// SPDX-License-Identifier: MIT
#include "pipward/weather/weather_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "pipward/book/book.h"
#include "pipward/operation/column_of.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/input_file.h"
#include "pipward/operation/list.h"
#include "pipward/operation/station_choice.h"
#include "pipward/weather/import_csv.h"
#include "pipward/weather/import_ghcn.h"

namespace pipward::operation {

std::span<const Word<weather::TemperatureUnit>> words(weather::TemperatureUnit);
std::span<const Word<weather::DayFormat>> words(weather::DayFormat);

namespace {

using enum CellType;

struct Request {
    BookName book;
    InputFile file;
    std::string station;
    WeatherSource source = WeatherSource::observed;
    bool replace_existing = false;
    std::optional<std::string> station_in_file;
    std::optional<std::string> day_column;
    std::optional<std::string> t_min_column;
    std::optional<std::string> t_max_column;
    std::optional<std::string> station_column;
    std::optional<weather::TemperatureUnit> unit;
    std::optional<weather::DayFormat> day_format;
};

struct Imported {
    std::string station;
    Day first;
    Day last;
    int days = 0;
    book::WeatherWritten written;
};

const std::vector<ColumnOf<Imported>>& import_columns() {
    static const std::vector<ColumnOf<Imported>> columns{
        {{"station", text, "", "Station", "The station of the book."},
         [](const Imported& i) { return text_cell(i.station); }},
        {{"first_day", day, "", "First day", "The file's first day with both temperatures."},
         [](const Imported& i) { return Cell{i.first}; }},
        {{"last_day", day, "", "Last day", "The file's last day with both temperatures."},
         [](const Imported& i) { return Cell{i.last}; }},
        {{"days", whole, "", "Days", "Days with both temperatures in the file."},
         [](const Imported& i) { return whole_cell(i.days); }},
        {{"added", whole, "", "Added", "Days that the book did not have."},
         [](const Imported& i) { return whole_cell(i.written.added); }},
        {{"replaced", whole, "", "Replaced", "Days of the book that now hold the file's temperatures."},
         [](const Imported& i) { return whole_cell(i.written.replaced); }},
        {{"unchanged", whole, "", "Unchanged", "Days of the book that were left as they were."},
         [](const Imported& i) { return whole_cell(i.written.unchanged); }},
    };
    return columns;
}

TableShape import_shape() {
    return shape_of(
        {"weather_import", "Imported weather", "What was taken from the file into the book.", false, {}},
        import_columns());
}

std::string station_for(const Request& request) {
    const auto stations = book::read_book(request.book.location).orchard.stations;
    if (!request.station.empty() || stations.size() != 1) {
        return named_station(stations, request.station).name;
    }
    return stations.front().name;
}

weather::WeatherFileOptions options_of(const Request& request, const std::string& station) {
    return {.file = request.file.path,
            .station = station,
            .source = request.source,
            .station_in_file = request.station_in_file,
            .day_column = request.day_column,
            .t_min_column = request.t_min_column,
            .t_max_column = request.t_max_column,
            .station_column = request.station_column,
            .unit = request.unit,
            .day_format = request.day_format};
}

constexpr std::array reader_options{std::string_view{"station_in_file"}, std::string_view{"day_column"},
                                    std::string_view{"t_min_column"},    std::string_view{"t_max_column"},
                                    std::string_view{"station_column"},  std::string_view{"day_format"}};

/// The reader's options are fields; here they are parameters, whose keys have hyphens.
void speak_of_parameters(std::string& text) {
    for (const auto option : reader_options) {
        for (auto at = text.find(option); at != std::string::npos; at = text.find(option, at + 1)) {
            const auto begin = text.begin() + static_cast<std::ptrdiff_t>(at);
            std::replace(begin, begin + static_cast<std::ptrdiff_t>(option.size()), '_', '-');
        }
    }
}

void speak_of_parameters(Findings& findings, const Wording& wording) {
    for (auto& finding : findings) {
        speak_of_parameters(finding.field);
        auto remedy = finding.remedy.in(wording);
        speak_of_parameters(remedy);
        finding.remedy = verbatim(remedy);
    }
}

weather::WeatherImport read_weather(const Request& request, const std::string& station, const Run& lent) {
    const auto content = read_input_file(request.file.path);
    lent.step(0.3, say("Understanding the file"));
    const auto options = options_of(request, station);
    auto import = weather::looks_like_ghcn(content) ? weather::import_ghcn(content, options)
                                                    : weather::import_csv(content, options);
    speak_of_parameters(import.findings, lent.wording);
    if (!has_errors(import.findings) && import.days.empty()) {
        import.findings.push_back(about_table(Level::error, request.file.path,
                                              say("The file holds no day with both temperatures."),
                                              say("Check that it is the right file.")));
    }
    if (has_errors(import.findings)) {
        throw Error(Trouble::input, std::move(import.findings));
    }
    return import;
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the file"));
    const auto station = station_for(request);
    auto import = read_weather(request, station, lent);
    lent.step(0.5, say("Writing the days"));
    const auto written = book::write_weather(request.book.location, import.days, request.replace_existing);
    const std::array imported{Imported{station, import.days.front().day, import.days.back().day,
                                       static_cast<int>(import.days.size()), written}};
    Outcome outcome;
    outcome.tables = {table_of<Imported>(import_shape(), imported, import_columns())};
    outcome.findings = std::move(import.findings);
    outcome.summary = say("{} {} days added, {} replaced, {} left as they were.", import.understood,
                          written.added, written.replaced, written.unchanged);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return {
        book_parameter(&Request::book),
        parameter(&Request::file, "file", "File",
                  "A file of daily minima and maxima: CSV of most kinds, or GHCN-Daily.")
            .named("*.csv")
            .required(),
        parameter(&Request::station, "station", "Station",
                  "The station of the book that the days belong to; its only one where it is not named."),
        parameter(&Request::source, "source", "Source", "Where the temperatures come from."),
        parameter(&Request::replace_existing, "replace-existing", "Replace existing",
                  "Whether days that the book already has take the file's temperatures; a forecast always "
                  "gives way to "
                  "what was measured."),
        parameter(&Request::station_in_file, "station-in-file", "Station in the file",
                  "Which station to take, where the file holds several.")
            .advanced(),
        parameter(&Request::day_column, "day-column", "Column of the day",
                  "The header of the column with the day, where it is not recognised.")
            .advanced(),
        parameter(&Request::t_min_column, "t-min-column", "Column of the minimum",
                  "The header of the column with the day's lowest temperature, where it is not recognised.")
            .advanced(),
        parameter(&Request::t_max_column, "t-max-column", "Column of the maximum",
                  "The header of the column with the day's highest temperature, where it is not recognised.")
            .advanced(),
        parameter(&Request::station_column, "station-column", "Column of the station",
                  "The header of the column with the station, where it is not recognised.")
            .advanced(),
        parameter(&Request::unit, "unit", "Unit",
                  "The unit of the temperatures; found out from the header and the values where not given.")
            .advanced(),
        parameter(&Request::day_format, "day-format", "Order of the day",
                  "How the days are written; found out from the file where not given.")
            .advanced(),
    };
}

}  // namespace

std::span<const Word<weather::TemperatureUnit>> words(weather::TemperatureUnit) {
    static constexpr std::array table{
        Word<weather::TemperatureUnit>{weather::TemperatureUnit::celsius, "celsius", "degrees Celsius"},
        Word<weather::TemperatureUnit>{weather::TemperatureUnit::fahrenheit, "fahrenheit",
                                       "degrees Fahrenheit"},
        Word<weather::TemperatureUnit>{weather::TemperatureUnit::tenths_celsius, "tenths_celsius",
                                       "tenths of a degree Celsius"},
    };
    return table;
}

std::span<const Word<weather::DayFormat>> words(weather::DayFormat) {
    static constexpr std::array table{
        Word<weather::DayFormat>{weather::DayFormat::year_month_day, "year-month-day",
                                 "2026-04-12 or 20260412"},
        Word<weather::DayFormat>{weather::DayFormat::day_month_year, "day-month-year",
                                 "12/04/2026 or 12.4.2026"},
        Word<weather::DayFormat>{weather::DayFormat::month_day_year, "month-day-year", "4/12/2026"},
    };
    return table;
}

std::unique_ptr<const Operation> weather_import() {
    return declare<Request>({.about = {"weather-import", "Import weather", "Book",
                                       "Takes the daily lowest and highest temperatures of a station from a "
                                       "file into the book, and tells "
                                       "how it understood the file. What the file does not make plain is "
                                       "asked for, never guessed; days "
                                       "that the book has already are left alone unless told otherwise."},
                             .parameters = parameters(),
                             .results = {import_shape()},
                             .examples = {{"Two days of April from a spreadsheet.",
                                           {{"book", "BOOK"}, {"file", "FILE"}, {"unit", "celsius"}},
                                           "date,t_min,t_max\n2026-04-21,3.5,14.0\n2026-04-22,5.0,16.5\n"}},
                             .run = run});
}

}  // namespace pipward::operation
