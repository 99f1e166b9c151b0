// SPDX-License-Identifier: MIT
#include "pipward/cross/meeting.h"

#include <algorithm>
#include <cmath>

#include "pipward/bloom/stage_ladder.h"
#include "pipward/cross/forcing.h"
#include "pipward/cross/normal.h"

namespace pipward {
namespace {

constexpr double never = season_last + 1000;

// The share of scenarios in which `meet(seed course, index of donor course)` holds. Courses of one weather
// and season stand together, one a node of the own spread.
template <class Meet>
double share_of_scenarios(const BloomCourses& seed_parent, Meet meet) {
    const std::size_t own = residual_nodes().size();
    std::size_t met = 0;
    for (std::size_t group = 0; group < seed_parent.each.size(); group += own) {
        for (std::size_t s = group; s < group + own; ++s) {
            for (std::size_t d = group; d < group + own; ++d) {
                met += meet(seed_parent.each[s], d) ? 1 : 0;
            }
        }
    }
    return static_cast<double>(met) /
           static_cast<double>(std::max<std::size_t>(1, seed_parent.each.size() * own));
}

struct Cutting {
    SeasonDay cut;
    ChillPortions chill;
};

// Dormant wood waits for its chill; wood that has begun to swell has had it.
double first_useful_cut(const SeasonCurves& curves, double full_bloom, Cutting cutting) {
    const double swelling = ladder_day(curves, full_bloom, ladder_place(Bbch{51})->after_full);
    const double chilled = day_reaching(curves.chill, cutting.chill.value);
    return std::max<double>(cutting.cut, std::min(swelling, chilled));
}

double open_anthers(const SeasonCurves& curves, const BloomCourse& course, Cutting cutting) {
    const double cut = first_useful_cut(curves, course.full_bloom, cutting);
    if (course.balloon.first <= cut) {
        return never;
    }
    const double place = value_at(curves.ladder, cut) - value_at(curves.ladder, course.full_bloom);
    return cut + forcing_days_at({place});
}

std::vector<double> open_anthers_of_all(const BloomCourses& donor, Cutting cutting) {
    std::vector<double> days;
    days.reserve(donor.each.size());
    const std::size_t a_member = residual_nodes().size() * residual_nodes().size();
    for (std::size_t i = 0; i < donor.each.size(); ++i) {
        days.push_back(open_anthers((*donor.curves)[i / a_member], donor.each[i], cutting));
    }
    return days;
}

}  // namespace

double chance_same_day(const BloomCourses& seed_parent, const BloomCourses& donor) {
    return share_of_scenarios(seed_parent, [&](const BloomCourse& seed, std::size_t d) {
        return (seed.workable & donor.each[d].fresh).any();
    });
}

double chance_kept(const BloomCourses& seed_parent, const BloomCourses& donor) {
    return share_of_scenarios(seed_parent, [&](const BloomCourse& seed, std::size_t d) {
        const auto& balloon = donor.each[d].balloon;
        return !balloon.empty() && balloon.first + drying_days <= seed.working.last;
    });
}

double chance_forced(const BloomCourses& seed_parent, const BloomCourses& donor, SeasonDay cut,
                     ChillPortions chill) {
    const auto open = open_anthers_of_all(donor, {cut, chill});
    return share_of_scenarios(seed_parent, [&](const BloomCourse& seed, std::size_t d) {
        return open[d] + drying_days <= seed.working.last;
    });
}

std::optional<SeasonDay> last_cut(const BloomCourses& seed_parent, const BloomCourses& donor, SeasonDay from,
                                  ChillPortions chill, double part) {
    const double best = chance_forced(seed_parent, donor, from, chill);
    if (best <= 0) {
        return std::nullopt;
    }
    SeasonDay good = from;
    SeasonDay too_late = season_last + 1;
    while (too_late - good > 1) {
        const SeasonDay middle = good + (too_late - good) / 2;
        const double chance = chance_forced(seed_parent, donor, middle, chill);
        (chance >= part * best ? good : too_late) = middle;
    }
    return good;
}

SeasonDay median_useful_cut(const BloomCourses& donor, SeasonDay cut, ChillPortions chill) {
    const std::size_t a_member = residual_nodes().size() * residual_nodes().size();
    std::vector<int> days;
    for (std::size_t i = 0; i < donor.each.size(); ++i) {
        const auto& curves = (*donor.curves)[i / a_member];
        days.push_back(
            static_cast<int>(std::ceil(first_useful_cut(curves, donor.each[i].full_bloom, {cut, chill}))));
    }
    return quantile(std::move(days), 0.5).value_or(cut);
}

int median_days_in_the_room(const BloomCourses& donor, SeasonDay cut, ChillPortions chill) {
    std::vector<int> days;
    for (const double open : open_anthers_of_all(donor, {cut, chill})) {
        if (open < never) {
            days.push_back(static_cast<int>(std::ceil(open - cut)));
        }
    }
    return quantile(std::move(days), 0.5).value_or(0);
}

}  // namespace pipward
