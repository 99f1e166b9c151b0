// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/table_view.h"

#include <QLocale>
#include <algorithm>

#include "text.h"

namespace pipward::desktop {

QDate to_qt(Day day) {
    const auto parts = parts_of(day);
    return {parts.year, parts.month, parts.day};
}

Day today() {
    const auto date = QDate::currentDate();
    return make_day({date.year(), date.month(), date.day()}).value_or(Day{});
}

// With two digits of a year, what is typed may come out as a day of another century.
QString typed_date_format() {
    QString format = QLocale().dateFormat(QLocale::ShortFormat);
    if (!format.contains(QStringLiteral("yyyy"))) {
        format.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
    }
    return format;
}

Day from_qt(const QDate& day) {
    return Day{static_cast<std::int32_t>(QDate(1970, 1, 1).daysTo(day))};
}

const Cell* TableView::cell(std::size_t row, const char* column) const {
    const auto& columns = table_.shape.columns;
    const auto found = std::ranges::find(columns, column, &Column::name);
    return found == columns.end()
               ? nullptr
               : &table_.rows[row].cells[static_cast<std::size_t>(found - columns.begin())];
}

QString TableView::text(std::size_t row, const char* column) const {
    const Cell* value = cell(row, column);
    return value == nullptr ? QString() : to_qt(to_text(*value));
}

QDate TableView::day(std::size_t row, const char* column) const {
    const Cell* value = cell(row, column);
    const auto* day = value == nullptr ? nullptr : std::get_if<Day>(value);
    return day == nullptr ? QDate() : to_qt(*day);
}

double TableView::number(std::size_t row, const char* column) const {
    const Cell* value = cell(row, column);
    if (value == nullptr) {
        return 0;
    }
    if (const auto* whole = std::get_if<std::int64_t>(value)) {
        return static_cast<double>(*whole);
    }
    const auto* real = std::get_if<double>(value);
    return real == nullptr ? 0 : *real;
}

bool TableView::yes(std::size_t row, const char* column) const {
    const Cell* value = cell(row, column);
    const auto* flag = value == nullptr ? nullptr : std::get_if<bool>(value);
    return flag != nullptr && *flag;
}

}  // namespace pipward::desktop
