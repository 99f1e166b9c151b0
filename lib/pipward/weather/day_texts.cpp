// SPDX-License-Identifier: MIT
#include "pipward/weather/day_texts.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "pipward/weather/text_cells.h"

namespace pipward::weather {

DayText day_text(const CsvRecord& record, const CsvColumns& columns) {
    if (columns.day) {
        const DayCell cell = split_day(record.fields[*columns.day]);
        return {record.line, std::string(cell.date), cell.has_clock_time};
    }
    return {record.line,
            fmt::format("{}-{}-{}", record.fields[*columns.year], record.fields[*columns.month],
                        record.fields[*columns.day_of_month]),
            false};
}

std::optional<DayText> repeated_with_clock_time(std::span<const DayText> days) {
    std::set<std::string_view> seen;
    const bool repeats =
        std::ranges::any_of(days, [&](const DayText& day) { return !seen.insert(day.date).second; });
    const auto timed = std::ranges::find_if(days, &DayText::has_clock_time);
    return repeats && timed != days.end() ? std::optional{*timed} : std::nullopt;
}

Finding hourly_file(const DayText& where, const std::string& file) {
    return {.level = Level::error,
            .table = file,
            .row = say("line {}", where.line),
            .field = "day",
            .value = where.date,
            .message = say("The days carry clock times: this looks like an hourly file."),
            .remedy = say("Give each day's minimum and maximum, one line a day.")};
}

}  // namespace pipward::weather
