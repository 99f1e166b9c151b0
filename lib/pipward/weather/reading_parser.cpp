// SPDX-License-Identifier: MIT
#include "pipward/weather/reading_parser.h"

namespace pipward::weather {

void ReadingParser::take(const CsvRecord& record, std::optional<Day> day, const std::string& date) {
    const NumberCell t_min = number(record, columns_.t_min, "t_min");
    const NumberCell t_max = number(record, columns_.t_max, "t_max");
    if (!day) {
        lines_.add(Level::warning, record.line, "day", date,
                   say("This is not a day of the calendar; the line is left out."), say("Correct the day."));
        return;
    }
    if (t_min.is_missing || t_max.is_missing) {
        first_missing_line_ = missing_++ == 0 ? record.line : first_missing_line_;
    } else if (t_min.value && t_max.value) {
        readings_.push_back({record.line, *day, *t_min.value, *t_max.value});
    }
}

NumberCell ReadingParser::number(const CsvRecord& record, std::size_t column, std::string field) {
    const NumberCell cell = parse_number(record.fields[column]);
    if (!cell.is_missing && !cell.value) {
        lines_.add(Level::warning, record.line, std::move(field), record.fields[column],
                   say("This is not a temperature; the line is left out."),
                   say("Correct it, or leave the cell empty."));
    }
    return cell;
}

}  // namespace pipward::weather
