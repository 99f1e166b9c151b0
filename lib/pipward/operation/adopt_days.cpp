// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "pipward/book/adopt_value.h"
#include "pipward/book/schema.h"
#include "pipward/operation/adopt.h"
#include "pipward/weather/text_cells.h"

namespace pipward::operation {
namespace {

struct DayText {
    std::string feature;
    std::string text;
};

std::string_view date_in(const std::string& text) {
    return weather::split_day(weather::trimmed(text)).date;
}

std::optional<Day> day_of(const std::string& text, weather::DayFormat format) {
    const auto first = weather::parse_day(date_in(text), weather::DayFormat::year_month_day);
    return first ? first : weather::parse_day(date_in(text), format);
}

/// A text that can be read in the one order and not in the other.
const DayText* proof(const std::vector<DayText>& texts, weather::DayFormat format, weather::DayFormat other) {
    const auto found = std::ranges::find_if(
        texts, [&](const DayText& day) { return day_of(day.text, format) && !day_of(day.text, other); });
    return found == texts.end() ? nullptr : &*found;
}

/// A text that is another day in either order.
const DayText* doubt(const std::vector<DayText>& texts) {
    const auto found = std::ranges::find_if(texts, [&](const DayText& day) {
        const auto a = day_of(day.text, weather::DayFormat::day_month_year);
        const auto b = day_of(day.text, weather::DayFormat::month_day_year);
        return a && b && *a != *b;
    });
    return found == texts.end() ? nullptr : &*found;
}

std::optional<weather::DayFormat> order_of(Adoption& adoption, const std::string& field,
                                           const std::vector<DayText>& texts) {
    const auto* day_first =
        proof(texts, weather::DayFormat::day_month_year, weather::DayFormat::month_day_year);
    const auto* month_first =
        proof(texts, weather::DayFormat::month_day_year, weather::DayFormat::day_month_year);
    if (day_first != nullptr && month_first != nullptr) {
        adoption.tell(Level::error, field, day_first->text,
                      say("Here the day must come first ({}), but in {} the month: {}.", day_first->feature,
                          month_first->feature, month_first->text),
                      say("Write them all alike; best as in 2026-04-12."));
        return std::nullopt;
    }
    if (day_first == nullptr && month_first == nullptr) {
        if (const auto* day = doubt(texts)) {
            adoption.tell(Level::error, field, day->text,
                          say("Every day of the field can be read with the day first and with the month "
                              "first."),
                          say("Say which it is with day-format: day-month-year or month-day-year."));
            return std::nullopt;
        }
    }
    return month_first != nullptr ? weather::DayFormat::month_day_year : weather::DayFormat::day_month_year;
}

std::vector<DayText> texts_of(const book::UserLayer& layer, const std::string& field) {
    std::vector<DayText> texts;
    for (const auto& feature : layer.features) {
        const auto text = feature.texts.find(field);
        if (text != feature.texts.end() && !book::says_nothing(text->second)) {
            texts.push_back({feature.name, text->second});
        }
    }
    return texts;
}

bool is_year(std::string_view text) {
    return text.size() == 4 && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

void rewrite(Adoption& adoption, book::UserLayer& layer, const std::string& field,
             weather::DayFormat format) {
    int years = 0;
    for (auto& feature : layer.features) {
        const auto text = feature.texts.find(field);
        if (text == feature.texts.end() || book::says_nothing(text->second)) {
            continue;
        }
        if (const auto day = day_of(text->second, format)) {
            text->second = to_iso(*day);
        } else if (is_year(weather::trimmed(text->second))) {
            ++years;
        }
    }
    if (years > 0) {
        adoption.tell(Level::error, field, {},
                      years == 1 ? say("1 value is a year alone; the book keeps days.")
                                 : say("{} values are a year alone; the book keeps days.", years),
                      say("Complete them, or let the years go to the note: map \"{}=note\".", field));
    }
}

// The column as a whole was told already; its rows need not be told one by one.
void leave_out(book::UserLayer& layer, const std::string& field) {
    for (auto& feature : layer.features) {
        feature.texts.erase(field);
    }
}

void leave_out_years(Adoption& adoption, book::UserLayer& layer, const std::string& field) {
    for (auto& feature : layer.features) {
        const auto text = feature.texts.find(field);
        if (text != feature.texts.end() && is_year(weather::trimmed(text->second))) {
            ++adoption.unreadable[field];
            feature.texts.erase(text);
        }
    }
}

bool holds_days(const book::FieldGoal& goal) {
    const auto point = goal.column.find('.');
    const auto* table =
        point == goal.column.npos ? nullptr : book::find_book_table(goal.column.substr(0, point));
    const auto* column =
        table == nullptr ? nullptr : book::find_column(*table, goal.column.substr(point + 1));
    return column != nullptr && column->type == CellType::day;
}

}  // namespace

void read_days(Adoption& adoption, book::UserLayer& layer, std::optional<weather::DayFormat> format) {
    for (const auto& goal : adoption.mapping.goals) {
        if (!holds_days(goal)) {
            continue;
        }
        const auto texts = texts_of(layer, goal.field);
        const auto order = format ? format : order_of(adoption, goal.field, texts);
        if (order) {
            rewrite(adoption, layer, goal.field, *order);
            leave_out_years(adoption, layer, goal.field);
        } else {
            adoption.unreadable[goal.field] = static_cast<int>(texts.size());
            leave_out(layer, goal.field);
        }
    }
}

}  // namespace pipward::operation
