// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/weather/csv_columns.h"
#include "pipward/weather/csv_text.h"
#include "pipward/weather/reading_rows.h"
#include "pipward/weather/text_cells.h"

namespace pipward::weather {

/// Parses records into readings; counts the lines that have none and finds fault with those that are spoilt.
class ReadingParser {
  public:
    ReadingParser(const CsvColumns& columns, LineFindings& lines) : columns_(columns), lines_(lines) {}

    /// `day` is empty where `date` is no day of the calendar.
    void take(const CsvRecord& record, std::optional<Day> day, const std::string& date);

    const std::vector<RawReading>& readings() const { return readings_; }
    int missing() const { return missing_; }  ///< lines that lack a temperature
    int first_missing_line() const { return first_missing_line_; }

  private:
    NumberCell number(const CsvRecord& record, std::size_t column, std::string field);

    const CsvColumns& columns_;
    LineFindings& lines_;
    std::vector<RawReading> readings_;
    int missing_ = 0;
    int first_missing_line_ = 0;
};

}  // namespace pipward::weather
