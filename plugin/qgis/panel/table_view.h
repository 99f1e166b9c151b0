// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDate>
#include <QString>

#include "pipward/record/table.h"

namespace pipward::desktop {

/// Reads a result table by column names. A column that is not there reads as unknown.
class TableView {
  public:
    explicit TableView(const Table& table) : table_(table) {}

    std::size_t size() const { return table_.rows.size(); }
    QString text(std::size_t row, const char* column) const;
    QDate day(std::size_t row, const char* column) const;
    double number(std::size_t row, const char* column) const;
    bool yes(std::size_t row, const char* column) const;
    const std::optional<MapPoint>& at(std::size_t row) const { return table_.rows[row].at; }

  private:
    const Cell* cell(std::size_t row, const char* column) const;

    const Table& table_;
};

QDate to_qt(Day day);
Day from_qt(const QDate& day);

/// How days are typed and shown in a box: the locale's short form, with the year whole.
QString typed_date_format();

/// By the clock of the desktop.
Day today();

}  // namespace pipward::desktop
