// SPDX-License-Identifier: MIT
#include "pipward/weather/csv_columns.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <span>

#include "pipward/weather/header_words.h"
#include "pipward/weather/text_cells.h"

namespace pipward::weather {
namespace {

/// One column that the table must or may have.
struct Wanted {
    Sentence role;            ///< for people
    std::string_view option;  ///< the option that names it
    std::span<const std::string_view> names;
};

Finding about_header(const WeatherFileOptions& options, const Wanted& wanted, std::string value,
                     Sentence message, Sentence remedy) {
    return {.level = Level::error,
            .table = options.file,
            .row = say("header"),
            .field = std::string(wanted.option),
            .value = std::move(value),
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

/// Places of the best-liked name that occurs at all: names come in order of preference.
std::vector<std::size_t> matching(const std::vector<HeaderWords>& header,
                                  std::span<const std::string_view> names) {
    std::vector<std::size_t> places;
    for (const std::string_view name : names) {
        for (std::size_t i = 0; i < header.size(); ++i) {
            if (header[i].name == name) {
                places.push_back(i);
            }
        }
        if (!places.empty()) {
            break;
        }
    }
    return places;
}

/// For temperatures every name counts the same, so that "Min" beside "Low" is noticed.
std::vector<std::size_t> matching_any(const std::vector<HeaderWords>& header,
                                      std::span<const std::string_view> names) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (std::ranges::find(names, header[i].name) != names.end()) {
            places.push_back(i);
        }
    }
    return places;
}

class ColumnFinder {
  public:
    ColumnFinder(const std::vector<std::string>& header, const WeatherFileOptions& options,
                 Findings& findings)
        : header_(header), options_(options), findings_(findings) {
        for (const std::string& text : header) {
            words_.push_back(header_words(text));
        }
    }

    const HeaderWords& words(std::size_t place) const { return words_[place]; }

    /// The column that the option names; an error where the header has none of that name.
    std::optional<std::size_t> stated(const Wanted& wanted, const std::string& name) {
        for (std::size_t i = 0; i < header_.size(); ++i) {
            if (lower_case(header_[i]) == lower_case(trimmed(name))) {
                return i;
            }
        }
        findings_.push_back(
            about_header(options_, wanted, name, say("The file has no column of this name."),
                         say("Its columns are: {}.", fmt::format("{}", fmt::join(header_, ", ")))));
        return std::nullopt;
    }

    std::optional<std::size_t> preferred(const Wanted& wanted) const {
        const auto places = matching(words_, wanted.names);
        return places.empty() ? std::nullopt : std::optional{places.front()};
    }

    std::optional<std::size_t> temperature(const Wanted& wanted, const std::optional<std::string>& name) {
        if (name) {
            return stated(wanted, *name);
        }
        const auto places = matching_any(words_, wanted.names);
        if (places.size() == 1) {
            return places.front();
        }
        places.empty() ? refuse_missing(wanted) : refuse_several(wanted, places);
        return std::nullopt;
    }

    void refuse_missing(const Wanted& wanted) {
        findings_.push_back(about_header(options_, wanted, fmt::format("{}", fmt::join(header_, ", ")),
                                         say("No column was recognised as the {}.", wanted.role),
                                         say("Name it with the option {}, or give the file a first line that "
                                             "names its columns: date, t_min, t_max.",
                                             wanted.option)));
    }

  private:
    void refuse_several(const Wanted& wanted, const std::vector<std::size_t>& places) {
        std::vector<std::string> names;
        names.reserve(places.size());
        for (const std::size_t place : places) {
            names.push_back(header_[place]);
        }
        findings_.push_back(about_header(options_, wanted, fmt::format("{}", fmt::join(names, ", ")),
                                         say("More than one column could be the {}.", wanted.role),
                                         say("Say which with the option {}.", wanted.option)));
    }

    const std::vector<std::string>& header_;
    const WeatherFileOptions& options_;
    Findings& findings_;
    std::vector<HeaderWords> words_;
};

void find_day(ColumnFinder& finder, const WeatherFileOptions& options, CsvColumns& columns) {
    const Wanted day{say("day"), "day_column", day_names()};
    if (options.day_column) {
        columns.day = finder.stated(day, *options.day_column);
        return;
    }
    columns.day = finder.preferred(day);
    const auto year = finder.preferred({say("year"), "", year_names()});
    const auto month = finder.preferred({say("month"), "", month_names()});
    const auto of_month = finder.preferred({say("day of the month"), "", day_of_month_names()});
    const bool day_is_of_month = !columns.day || columns.day == of_month;
    if (year && month && of_month && day_is_of_month) {
        columns.day.reset();
        columns.year = year;
        columns.month = month;
        columns.day_of_month = of_month;
    } else if (!columns.day) {
        finder.refuse_missing(day);
    }
}

Sentence day_words(const CsvColumns& columns, const std::vector<std::string>& header) {
    if (columns.day) {
        return say(R"(day from "{}")", header[*columns.day]);
    }
    return say(R"(day from "{}", "{}" and "{}")", header[*columns.year], header[*columns.month],
               header[*columns.day_of_month]);
}

}  // namespace

std::optional<CsvColumns> find_columns(const std::vector<std::string>& header,
                                       const WeatherFileOptions& options, Findings& findings) {
    ColumnFinder finder(header, options, findings);
    CsvColumns columns;
    const auto errors_before = findings.size();
    find_day(finder, options, columns);
    const auto t_min =
        finder.temperature({say("daily minimum"), "t_min_column", minimum_names()}, options.t_min_column);
    const auto t_max =
        finder.temperature({say("daily maximum"), "t_max_column", maximum_names()}, options.t_max_column);
    const Wanted station{say("station"), "station_column", station_names()};
    columns.station =
        options.station_column ? finder.stated(station, *options.station_column) : finder.preferred(station);
    if (findings.size() != errors_before) {
        return std::nullopt;
    }
    columns.t_min = *t_min;
    columns.t_max = *t_max;
    const auto low_unit = finder.words(columns.t_min).unit;
    const auto high_unit = finder.words(columns.t_max).unit;
    // Two headers that contradict each other tell nothing.
    columns.unit =
        low_unit && high_unit && low_unit != high_unit ? std::nullopt : (low_unit ? low_unit : high_unit);
    columns.understood = say(R"(Columns: {}, minimum from "{}", maximum from "{}".)",
                             day_words(columns, header), header[columns.t_min], header[columns.t_max]);
    return columns;
}

}  // namespace pipward::weather
