// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/adopting.h"

namespace pipward::intake::detail {
namespace {

/// Where the field says something.
struct DayTexts {
    std::vector<std::string> texts{};
    std::vector<book::UserFeature*> features{};
};

DayTexts texts_of(book::UserLayer& layer, const std::string& field) {
    DayTexts found;
    for (auto& feature : layer.features) {
        const auto text = feature.texts.find(field);
        if (text != feature.texts.end() && !says_nothing(text->second)) {
            found.texts.push_back(text->second);
            found.features.push_back(&feature);
        }
    }
    return found;
}

std::optional<DateFormat> order_in(Adoption& adoption, const std::string& field, const DayTexts& days) {
    const auto order = order_of(days.texts);
    if (order.day_first && order.month_first) {
        adoption.tell(Level::error, field, days.texts[*order.day_first],
                      say("Here the day must come first ({}), but in {} the month: {}.",
                          days.features[*order.day_first]->name, days.features[*order.month_first]->name,
                          days.texts[*order.month_first]),
                      say("Write them all in one format; best as in 2026-04-12."));
        return std::nullopt;
    }
    if (!order.proved() && order.in_doubt) {
        adoption.tell(Level::error, field, days.texts[*order.in_doubt],
                      say("Every day of the field can be read with the day first and with the month "
                          "first."),
                      say("Give it with date-format: day-month-year or month-day-year."));
        return std::nullopt;
    }
    return order.proved().value_or(DateFormat::day_month_year);
}

bool is_year(std::string_view text) {
    return text.size() == 4 && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

/// Days become ISO 8601; years alone are told and taken out. What is neither is told where its value is read.
void rewrite(Adoption& adoption, const DayTexts& days, const std::string& field, DateFormat format) {
    int years = 0;
    for (std::size_t i = 0; i < days.texts.size(); ++i) {
        auto& texts = days.features[i]->texts;
        if (const auto day = read_day(days.texts[i], format)) {
            texts[field] = to_iso(*day);
        } else if (is_year(trimmed(days.texts[i]))) {
            texts.erase(field);
            ++years;
        }
    }
    adoption.unreadable[field] += years;
    if (years > 0) {
        adoption.tell(Level::error, field, {},
                      years == 1 ? say("1 value is only a year; the book needs a date.")
                                 : say("{} values are only a year; the book needs a date.", years),
                      say("Complete them, or import the years as a remark: map \"{}=remark\".", field));
    }
}

bool holds_days(const FieldGoal& goal) {
    const auto point = goal.column.find('.');
    const auto* table =
        point == goal.column.npos ? nullptr : book::find_book_table(goal.column.substr(0, point));
    const auto* column =
        table == nullptr ? nullptr : book::find_column(*table, goal.column.substr(point + 1));
    return column != nullptr && column->type == CellType::day;
}

}  // namespace

void read_days(Adoption& adoption, book::UserLayer& layer, std::optional<DateFormat> format) {
    for (const auto& goal : adoption.mapping.goals) {
        if (!holds_days(goal)) {
            continue;
        }
        const auto days = texts_of(layer, goal.field);
        if (const auto order = format ? format : order_in(adoption, goal.field, days)) {
            rewrite(adoption, days, goal.field, *order);
            continue;
        }
        // The column as a whole was told already; its rows need not be told one by one.
        adoption.unreadable[goal.field] = static_cast<int>(days.texts.size());
        std::ranges::for_each(days.features,
                              [&](book::UserFeature* feature) { feature->texts.erase(goal.field); });
    }
}

}  // namespace pipward::intake::detail
