// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "pipward/weather/file_conventions.h"
#include "pipward/weather/text_cells.h"

namespace pipward::weather {
namespace {

constexpr std::array formats{DayFormat::year_month_day, DayFormat::day_month_year, DayFormat::month_day_year};

std::size_t lines_read(std::span<const LineText> dates, DayFormat format) {
    return static_cast<std::size_t>(std::ranges::count_if(
        dates, [&](const LineText& date) { return parse_day(date.text, format).has_value(); }));
}

/// The first line that can be read by `format` but not by `other`.
std::optional<LineText> first_only(std::span<const LineText> dates, DayFormat format, DayFormat other) {
    const auto found = std::ranges::find_if(dates, [&](const LineText& date) {
        return parse_day(date.text, format) && !parse_day(date.text, other);
    });
    return found == dates.end() ? std::nullopt : std::optional{*found};
}

DayFormatChoice refused(const WeatherFileOptions& options, const LineText& where, Sentence message,
                        Sentence remedy) {
    return {std::nullopt,
            {},
            {Finding{.level = Level::error,
                     .table = options.file,
                     .row = say("line {}", where.line),
                     .field = "day_format",
                     .value = std::string(where.text),
                     .message = std::move(message),
                     .remedy = std::move(remedy)}}};
}

DayFormatChoice between_day_and_month_first(std::span<const LineText> dates,
                                            const WeatherFileOptions& options) {
    const auto day_first = first_only(dates, DayFormat::day_month_year, DayFormat::month_day_year);
    const auto month_first = first_only(dates, DayFormat::month_day_year, DayFormat::day_month_year);
    const Sentence remedy = say("Say with the option day_format whether the day or the month comes first.");
    if (day_first && month_first) {
        return refused(options, day_first->line > month_first->line ? *day_first : *month_first,
                       say("Line {} can only have the day first and line {} only the month first.",
                           day_first->line, month_first->line),
                       remedy);
    }
    if (!day_first && !month_first) {
        return refused(options, dates.front(),
                       say("Every day of the file can be read with the day first and with the month first."),
                       remedy);
    }
    const auto format = day_first ? DayFormat::day_month_year : DayFormat::month_day_year;
    const LineText proof = day_first ? *day_first : *month_first;
    return {format, say("as line {} ({}) shows", proof.line, proof.text), {}};
}

}  // namespace

DayFormatChoice choose_day_format(std::span<const LineText> dates, const WeatherFileOptions& options) {
    if (options.day_format) {
        return {options.day_format, say("as stated"), {}};
    }
    std::array<std::size_t, formats.size()> read{};
    std::ranges::transform(formats, read.begin(),
                           [&](DayFormat format) { return lines_read(dates, format); });
    const std::size_t most = *std::ranges::max_element(read);
    if (most * 2 < dates.size()) {
        return refused(options, dates.front(), say("The days of this file cannot be read."),
                       say("Write them as YYYY-MM-DD, with four digits for the year."));
    }
    if (read[0] == most) {
        return {DayFormat::year_month_day, say("the year coming first"), {}};
    }
    return between_day_and_month_first(dates, options);
}

}  // namespace pipward::weather
