// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "pipward/record/words.h"
#include "pipward/value/day.h"
#include "pipward/value/sentence.h"

/// Days as files write them, and what a whole column of them tells of their order.
namespace pipward::intake {

/// In which order a day's parts are written.
enum class DateFormat {
    year_month_day,  ///< 2026-04-12, 2026/04/12, 20260412
    day_month_year,  ///< 12/04/2026, 12.4.2026
    month_day_year,  ///< 4/12/2026
};

/// "year-month-day"
Sentence to_text(DateFormat format);
/// The orders as they are typed.
std::span<const Word<DateFormat>> words(DateFormat);

/// A cell, taken apart; nothing of it has been read yet.
struct DayCell {
    std::string_view date;        ///< into the text that was given; all of it where no time follows
    bool has_clock_time = false;  ///< a time of day other than midnight follows the date
};
/// The text must outlive what is returned.
DayCell split_day(std::string_view text);

/// Year with four digits; month and day with one or two; parts parted by -, / or . or (year first) not at
/// all. With dots only day-month-year and year-month-day are ever meant.
std::optional<Day> parse_day(std::string_view date, DateFormat format);

/// A cell with the year first in any case, else in the order that is given; a time of day may follow.
std::optional<Day> read_day(std::string_view text, DateFormat format);

/// What the texts of a column tell of the order of day and month, by their places: the first that can be read
/// only with the day first, only with the month first, and as another day in either order.
struct DayOrder {
    std::optional<std::size_t> day_first{};    ///< into the texts; nothing where none
    std::optional<std::size_t> month_first{};  ///< into the texts; nothing where none
    std::optional<std::size_t> in_doubt{};     ///< into the texts; nothing where none

    /// Where one order only is proved.
    std::optional<DateFormat> proved() const;
};
/// Texts that are no days with two such parts tell nothing.
DayOrder order_of(std::span<const std::string> texts);

}  // namespace pipward::intake
