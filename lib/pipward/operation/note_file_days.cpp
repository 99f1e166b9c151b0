// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/note_file.h"
#include "pipward/value/utf8.h"
#include "pipward/weather/text_cells.h"

namespace pipward::operation {
namespace {

/// A day as each order reads it.
struct Readings {
    std::optional<Day> year_first;
    std::optional<Day> day_first;
    std::optional<Day> month_first;

    bool in_doubt() const { return day_first && month_first && *day_first != *month_first; }
};

Readings readings_of(const std::string& text) {
    const auto date = weather::split_day(weather::trimmed(text)).date;
    return {weather::parse_day(date, weather::DayFormat::year_month_day),
            weather::parse_day(date, weather::DayFormat::day_month_year),
            weather::parse_day(date, weather::DayFormat::month_day_year)};
}

void tell(NoteDayText& day, Sentence message, Sentence remedy) {
    day.wrong =
        Finding{Level::error, "", "", "", one_line(day.text, 60), std::move(message), std::move(remedy)};
}

const NoteDayText* proof(const std::vector<NoteDayText>& days, std::optional<Day> Readings::*order,
                         std::optional<Day> Readings::*other) {
    const auto found = std::ranges::find_if(days, [&](const NoteDayText& day) {
        const auto readings = readings_of(day.text);
        return !readings.year_first && readings.*order && !(readings.*other);
    });
    return found == days.end() ? nullptr : &*found;
}

/// What the other lines tell of the order.
struct Order {
    const NoteDayText* day_first = nullptr;  ///< a line that can be read only so
    const NoteDayText* month_first = nullptr;
};

void ask(NoteDayText& day, const Readings& readings, const Order& order) {
    const bool both = order.day_first != nullptr && order.month_first != nullptr;
    tell(day,
         both ? say("Line {} has the day first and line {} the month, so this may be {} or {}.",
                    order.day_first->line, order.month_first->line, to_iso(*readings.day_first),
                    to_iso(*readings.month_first))
              : say("With the day first this is {}, with the month first {}.", to_iso(*readings.day_first),
                    to_iso(*readings.month_first)),
         say("Say with day-format which it is, or write it as in 2026-04-12."));
}

void read_one(NoteDayText& day, std::optional<weather::DayFormat> format, const Order& order) {
    const auto readings = readings_of(day.text);
    if (readings.year_first) {
        day.day = readings.year_first;
    } else if (format) {
        day.day = *format == weather::DayFormat::month_day_year ? readings.month_first : readings.day_first;
    } else if (!readings.in_doubt()) {
        day.day = readings.day_first ? readings.day_first : readings.month_first;
    } else if ((order.day_first == nullptr) == (order.month_first == nullptr)) {
        ask(day, readings, order);
    } else {
        day.day = order.day_first != nullptr ? readings.day_first : readings.month_first;
    }
    if (!day.day && !day.wrong) {
        tell(day, say("This is no day of the calendar."), say("Write it as in 2026-04-12."));
    }
}

}  // namespace

Findings read_note_days(std::vector<NoteDayText>& days, std::optional<weather::DayFormat> format) {
    const Order order{proof(days, &Readings::day_first, &Readings::month_first),
                      proof(days, &Readings::month_first, &Readings::day_first)};
    const bool in_doubt = std::ranges::any_of(days, [](const NoteDayText& day) {
        const auto readings = readings_of(day.text);
        return !readings.year_first && readings.in_doubt();
    });
    for (auto& day : days) {
        read_one(day, format, order);
    }
    if (format || !in_doubt || (order.day_first == nullptr) == (order.month_first == nullptr)) {
        return {};
    }
    const auto& shown = order.day_first != nullptr ? *order.day_first : *order.month_first;
    return {{Level::note, "", "", "", shown.text,
             order.day_first != nullptr
                 ? say("The days are read with the day first, as line {} shows.", shown.line)
                 : say("The days are read with the month first, as line {} shows.", shown.line),
             say("Say otherwise with day-format, if that is wrong.")}};
}

}  // namespace pipward::operation
