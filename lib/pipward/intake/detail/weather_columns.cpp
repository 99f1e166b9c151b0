// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/weather_columns.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/weather_words.h"

namespace pipward::intake::detail {
namespace {

/// One column that the table must or may have.
struct Wanted {
    Sentence role;            ///< for people
    std::string_view option;  ///< the option that names it
    std::span<const std::string_view> names;
};

class WeatherColumnFinder {
  public:
    WeatherColumnFinder(const std::vector<std::string>& headings, LineFindings& findings)
        : headings_(headings), findings_(findings) {
        std::ranges::transform(headings, std::back_inserter(taken_apart_), weather_heading);
    }

    std::optional<TemperatureUnit> unit_of(std::size_t place) const { return taken_apart_[place].unit; }

    /// The column that the option names; an error where the heading has none of that name.
    std::optional<std::size_t> stated(const Wanted& wanted, const std::string& name) {
        const auto found = std::ranges::find(headings_, lower_case(trimmed(name)), lower_case);
        if (found != headings_.end()) {
            return static_cast<std::size_t>(found - headings_.begin());
        }
        refuse(wanted, name, say("The file has no column of this name."),
               say("Its columns are: {}.", fmt::format("{}", fmt::join(headings_, ", "))));
        return std::nullopt;
    }

    /// The first column of the best-liked name that occurs at all.
    std::optional<std::size_t> preferred(std::span<const std::string_view> names) const {
        for (const auto name : names) {
            const auto found = std::ranges::find(taken_apart_, name, &WeatherHeading::name);
            if (found != taken_apart_.end()) {
                return static_cast<std::size_t>(found - taken_apart_.begin());
            }
        }
        return std::nullopt;
    }

    /// For temperatures every name counts the same, so that "Min" beside "Low" is noticed.
    std::optional<std::size_t> temperature(const Wanted& wanted, const std::optional<std::string>& name) {
        if (name) {
            return stated(wanted, *name);
        }
        std::vector<std::string> fitting;
        std::size_t place = 0;
        for (std::size_t i = 0; i < headings_.size(); ++i) {
            if (is_in(wanted.names, taken_apart_[i].name)) {
                place = fitting.empty() ? i : place;
                fitting.push_back(headings_[i]);
            }
        }
        if (fitting.empty()) {
            refuse_missing(wanted);
        } else if (fitting.size() > 1) {
            refuse(wanted, fmt::format("{}", fmt::join(fitting, ", ")),
                   say("More than one column could be the {}.", wanted.role),
                   say("Give it with the option {}.", wanted.option));
        }
        return fitting.size() == 1 ? std::optional{place} : std::nullopt;
    }

    void refuse_missing(const Wanted& wanted) {
        refuse(wanted, fmt::format("{}", fmt::join(headings_, ", ")),
               say("No column was recognised as the {}.", wanted.role),
               say("Name it with the option {}, or give the file a first line that names its columns: date, "
                   "t_min, t_max.",
                   wanted.option));
    }

  private:
    void refuse(const Wanted& wanted, std::string value, Sentence message, Sentence remedy) {
        findings_.of_file(say("header"), {Level::error, std::string(wanted.option), std::move(value),
                                          std::move(message), std::move(remedy)});
    }

    const std::vector<std::string>& headings_;
    LineFindings& findings_;
    std::vector<WeatherHeading> taken_apart_{};
};

void find_day(WeatherColumnFinder& finder, const WeatherFileOptions& options, WeatherColumns& columns) {
    const Wanted day{say("day"), "day_column", day_words};
    if (options.day_column) {
        columns.day = finder.stated(day, *options.day_column);
        return;
    }
    columns.day = finder.preferred(day_words);
    const auto year = finder.preferred(year_words);
    const auto month = finder.preferred(month_words);
    const auto of_month = finder.preferred(day_of_month_words);
    if (year && month && of_month && (!columns.day || columns.day == of_month)) {
        columns.day.reset();
        columns.year = year;
        columns.month = month;
        columns.day_of_month = of_month;
    } else if (!columns.day) {
        finder.refuse_missing(day);
    }
}

Sentence day_words_of(const WeatherColumns& columns, const std::vector<std::string>& headings) {
    return columns.day ? say(R"(day from "{}")", headings[*columns.day])
                       : say(R"(day from "{}", "{}" and "{}")", headings[*columns.year],
                             headings[*columns.month], headings[*columns.day_of_month]);
}

}  // namespace

bool heads_weather(std::string_view heading) {
    const auto name = weather_heading(heading).name;
    return is_in(day_words, name) || is_in(year_words, name) || is_in(month_words, name) ||
           is_in(day_of_month_words, name) || is_in(minimum_words, name) || is_in(maximum_words, name) ||
           is_in(station_words, name);
}

std::optional<WeatherColumns> find_weather_columns(const std::vector<std::string>& headings,
                                                   const WeatherFileOptions& options,
                                                   LineFindings& findings) {
    WeatherColumnFinder finder(headings, findings);
    WeatherColumns columns;
    find_day(finder, options, columns);
    const auto t_min =
        finder.temperature({say("daily minimum"), "t_min_column", minimum_words}, options.t_min_column);
    const auto t_max =
        finder.temperature({say("daily maximum"), "t_max_column", maximum_words}, options.t_max_column);
    columns.station = options.station_column
                          ? finder.stated({say("station"), "station_column", {}}, *options.station_column)
                          : finder.preferred(station_words);
    if (findings.any_error()) {
        return std::nullopt;
    }
    columns.day_is_utc = columns.day && lower_case(headings[*columns.day]).find("utc") != std::string::npos;
    columns.t_min = *t_min;
    columns.t_max = *t_max;
    const auto low = finder.unit_of(*t_min);
    const auto high = finder.unit_of(*t_max);
    // Two headings that contradict each other tell nothing.
    columns.unit = low && high && low != high ? std::nullopt : (low ? low : high);
    columns.understood = say(R"(Columns: {}, minimum from "{}", maximum from "{}".)",
                             day_words_of(columns, headings), headings[*t_min], headings[*t_max]);
    return columns;
}

}  // namespace pipward::intake::detail
