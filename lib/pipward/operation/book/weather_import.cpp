// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "pipward/book/book.h"
#include "pipward/book/book_at.h"
#include "pipward/intake/weather_file.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/value/complaint.h"
#include "pipward/weather/named_station.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

constexpr double comparing_begins = 0.5;  // share of the run

struct Request : intake::WeatherFileOptions {
    BookName book;
    InputFile input;
    Day as_of;
    bool replace_existing = false;
    bool write = false;
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
        {{"replaced", whole, "", "Replaced", "Days of the book that take the file's temperatures."},
         [](const Imported& i) { return whole_cell(i.written.replaced); }},
        {{"unchanged", whole, "", "Unchanged", "Days of the book that stay as they are."},
         [](const Imported& i) { return whole_cell(i.written.unchanged); }},
    };
    return columns;
}

constexpr TableOf<Imported> import_table{"weather_import", "Imported weather",
                                         "What was imported from the file into the book.", import_columns};

std::string station_for(const Request& request) {
    const auto stations = book::read_book(request.book).orchard.stations;
    if (!request.station.empty() || stations.size() != 1) {
        return weather::named_station(stations, request.station).name;
    }
    return stations.front().name;
}

constexpr std::array reader_options{std::string_view{"station_in_file"}, std::string_view{"day_column"},
                                    std::string_view{"t_min_column"},    std::string_view{"t_max_column"},
                                    std::string_view{"station_column"},  std::string_view{"day_format"},
                                    std::string_view{"day_shift"}};

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

intake::WeatherImport read_weather(const Request& request, const Run& lent) {
    const auto content = read_input_file(request.file);
    lent.step(0.3, say("Understanding the file"));
    auto import = intake::read_weather_file(content, request);
    speak_of_parameters(import.findings, lent.wording);
    if (!has_errors(import.findings) && import.days.empty()) {
        import.findings.push_back(about_table(Level::error, request.file,
                                              say("The file holds no day with both temperatures."),
                                              say("Check that it is the right file.")));
    }
    expect_no_errors(import.findings);
    return import;
}

book::WeatherWritten compare(const Request& request, const intake::WeatherImport& import, const Run& lent) {
    lent.step(comparing_begins, say("Comparing with the book"));
    return book::weigh_weather(request.book.location, import.days, request.replace_existing);
}

// The wait for another writer may be long: whoever stops it meanwhile wants nothing written.
book::WeatherWritten write_days(const Request& request, const intake::WeatherImport& import,
                                const Run& lent) {
    book::WeatherWritten written;
    book::in_one_change(request.book.location, [&](const book::BookAt& held) {
        lent.step(comparing_begins, say("Writing the days"));
        written = book::write_weather(held, import.days, request.replace_existing);
    });
    return written;
}

Outcome run(Request request, const Run& lent) {
    lent.step(0, say("Reading the file"));
    request.file = request.input.path;
    request.today = request.as_of;
    request.station = station_for(request);
    auto import = read_weather(request, lent);
    const auto written = request.write ? write_days(request, import, lent) : compare(request, import, lent);
    const std::array imported{Imported{request.station, import.days.front().day, import.days.back().day,
                                       static_cast<int>(import.days.size()), written}};
    Outcome outcome;
    outcome.tables = {import_table.of(imported)};
    outcome.findings = std::move(import.findings);
    outcome.summary = request.write
                          ? say("{} {} days added, {} replaced, {} left as they were.", import.understood,
                                written.added, written.replaced, written.unchanged)
                          : say("{} Nothing was written; with write {} days would be added, {} replaced, {} "
                                "left as they are.",
                                import.understood, written.added, written.replaced, written.unchanged);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    using Options = intake::WeatherFileOptions;
    return {
        book_parameter(&Request::book),
        parameter(&Request::input, "file", "File",
                  "A file of daily minima and maxima: CSV of most kinds, or GHCN-Daily (.csv, .dly).")
            .named(sheet_files)
            .required(),
        parameter(&Options::station, "station", "Station",
                  "The station of the book that the days belong to; its only one where it is not named."),
        parameter(&Options::source, "source", "Source", "Where the temperatures come from."),
        parameter(&Request::as_of, "as-of", "As of",
                  "The day on which the file is imported: days behind it can only be a forecast.")
            .today_if_absent(),
        write_parameter(&Request::write),
        parameter(&Request::replace_existing, "replace-existing", "Replace existing",
                  "Whether days that the book already has are replaced by the file's; a forecast is always "
                  "replaced by an observation."),
        parameter(&Options::station_in_file, "station-in-file", "Station in the file",
                  "Which station to take, where the file holds several.")
            .advanced(),
        parameter(&Options::day_column, "day-column", "Column of the day",
                  "The header of the column with the day, where it is not recognised.")
            .advanced(),
        parameter(&Options::t_min_column, "t-min-column", "Column of the minimum",
                  "The header of the column with the day's lowest temperature, where it is not recognised.")
            .advanced(),
        parameter(&Options::t_max_column, "t-max-column", "Column of the maximum",
                  "The header of the column with the day's highest temperature, where it is not recognised.")
            .advanced(),
        parameter(&Options::station_column, "station-column", "Column of the station",
                  "The header of the column with the station, where it is not recognised.")
            .advanced(),
        parameter(&Options::unit, "unit", "Unit",
                  "The unit of the temperatures; found out from the header and the values where not given.")
            .advanced(),
        parameter(&Options::date_format, "date-format", "Date format",
                  "Date format of the file; recognised from the file where not given.")
            .advanced(),
        parameter(&Options::day_shift, "day-shift", "Day shift",
                  "Days to add to the dates of the file: 1 where they are stamped with the UTC time of the "
                  "midnight at which the day begins at the station, 0 where they are right as they stand.")
            .in("d")
            .between(-1, 1)
            .advanced(),
    };
}

}  // namespace

std::unique_ptr<const Operation> weather_import() {
    return declare<Request>(
        {.about =
             {"weather-import", "Import weather", "Book",
              "Imports daily minimum and maximum temperatures of a station from a file into the book, and "
              "shows how the file was read. What the file does not make clear is asked for, never guessed; "
              "days that the book has already stay as they are unless replace-existing is given."},
         .parameters = parameters(),
         .results = {import_table.shape()},
         .examples = {{"Two days of April from a spreadsheet.",
                       {{"book", "BOOK"}, {"file", "FILE"}, {"unit", "celsius"}, {"as-of", "2026-04-23"}},
                       "date,t_min,t_max\n2026-04-21,3.5,14.0\n2026-04-22,5.0,16.5\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
