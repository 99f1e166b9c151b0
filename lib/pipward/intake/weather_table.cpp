// SPDX-License-Identifier: MIT
// A table of daily extremes, one line a day.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/readings.h"
#include "pipward/intake/detail/weather_columns.h"

namespace pipward::intake::detail {
namespace {

/// What one record says about its day, not yet read as a day.
struct DayText {
    int line = 0;
    std::string date;  ///< columns of year, month and day joined into one
    bool has_clock_time = false;
};

DayText day_text(const Record& record, const WeatherColumns& columns) {
    if (columns.day) {
        const DayCell cell = split_day(record.at(*columns.day));
        return {record.line, std::string(cell.date), cell.has_clock_time};
    }
    return {record.line,
            fmt::format("{}-{}-{}", record.at(*columns.year), record.at(*columns.month),
                        record.at(*columns.day_of_month)),
            false};
}

/// The first line with a clock time in a file that tells some day more than once: the sign of hourly
/// readings. Null otherwise; a daily file may well be stamped with its time of observation.
const DayText* repeated_with_clock_time(std::span<const DayText> days) {
    std::set<std::string_view> seen;
    const bool repeats =
        std::ranges::any_of(days, [&](const DayText& day) { return !seen.insert(day.date).second; });
    const auto timed = std::ranges::find_if(days, &DayText::has_clock_time);
    return repeats && timed != days.end() ? &*timed : nullptr;
}

/// One table's way from records to days; each step stops where it finds an error.
class TableImport {
  public:
    TableImport(const Sheet& sheet, bool tenths_possible, WeatherWork& work)
        : sheet_(sheet), tenths_possible_(tenths_possible), work_(work), findings_(work.findings) {}

    void read() {
        if (sheet_.records.size() < 2) {
            findings_.error({}, {}, say("The file has no data lines."),
                            say("Give a header line and one line per day."));
            return;
        }
        const auto columns = find_weather_columns(sheet_.records.front().fields, work_.options, findings_);
        if (!columns) {
            refuse_hourly_lines();
            return;
        }
        columns_ = *columns;
        work_.import.understood = columns->understood;
        const auto records = station_records();
        std::vector<DayText> dates;
        std::ranges::transform(records, std::back_inserter(dates),
                               [&](const Record& record) { return day_text(record, columns_); });
        if (const auto* timed = repeated_with_clock_time(dates)) {
            tell_hourly(timed->line, timed->date);
        }
        if (const auto format = findings_.any_error() ? std::nullopt : date_format(dates)) {
            read_rows(records, dates, *format);
        }
    }

  private:
    void tell_hourly(int line, const std::string& day) {
        findings_.of_file(
            say("line {}", line),
            {Level::error, "day", day, say("The days carry clock times: this looks like an hourly file."),
             say("Give each day's minimum and maximum, one line per day.")});
    }

    /// A file without daily columns but with clock times deserves to hear that it is hourly, and only that.
    void refuse_hourly_lines() {
        // The first reading of a file may be that of midnight, which looks like a plain day.
        for (const Record& record : sheet_.rows().first(std::min<std::size_t>(2, sheet_.rows().size()))) {
            for (const std::string& cell : record.fields) {
                if (const DayCell day = split_day(cell);
                    day.has_clock_time && parse_day(day.date, DateFormat::year_month_day)) {
                    work_.import.findings.clear();
                    tell_hourly(record.line, cell);
                    return;
                }
            }
        }
    }

    /// Records with another number of fields than the header are left out: their cells stand in the wrong
    /// columns.
    std::vector<Record> whole_records() {
        const std::size_t width = sheet_.records.front().fields.size();
        std::vector<Record> whole;
        for (const Record& record : sheet_.rows()) {
            if (record.fields.size() == width) {
                whole.push_back(record);
                continue;
            }
            findings_.of_line(record.line,
                              {Level::warning,
                               {},
                               std::to_string(record.fields.size()),
                               say("The line has not the {} fields of the header; it is left out.", width),
                               say("Put text that holds the delimiter between quotation marks.")});
        }
        return whole;
    }

    std::vector<Record> station_records() {
        auto records = whole_records();
        std::string station;
        if (columns_.station) {
            station = pick_station(records, *columns_.station, work_);
        } else if (work_.options.station_in_file) {
            findings_.error(
                "station_in_file", *work_.options.station_in_file, say("The file has no column of stations."),
                say("Leave station-in-file out, or name the column with the option station-column."));
        }
        if (!findings_.any_error()) {
            name_station(station);
        }
        if (records.empty() && !findings_.any_error()) {
            findings_.error({}, {}, say("No line of the file fits its header."),
                            say("Check the delimiter and the quotation marks."));
        }
        return records;
    }

    /// The book's station, or as the file calls it.
    void name_station(const std::string& in_file) {
        auto& station = work_.options.station;
        station = station.empty() ? in_file : station;
        if (station.empty()) {
            findings_.error("station", {},
                            say("Neither the file nor the request says which station this is."),
                            say("Name the station with the option station."));
        }
        if (!in_file.empty()) {
            work_.import.understood += verbatim(" ") + say("Station in the file: {}.", in_file);
        }
    }

    std::optional<DateFormat> date_format(const std::vector<DayText>& dates) {
        if (!columns_.day) {
            return DateFormat::year_month_day;
        }
        const auto format = work_.options.date_format ? work_.options.date_format : found_format(dates);
        if (format) {
            work_.import.understood +=
                verbatim(" ") + say("Days are written {}, {}.", to_text(*format),
                                    work_.options.date_format ? say("as stated") : why_);
        }
        return format;
    }

    std::optional<DateFormat> refuse_days(const DayText& where, Sentence message, Sentence remedy) {
        findings_.of_file(say("line {}", where.line),
                          {Level::error, "day_format", where.date, std::move(message), std::move(remedy)});
        return std::nullopt;
    }

    /// The one order of year, month and day that fits. An error where two fit every line alike, where some
    /// lines fit only one and some only the other, or where fewer than half of the lines fit any.
    std::optional<DateFormat> found_format(const std::vector<DayText>& dates) {
        using enum DateFormat;
        std::array<std::ptrdiff_t, 3> read{};
        std::ranges::transform(
            std::array{year_month_day, day_month_year, month_day_year}, read.begin(), [&](DateFormat format) {
                return std::ranges::count_if(
                    dates, [&](const DayText& day) { return parse_day(day.date, format).has_value(); });
            });
        const auto most = std::ranges::max(read);
        if (most * 2 < std::ssize(dates)) {
            return refuse_days(dates.front(), say("The days of this file cannot be read."),
                               say("Write them as YYYY-MM-DD, with four digits for the year."));
        }
        if (read[0] == most) {
            why_ = say("the year coming first");
            return year_month_day;
        }
        return day_or_month_first(dates);
    }

    std::optional<DateFormat> day_or_month_first(const std::vector<DayText>& dates) {
        std::vector<std::string> texts;
        std::ranges::transform(dates, std::back_inserter(texts), &DayText::date);
        const auto order = order_of(texts);
        const auto remedy = say("Say with the option date-format whether the day or the month comes first.");
        if (order.day_first && order.month_first) {
            return refuse_days(dates[std::max(*order.day_first, *order.month_first)],
                               say("Line {} can only have the day first and line {} only the month first.",
                                   dates[*order.day_first].line, dates[*order.month_first].line),
                               remedy);
        }
        if (!order.proved()) {
            return refuse_days(
                dates.front(),
                say("Every day of the file can be read with the day first and with the month first."),
                remedy);
        }
        const auto& proof = dates[order.day_first ? *order.day_first : *order.month_first];
        why_ = say("as line {} ({}) shows", proof.line, proof.date);
        return order.proved();
    }

    void read_rows(const std::vector<Record>& records, const std::vector<DayText>& dates, DateFormat format) {
        std::vector<RawReading> readings;
        for (std::size_t i = 0; i < records.size(); ++i) {
            read_row(records[i], dates[i], parse_day(dates[i].date, format), readings);
        }
        if (missing_ > 0) {
            findings_.of_file(
                say("line {}", first_missing_),
                {Level::notice,
                 "t_min, t_max",
                 std::to_string(missing_),
                 missing_ == 1 ? say("1 line without a reading was left out.")
                               : say("{} lines without a reading were left out, the first here.", missing_),
                 {}});
        }
        if (readings.empty()) {
            findings_.error("t_min, t_max", {}, say("No line of the file has a day and both temperatures."),
                            say("Check the columns: the options name them."));
            return;
        }
        const auto unit = choose_unit(readings, columns_.unit, tenths_possible_, work_);
        if (unit.unit) {
            work_.import.understood += verbatim(" ") + say("Unit: {}, {}.", to_text(*unit.unit), unit.why);
            take_readings(readings, *unit.unit, work_);
        }
    }

    void read_row(const Record& record, const DayText& date, std::optional<Day> day,
                  std::vector<RawReading>& readings) {
        const auto t_min = number(record, columns_.t_min, "t_min");
        const auto t_max = number(record, columns_.t_max, "t_max");
        if (!day) {
            findings_.of_line(record.line, {Level::warning, "day", date.date,
                                            say("This is not a day of the calendar; the line is left out."),
                                            say("Correct the day.")});
        } else if (t_min.is_missing || t_max.is_missing) {
            first_missing_ = missing_++ == 0 ? record.line : first_missing_;
        } else if (t_min.value && t_max.value) {
            readings.push_back({record.line, *day, *t_min.value, *t_max.value});
        }
    }

    NumberCell number(const Record& record, std::size_t column, const char* field) {
        const auto cell = read_reading(record.at(column));
        if (!cell.is_missing && !cell.value) {
            findings_.of_line(record.line, {Level::warning, field, record.at(column),
                                            say("This is not a temperature; the line is left out."),
                                            say("Correct it, or leave the cell empty.")});
        }
        return cell;
    }

    const Sheet& sheet_;
    bool tenths_possible_;
    WeatherWork& work_;
    LineFindings& findings_;
    WeatherColumns columns_{};
    Sentence why_{};
    int missing_ = 0;
    int first_missing_ = 0;
};

}  // namespace

void import_table(const Sheet& sheet, bool tenths_possible, WeatherWork& work) {
    TableImport(sheet, tenths_possible, work).read();
}

}  // namespace pipward::intake::detail
