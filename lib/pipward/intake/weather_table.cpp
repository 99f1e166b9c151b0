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

/// Whether a time of day names the zone of Greenwich: "22:00:00Z", "22:00+00:00", "22:00 UTC".
bool states_utc(std::string_view stamp) {
    constexpr std::array<std::string_view, 6> ways{"z", "utc", "gmt", "+00:00", "+0000", "+00"};
    const auto text = lower_case(trimmed(stamp));
    return std::ranges::any_of(ways, [&](std::string_view way) { return text.ends_with(way); });
}

/// What one record says about its day, not yet read as a day.
struct DayText {
    int line = 0;
    std::string date;       ///< columns of year, month and day joined into one
    std::string stamp;      ///< the cell as it stands, where a time of day may follow
    bool has_time = false;  ///< other than midnight
};

DayText day_text(const Record& record, const WeatherColumns& columns) {
    if (columns.day) {
        const auto& cell = record.at(*columns.day);
        const DayCell day = split_day(cell);
        return {record.line, std::string(day.date), cell, day.has_clock_time};
    }
    return {record.line,
            fmt::format("{}-{}-{}", record.at(*columns.year), record.at(*columns.month),
                        record.at(*columns.day_of_month)),
            {},
            false};
}

/// What the days of a file tell of the way in which they are written; line by line, so that files of any size
/// can be looked through.
class DayColumns {
  public:
    void see(DayText day) {
        first_ = lines_++ == 0 ? day : first_;
        if (seen_.size() < most_seen) {
            repeats_ = !seen_.insert(day.date).second || repeats_;
        }
        for (std::size_t i = 0; i < formats.size(); ++i) {
            read_[i] += parse_day(day.date, formats[i]) ? 1 : 0;
        }
        const auto order = order_of(std::span(&day.date, 1));
        if (order.day_first && !day_first_) {
            day_first_ = day;
        }
        if (order.month_first && !month_first_) {
            month_first_ = day;
        }
        if (day.has_time && !timed_) {
            timed_ = std::move(day);
        }
    }

    std::ptrdiff_t lines() const { return lines_; }
    const DayText& first() const { return first_; }
    /// The first line with a time of day; null where there is none.
    const DayText* timed() const { return timed_ ? &*timed_ : nullptr; }
    /// Whether some day is told more than once and times of day occur: the sign of hourly readings. A daily
    /// file may well be stamped with its time of observation.
    bool are_hourly() const { return repeats_ && timed_; }
    /// How many lines can be read so.
    std::ptrdiff_t read_as(DateFormat format) const {
        return read_[static_cast<std::size_t>(std::ranges::find(formats, format) - formats.begin())];
    }
    const std::optional<DayText>& day_first() const { return day_first_; }
    const std::optional<DayText>& month_first() const { return month_first_; }

  private:
    static constexpr std::array formats{DateFormat::year_month_day, DateFormat::day_month_year,
                                        DateFormat::month_day_year};
    static constexpr std::size_t most_seen = 200'000;  // three centuries of days, twice

    std::ptrdiff_t lines_ = 0;
    DayText first_{};
    std::set<std::string> seen_{};
    bool repeats_ = false;
    std::array<std::ptrdiff_t, 3> read_{};
    std::optional<DayText> day_first_{};
    std::optional<DayText> month_first_{};
    std::optional<DayText> timed_{};
};

/// One table's way from rows to days, which it walks through several times; each step stops where it finds an
/// error.
class TableImport {
  public:
    TableImport(const SheetRows& sheet, const TableForm& form, WeatherWork& work)
        : sheet_(sheet), form_(form), work_(work), findings_(work.findings) {}

    void read() {
        if (!has_rows()) {
            findings_.error({}, {}, say("The file has no data lines."),
                            say("Give a header line and one line per day."));
            return;
        }
        const auto columns = find_weather_columns(sheet_.heading()->fields, work_.options, findings_);
        if (!columns) {
            refuse_hourly_lines();
            return;
        }
        columns_ = *columns;
        work_.import.understood = columns->understood;
        choose_station();
        if (!findings_.any_error()) {
            read_days();
        }
    }

  private:
    bool has_rows() const {
        bool found = false;
        sheet_.each([&](Record&&) {
            found = true;
            return false;
        });
        return found;
    }

    /// Hands on the records that fit the header and are of the station that is meant.
    void each_record(const std::function<void(Record&)>& see) {
        sheet_.each([&](Record&& record) {
            if (fits_header(record) && is_of_station(record)) {
                see(record);
            }
            return true;
        });
    }

    void tell_hourly(int line, const std::string& day) {
        findings_.of_file(
            say("line {}", line),
            {Level::error, "day", day, say("The days carry clock times: this looks like an hourly file."),
             say("Give each day's minimum and maximum, one line per day.")});
    }

    /// A file without daily columns but with clock times deserves to hear that it is hourly, and only that.
    void refuse_hourly_lines() {
        // The first reading of a file may be that of midnight, which looks like a plain day.
        int left = 2;
        sheet_.each([&](Record&& record) {
            for (const std::string& cell : record.fields) {
                if (const DayCell day = split_day(cell);
                    day.has_clock_time && parse_day(day.date, DateFormat::year_month_day)) {
                    work_.import.findings.clear();
                    tell_hourly(record.line, cell);
                    return false;
                }
            }
            return --left > 0;
        });
    }

    /// Records with another number of fields than the header are left out: their cells stand in the wrong
    /// columns.
    bool fits_header(const Record& record) const {
        return record.fields.size() == sheet_.heading()->fields.size();
    }

    bool is_of_station(const Record& record) const {
        return !columns_.station || !work_.options.station_in_file ||
               record.at(*columns_.station) == *work_.options.station_in_file;
    }

    void tell_odd_width(const Record& record) {
        findings_.of_line(record.line, {Level::warning,
                                        {},
                                        std::to_string(record.fields.size()),
                                        say("The line has not the {} fields of the header; it is left out.",
                                            sheet_.heading()->fields.size()),
                                        say("Put text that holds the delimiter between quotation marks.")});
    }

    void choose_station() {
        StationNames stations;
        const auto troubles = sheet_.each([&](Record&& record) {
            if (!fits_header(record)) {
                tell_odd_width(record);
            } else if (columns_.station) {
                stations.see(record.at(*columns_.station));
            }
            return true;
        });
        work_.import.findings.insert(work_.import.findings.end(), troubles.begin(), troubles.end());
        std::string station;
        if (columns_.station) {
            station = pick_station(stations, work_);
        } else if (work_.options.station_in_file) {
            findings_.error(
                "station_in_file", *work_.options.station_in_file, say("The file has no column of stations."),
                say("Leave station-in-file out, or name the column with the option station-column."));
        }
        if (!findings_.any_error()) {
            name_station(station);
        }
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

    void read_days() {
        DayColumns days;
        each_record([&](const Record& record) { days.see(day_text(record, columns_)); });
        if (days.lines() == 0) {
            findings_.error({}, {}, say("No line of the file fits its header."),
                            say("Check the delimiter and the quotation marks."));
            return;
        }
        if (days.are_hourly()) {
            tell_hourly(days.timed()->line, days.timed()->date);
        } else if (days.timed() != nullptr) {
            judge_stamp(*days.timed());
        } else if (states_utc(days.first().stamp)) {
            work_.import.understood += verbatim(" ") + say("The dates are days of UTC, as they are stamped.");
        }
        if (const auto format = findings_.any_error() ? std::nullopt : date_format(days)) {
            read_rows(*format);
        }
    }

    /// In UTC, midnight at a station falls on another time of day, and on the day before where it lies east.
    void judge_stamp(const DayText& stamp) {
        const bool is_utc = states_utc(stamp.stamp) || columns_.day_is_utc;
        if (is_utc && !work_.options.day_shift) {
            findings_.of_file(
                say("line {}", stamp.line),
                {Level::error, "day_shift", stamp.stamp,
                 say("The days are stamped with a time of UTC, which may belong to another day at the "
                     "station: a midnight there is 22:00 or 23:00 of the day before in central Europe."),
                 say("Say with the option day-shift how many days to add to the dates: 1 where the stamp is "
                     "the midnight at which the day begins, 0 where the dates are right as they stand.")});
        }
    }

    std::optional<DateFormat> date_format(const DayColumns& days) {
        if (!columns_.day) {
            return DateFormat::year_month_day;
        }
        const auto format = work_.options.date_format ? work_.options.date_format : found_format(days);
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
    std::optional<DateFormat> found_format(const DayColumns& days) {
        using enum DateFormat;
        const auto most = std::ranges::max(std::array{
            days.read_as(year_month_day), days.read_as(day_month_year), days.read_as(month_day_year)});
        if (most * 2 < days.lines()) {
            return refuse_days(days.first(), say("The days of this file cannot be read."),
                               say("Write them as YYYY-MM-DD, with four digits for the year."));
        }
        if (days.read_as(year_month_day) == most) {
            why_ = say("the year coming first");
            return year_month_day;
        }
        return day_or_month_first(days);
    }

    std::optional<DateFormat> day_or_month_first(const DayColumns& days) {
        const auto remedy = say("Say with the option date-format whether the day or the month comes first.");
        const auto& day_first = days.day_first();
        const auto& month_first = days.month_first();
        if (day_first && month_first) {
            return refuse_days(day_first->line > month_first->line ? *day_first : *month_first,
                               say("Line {} can only have the day first and line {} only the month first.",
                                   day_first->line, month_first->line),
                               remedy);
        }
        if (!day_first && !month_first) {
            return refuse_days(
                days.first(),
                say("Every day of the file can be read with the day first and with the month first."),
                remedy);
        }
        const auto& proof = day_first ? *day_first : *month_first;
        why_ = say("as line {} ({}) shows", proof.line, proof.date);
        return day_first ? DateFormat::day_month_year : DateFormat::month_day_year;
    }

    void read_rows(DateFormat format) {
        Readings readings(findings_);
        each_record([&](Record& record) {
            rejected_ += form_.reject_flagged ? form_.reject_flagged(record) : 0;
            read_row(record, day_text(record, columns_), format, readings);
        });
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
        note_rejected(rejected_, work_);
        const auto by_day = readings.by_day();
        if (by_day.empty()) {
            findings_.error("t_min, t_max", {}, say("No line of the file has a day and both temperatures."),
                            say("Check the columns: the options name them."));
            return;
        }
        const auto unit = choose_unit(by_day, columns_.unit, form_.tenths_possible, work_);
        if (unit.unit) {
            work_.import.understood += verbatim(" ") + say("Unit: {}, {}.", to_text(*unit.unit), unit.why);
            take_readings(by_day, *unit.unit, work_);
        }
    }

    void read_row(const Record& record, const DayText& date, DateFormat format, Readings& readings) {
        const auto day = parse_day(date.date, format);
        const auto t_min = number(record, columns_.t_min, "t_min");
        const auto t_max = number(record, columns_.t_max, "t_max");
        if (!day || !has_thermometers(*day)) {
            findings_.of_line(record.line,
                              {Level::warning, "day", date.date,
                               day ? say("Nobody measured temperatures then; the line is left out.")
                                   : say("This is not a day of the calendar; the line is left out."),
                               say("Correct the day.")});
        } else if (t_min.is_missing || t_max.is_missing) {
            first_missing_ = missing_++ == 0 ? record.line : first_missing_;
        } else if (t_min.value && t_max.value) {
            readings.add(
                {record.line, *day + work_.options.day_shift.value_or(0), *t_min.value, *t_max.value});
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

    const SheetRows& sheet_;
    const TableForm& form_;
    WeatherWork& work_;
    LineFindings& findings_;
    WeatherColumns columns_{};
    Sentence why_{};
    int missing_ = 0;
    int first_missing_ = 0;
    int rejected_ = 0;
};

}  // namespace

void import_table(const SheetRows& sheet, const TableForm& form, WeatherWork& work) {
    TableImport(sheet, form, work).read();
}

}  // namespace pipward::intake::detail
