// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/forced_branch.h"

#include <algorithm>
#include <cmath>

#include "pipward/bloom/stage_ladder.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/meeting.h"
#include "pipward/cross/detail/scenarios.h"
#include "pipward/math/quantile.h"

namespace pipward::cross::detail {
namespace {

constexpr double never = season_last + 1000;
constexpr double even_chance = 0.5;
// A branch is cut within so many days before the last safe one.
constexpr int cutting_days = 14;

// Dormant wood waits for its chill; wood that has begun to swell has had it.
double first_useful_cut(const bloom::SeasonCurves& curves, double full_bloom, Cutting cutting) {
    const double swelling =
        bloom::ladder_day(curves, full_bloom, bloom::ladder_place(Bbch{51}, {})->after_full);
    const double chilled = bloom::day_reaching(curves.chill, cutting.chill.value);
    return std::max<double>(cutting.cut, std::min(swelling, chilled));
}

double open_anthers(const bloom::SeasonCurves& curves, const BloomCourse& course, Cutting cutting) {
    const double cut = first_useful_cut(curves, course.full_bloom, cutting);
    if (course.balloon.first <= cut) {
        return never;
    }
    const double place =
        bloom::value_at(curves.ladder, cut) - bloom::value_at(curves.ladder, course.full_bloom);
    return cut + forcing_days_at({place});
}

std::vector<double> open_anthers_of_all(const BloomCourses& donor, Cutting cutting) {
    std::vector<double> days;
    days.reserve(donor.each.size());
    const std::size_t a_member = bloom::residual_nodes().size() * bloom::residual_nodes().size();
    for (std::size_t i = 0; i < donor.each.size(); ++i) {
        days.push_back(open_anthers((*donor.curves)[i / a_member], donor.each[i], cutting));
    }
    return days;
}

// Dried pollen is on hand from this day on.
SeasonDay ready(double open) {
    return static_cast<SeasonDay>(std::ceil(open)) + drying_days;
}

bool in_time(double open, const BloomCourse& seed) {
    return open < never && ready(open) <= seed.working.last;
}

// What the scenarios tell in which the last cut is in time; one entry a scenario.
struct MetInWater {
    std::vector<int> in_the_room;
    std::vector<int> ready_first;  // pollen of the first cut
    std::vector<int> ready_last;   // pollen of the last cut
    std::vector<int> use_first;
    std::vector<int> use_last;
};

MetInWater counted(const BloomCourses& seed_parent, const BloomCourses& donor, Cutting first, Cutting last) {
    const auto open_first = open_anthers_of_all(donor, first);
    const auto open_last = open_anthers_of_all(donor, last);
    MetInWater count;
    for_each_scenario(seed_parent, [&](std::size_t s, std::size_t d) {
        const auto& working = seed_parent.each[s].working;
        if (in_time(open_last[d], seed_parent.each[s])) {
            count.in_the_room.push_back(static_cast<int>(std::ceil(open_last[d])) - last.cut);
            count.ready_first.push_back(ready(open_first[d]));
            count.ready_last.push_back(ready(open_last[d]));
            count.use_first.push_back(std::max(working.first, ready(open_first[d])));
            count.use_last.push_back(working.last);
        }
    });
    return count;
}

ForcedDays days_of_cuts(const BloomCourses& seed_parent, const BloomCourses& donor, DayRun cut,
                        ChillPortions chill, double risk) {
    ForcedDays days;
    days.cut = cut;
    const auto count = counted(seed_parent, donor, {cut.first, chill}, {cut.last, chill});
    days.ready = *math::quantile(count.ready_first, even_chance);
    days.days_in_the_room = *math::quantile(count.in_the_room, even_chance);
    days.use = {*math::quantile(count.use_first, even_chance), *math::quantile(count.use_last, risk)};
    days.use_by_median =
        days.use.last <= std::max(days.use.first, *math::quantile(count.ready_last, even_chance));
    if (days.use_by_median) {
        days.use.last = *math::quantile(count.use_last, std::max(even_chance, risk));
    }
    return days;
}

}  // namespace

double chance_forced(const BloomCourses& seed_parent, const BloomCourses& donor, Cutting cutting) {
    const auto open = open_anthers_of_all(donor, cutting);
    return share_of_scenarios(
        seed_parent, [&](std::size_t s, std::size_t d) { return in_time(open[d], seed_parent.each[s]); });
}

// A later cut is never the likelier one to be in time, so the last good day can be halved for.
std::optional<SeasonDay> last_cut(const BloomCourses& seed_parent, const BloomCourses& donor, Cutting from,
                                  double part) {
    const double best = chance_forced(seed_parent, donor, from);
    if (best <= 0) {
        return std::nullopt;
    }
    SeasonDay good = from.cut;
    SeasonDay too_late = season_last + 1;
    while (too_late - good > 1) {
        const SeasonDay middle = good + (too_late - good) / 2;
        const double chance = chance_forced(seed_parent, donor, {middle, from.chill});
        (chance >= part * best ? good : too_late) = middle;
    }
    return good;
}

SeasonDay median_useful_cut(const BloomCourses& donor, Cutting cutting) {
    const std::size_t a_member = bloom::residual_nodes().size() * bloom::residual_nodes().size();
    std::vector<int> days;
    for (std::size_t i = 0; i < donor.each.size(); ++i) {
        const auto& curves = (*donor.curves)[i / a_member];
        days.push_back(
            static_cast<int>(std::ceil(first_useful_cut(curves, donor.each[i].full_bloom, cutting))));
    }
    return math::quantile(std::move(days), even_chance).value_or(cutting.cut);
}

std::optional<ForcedDays> forced_days(const BloomCourses& seed_parent, const BloomCourses& donor,
                                      Cutting from, double risk) {
    const auto last = last_cut(seed_parent, donor, from, 1 - risk);
    if (!last) {
        return std::nullopt;
    }
    const Cutting early{std::max(from.cut, *last - cutting_days), from.chill};
    const DayRun cut{std::min(*last, median_useful_cut(donor, early)), *last};
    return days_of_cuts(seed_parent, donor, cut, from.chill, risk);
}

std::optional<ForcedDays> days_of_cut_branch(const BloomCourses& seed_parent, const BloomCourses& donor,
                                             Cutting cut, double risk) {
    return chance_forced(seed_parent, donor, cut) > 0
               ? std::optional{days_of_cuts(seed_parent, donor, {cut.cut, cut.cut}, cut.chill, risk)}
               : std::nullopt;
}

double chance_forced_alone(const BloomCourses& seed_parent, const BloomCourses& donor, Cutting cutting,
                           const BloomCourses& collected, bool kept) {
    const auto open = open_anthers_of_all(donor, cutting);
    return share_of_scenarios(seed_parent, [&](std::size_t s, std::size_t d) {
        const auto& seed = seed_parent.each[s];
        const auto& other = collected.each[d];
        const bool works = kept ? can_keep(seed, other) : can_use_fresh(seed, other);
        return !works && in_time(open[d], seed);
    });
}

}  // namespace pipward::cross::detail
