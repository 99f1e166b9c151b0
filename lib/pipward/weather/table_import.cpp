// SPDX-License-Identifier: MIT
#include "pipward/weather/table_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

#include "pipward/weather/csv_columns.h"
#include "pipward/weather/day_texts.h"
#include "pipward/weather/reading_parser.h"
#include "pipward/weather/reading_rows.h"
#include "pipward/weather/text_cells.h"

namespace pipward::weather {
namespace {

Finding about_file(const WeatherFileOptions& options, Level level, RowWords row, std::string field,
                   std::string value, Sentence message, Sentence remedy) {
    return {.level = level,
            .table = options.file,
            .row = std::move(row),
            .field = std::move(field),
            .value = std::move(value),
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

/// Records with another number of fields than the header are left out: their cells stand in the wrong
/// columns.
std::vector<CsvRecord> whole_records(const CsvText& csv, LineFindings& lines) {
    const std::size_t width = csv.records.front().fields.size();
    std::vector<CsvRecord> whole;
    for (const CsvRecord& record : std::span(csv.records).subspan(1)) {
        if (record.fields.size() == width) {
            whole.push_back(record);
            continue;
        }
        lines.add(Level::warning, record.line, {}, fmt::format("{}", record.fields.size()),
                  say("The line has not the {} fields of the header; it is left out.", width),
                  say("Put text that holds the delimiter between quotation marks."));
    }
    return whole;
}

void note_missing(const ReadingParser& parser, const WeatherFileOptions& options, Findings& findings) {
    if (parser.missing() > 0) {
        findings.push_back(about_file(
            options, Level::note, say("line {}", parser.first_missing_line()), "t_min, t_max",
            fmt::format("{}", parser.missing()),
            say("{} line(s) without a reading were left out, the first here.", parser.missing()), {}));
    }
}

/// The book's station, or as the file calls it.
std::string station_name(const WeatherFileOptions& options, const std::string& in_file, Findings& findings) {
    if (!options.station.empty() || !in_file.empty()) {
        return options.station.empty() ? in_file : options.station;
    }
    findings.push_back(about_file(options, Level::error, {}, "station", {},
                                  say("Neither the file nor the request says which station this is."),
                                  say("Name the station with the option station.")));
    return {};
}

/// One table's way from records to days; each step stops where it finds an error.
class TableImport {
  public:
    TableImport(const CsvText& csv, const WeatherFileOptions& options, bool tenths_possible)
        : csv_(csv),
          options_(options),
          tenths_possible_(tenths_possible),
          lines_(options.file, import_.findings) {}

    WeatherImport run() {
        import_.findings = csv_.findings;
        if (!has_errors(import_.findings)) {
            read();
        }
        lines_.finish();
        if (has_errors(import_.findings)) {
            import_.days.clear();
        }
        return std::move(import_);
    }

  private:
    void read() {
        if (csv_.records.size() < 2) {
            import_.findings.push_back(about_file(options_, Level::error, {}, {}, {},
                                                  say("The file has no data lines."),
                                                  say("Give a header line and one line a day.")));
            return;
        }
        const auto columns = find_columns(csv_.records.front().fields, options_, import_.findings);
        refuse_hourly_header(columns);
        if (!columns) {
            return;
        }
        import_.understood = columns->understood;
        const auto records = station_records(*columns);
        const auto dates = day_texts(records, *columns);
        if (const auto timed = repeated_with_clock_time(dates)) {
            import_.findings.push_back(hourly_file(*timed, options_.file));
        }
        if (has_errors(import_.findings)) {
            return;
        }
        const auto format = day_format(dates, *columns);
        if (format) {
            read_rows(records, dates, *columns, *format);
        }
    }

    /// A file without daily columns but with clock times deserves to hear that it is hourly, and only that.
    void refuse_hourly_header(const std::optional<CsvColumns>& columns) {
        if (columns) {
            return;
        }
        // The first reading of a file may be that of midnight, which looks like a plain day.
        for (const CsvRecord& record :
             std::span(csv_.records).subspan(1, std::min<std::size_t>(2, csv_.records.size() - 1))) {
            for (const std::string& cell : record.fields) {
                if (const DayCell day = split_day(cell);
                    day.has_clock_time && parse_day(day.date, DayFormat::year_month_day)) {
                    import_.findings = {hourly_file({record.line, cell, true}, options_.file)};
                    return;
                }
            }
        }
    }

    std::vector<CsvRecord> station_records(const CsvColumns& columns) {
        StationRecords picked{{}, whole_records(csv_, lines_)};
        if (columns.station) {
            picked = pick_station(std::move(picked.records), *columns.station, options_, import_.findings);
        }
        if (options_.station_in_file && !columns.station) {
            import_.findings.push_back(about_file(
                options_, Level::error, {}, "station_in_file", *options_.station_in_file,
                say("The file has no column of stations."),
                say("Leave station_in_file out, or name the column with the option station_column.")));
        }
        if (!has_errors(import_.findings)) {
            options_.station = station_name(options_, picked.station, import_.findings);
            import_.understood += picked.station.empty()
                                      ? Sentence{}
                                      : verbatim(" ") + say("Station in the file: {}.", picked.station);
        }
        if (picked.records.empty() && !has_errors(import_.findings)) {
            import_.findings.push_back(about_file(options_, Level::error, {}, {}, {},
                                                  say("No line of the file fits its header."),
                                                  say("Check the delimiter and the quotation marks.")));
        }
        return std::move(picked.records);
    }

    static std::vector<DayText> day_texts(const std::vector<CsvRecord>& records, const CsvColumns& columns) {
        std::vector<DayText> dates;
        dates.reserve(records.size());
        for (const CsvRecord& record : records) {
            dates.push_back(day_text(record, columns));
        }
        return dates;
    }

    std::optional<DayFormat> day_format(const std::vector<DayText>& dates, const CsvColumns& columns) {
        if (!columns.day) {
            return DayFormat::year_month_day;
        }
        std::vector<LineText> texts;
        texts.reserve(dates.size());
        for (const DayText& date : dates) {
            texts.push_back({date.line, date.date});
        }
        DayFormatChoice choice = choose_day_format(texts, options_);
        std::ranges::move(choice.findings, std::back_inserter(import_.findings));
        if (choice.format) {
            import_.understood +=
                verbatim(" ") + say("Days are written {}, {}.", to_text(*choice.format), choice.why);
        }
        return choice.format;
    }

    void read_rows(const std::vector<CsvRecord>& records, const std::vector<DayText>& dates,
                   const CsvColumns& columns, DayFormat format) {
        ReadingParser parser(columns, lines_);
        for (std::size_t i = 0; i < records.size(); ++i) {
            parser.take(records[i], parse_day(dates[i].date, format), dates[i].date);
        }
        note_missing(parser, options_, import_.findings);
        if (parser.readings().empty()) {
            import_.findings.push_back(about_file(options_, Level::error, {}, "t_min, t_max", {},
                                                  say("No line of the file has a day and both temperatures."),
                                                  say("Check the columns: the options name them.")));
            return;
        }
        UnitChoice unit = choose_unit(parser.readings(), columns.unit, tenths_possible_, options_);
        std::ranges::move(unit.findings, std::back_inserter(import_.findings));
        if (unit.unit) {
            import_.understood += verbatim(" ") + say("Unit: {}, {}.", to_text(*unit.unit), unit.why);
            take_readings(parser.readings(), *unit.unit, options_, lines_, import_);
        }
    }

    const CsvText& csv_;
    WeatherFileOptions options_;
    bool tenths_possible_;
    WeatherImport import_;
    LineFindings lines_;
};

}  // namespace

WeatherImport import_table(const CsvText& csv, const WeatherFileOptions& options, bool tenths_possible) {
    return TableImport(csv, options, tenths_possible).run();
}

}  // namespace pipward::weather
