// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/value/day.h"
#include "pipward/value/spoken.h"

/// Days as people read them, in tables and within sentences alike.
namespace pipward::record {

/// 0 is Sunday, 6 Saturday.
int weekday_of(Day day);
/// "Sun".
Sentence weekday_name(Day day);
/// "Tue 7 Apr".
Sentence work_day(Day day);
/// The same, with its year where that is another than the one spoken of: "Tue 7 Apr 2027".
Sentence reader_day(Day day, std::optional<int> year);

/// The words of a host, in which days that fill sentences read as reader_day() has them: sentences hold days
/// as ISO 8601, and ask the wording for them as for their forms. What is read by programs goes without it.
Wording with_reader_days(Wording words, std::optional<int> year);
/// The same words, in which days stay as they are stored: for what is kept and read by others later.
Wording with_stored_days(Wording words);

}  // namespace pipward::record
