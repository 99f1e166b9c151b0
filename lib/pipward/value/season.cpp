// SPDX-License-Identifier: MIT
#include "pipward/value/season.h"

namespace pipward::value {
namespace {

constexpr int southern_shift = 182;

}  // namespace

Hemisphere hemisphere_of(Latitude latitude) {
    return latitude.degrees < 0 ? Hemisphere::south : Hemisphere::north;
}

Day anchor_of(Season season, Hemisphere hemisphere) {
    const Day new_year = *make_day({season.year, 1, 1});
    return hemisphere == Hemisphere::north ? new_year : new_year + southern_shift;
}

Season season_of(Day day, Hemisphere hemisphere) {
    const Season this_year{parts_of(day).year};
    const Season next{this_year.year + 1};
    if (day >= anchor_of(next, hemisphere) + season_first) {
        return next;
    }
    return day < anchor_of(this_year, hemisphere) + season_first ? Season{this_year.year - 1} : this_year;
}

}  // namespace pipward::value
