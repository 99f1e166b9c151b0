// SPDX-License-Identifier: MIT
#include "pipward/record/reader_days.h"

#include <utility>

namespace pipward::record {

int weekday_of(Day day) {
    constexpr int thursday = 4;  // 1970-01-01
    return ((day.since_1970 + thursday) % 7 + 7) % 7;
}

Sentence weekday_name(Day day) {
    switch (weekday_of(day)) {
        case 0:
            return say("Sun");
        case 1:
            return say("Mon");
        case 2:
            return say("Tue");
        case 3:
            return say("Wed");
        case 4:
            return say("Thu");
        case 5:
            return say("Fri");
        default:
            return say("Sat");
    }
}

Sentence work_day(Day day) {
    return joined({weekday_name(day), to_short_text(day)}, verbatim(" "));
}

Sentence reader_day(Day day, std::optional<int> year) {
    const auto own_year = parts_of(day).year;
    return own_year == year ? work_day(day)
                            : joined({work_day(day), verbatim(std::to_string(own_year))}, verbatim(" "));
}

Wording with_reader_days(Wording words, std::optional<int> year) {
    return [words = std::move(words), year](std::string_view form) {
        const auto day = parse_iso_day(form);
        return day ? reader_day(*day, year).in(words) : words(form);
    };
}

Wording with_stored_days(Wording words) {
    return [words = std::move(words)](std::string_view form) {
        return parse_iso_day(form) ? std::string(form) : words(form);
    };
}

}  // namespace pipward::record
