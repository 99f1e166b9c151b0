// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/bloom_course.h"

#include <algorithm>
#include <cmath>

#include "pipward/bloom/stage_ladder.h"
#include "pipward/cross/detail/effective_pollination.h"
#include "pipward/math/quantile.h"

namespace pipward::cross::detail {
namespace {

// How old, in days, a flower may be that still sets seed when pollinated on a season day. One a day.
std::vector<double> effective_days(const bloom::SeasonCurves& curves) {
    const std::span<const double> means(curves.mean_temperature);
    std::vector<double> days;
    days.reserve(means.size());
    for (std::size_t i = 0; i < means.size(); ++i) {
        days.push_back(effective_pollination_days(means.subspan(i)));
    }
    return days;
}

double share_at_balloon(double after_full, const bloom::StageLadder& ladder) {
    return bloom::share_opened({after_full + balloon_lasts.value}, ladder).value -
           bloom::share_opened({after_full}, ladder).value;
}

// The first place on the ladder with least_at_once at balloon, degree-days after full bloom: halved between a
// place before any balloon and the middle of the stage, where most stand at it. The last lies as far beyond
// the middle, for the logistic is the same on both sides.
double first_balloon_place(const bloom::StageLadder& ladder) {
    double before = -300;
    double within = -balloon_lasts.value / 2;
    while (within - before > 1e-9) {
        const double middle = (before + within) / 2;
        (share_at_balloon(middle, ladder) < least_at_once.value ? before : within) = middle;
    }
    return within;
}

// What all courses of a window share.
struct Places {
    bloom::StageLadder ladder;
    double first_balloon = 0;  // degree-days from full bloom
    double tenth_open = 0;
};

Places places_on(const bloom::StageLadder& ladder) {
    return {ladder, first_balloon_place(ladder), bloom::ladder_place_of_share(least_at_once, ladder).value};
}

DayRun balloon_days(const bloom::SeasonCurves& curves, double full_bloom, const Places& places) {
    const double last_place = -balloon_lasts.value - places.first_balloon;
    return {static_cast<SeasonDay>(std::ceil(bloom::ladder_day(curves, full_bloom, {places.first_balloon}))),
            static_cast<SeasonDay>(std::floor(bloom::ladder_day(curves, full_bloom, {last_place})))};
}

int bit_of(SeasonDay day) {
    return day - season_first;
}

SeasonDays fresh_days(DayRun balloon) {
    SeasonDays days;
    if (!balloon.empty()) {
        const int first = std::max(0, bit_of(balloon.first) + fresh_from_days);
        const int last = std::min(season_length - 1, bit_of(balloon.last) + fresh_to_days);
        for (int bit = first; bit <= last; ++bit) {
            days.set(bit);
        }
    }
    return days;
}

DayRun run_of(const SeasonDays& days, DayRun within) {
    DayRun run;
    for (SeasonDay day = within.first; day <= within.last; ++day) {
        if (days.test(bit_of(day))) {
            run.first = std::min(run.first, day);
            run.last = day;
        }
    }
    return run;
}

// From a tenth open to a tenth unopened, and as long after as a flower can last.
DayRun open_days(const bloom::SeasonCurves& curves, double full_bloom, const Places& places) {
    const double tenth = places.tenth_open;
    const auto first = static_cast<SeasonDay>(std::floor(bloom::ladder_day(curves, full_bloom, {tenth})));
    const auto last =
        static_cast<SeasonDay>(std::ceil(bloom::ladder_day(curves, full_bloom, {-tenth}) + stigma_days));
    return {std::max(first, season_first), std::min(last, season_last)};
}

// Flowers that opened within the last `effective` days: open by now less open by then.
double receptive_share(const bloom::SeasonCurves& curves, double ladder_at_full, SeasonDay day,
                       double effective, const bloom::StageLadder& ladder) {
    const double now = bloom::value_at(curves.ladder, day) - ladder_at_full;
    const double then = bloom::value_at(curves.ladder, day - effective) - ladder_at_full;
    return bloom::share_opened({now}, ladder).value - bloom::share_opened({then}, ladder).value;
}

BloomCourse course_of(const bloom::SeasonCurves& curves, const std::vector<double>& effective,
                      double full_bloom, const Places& places) {
    BloomCourse course;
    course.full_bloom = full_bloom;
    const double ladder_at_full = bloom::value_at(curves.ladder, full_bloom);
    const auto open = open_days(curves, full_bloom, places);
    for (SeasonDay day = open.first; day <= open.last; ++day) {
        const double days = effective[bit_of(day)];
        if (days > 0 &&
            receptive_share(curves, ladder_at_full, day, days, places.ladder) >= least_at_once.value) {
            course.workable.set(bit_of(day));
        }
    }
    course.working = run_of(course.workable, open);
    course.balloon = balloon_days(curves, full_bloom, places);
    course.fresh = fresh_days(course.balloon);
    return course;
}

struct Spreads {
    double season = 0;
    double own = 0;
};

Spreads spreads_of(const bloom::BloomWindow& window) {
    const double noise = (window.ladder.first_sd_days + window.ladder.end_sd_days) / 2;
    return {std::hypot(window.season_sd_days, std::sqrt(bloom::shared_stage_noise) * noise),
            std::hypot(window.own_sd_days, std::sqrt(1 - bloom::shared_stage_noise) * noise)};
}

double share_without_work(const std::vector<BloomCourse>& courses) {
    const auto none = std::ranges::count_if(courses, [](const auto& c) { return c.working.empty(); });
    return static_cast<double>(none) / static_cast<double>(std::max<std::size_t>(1, courses.size()));
}

std::optional<SeasonDay> day_of_runs(const BloomCourses& courses, DayRun BloomCourse::*run,
                                     SeasonDay DayRun::*end, double chance) {
    std::vector<int> days;
    for (const auto& course : courses.each) {
        if (!(course.*run).empty()) {
            days.push_back(course.*run.*end);
        }
    }
    return math::quantile(std::move(days), chance);
}

}  // namespace

BloomCourses bloom_courses(const bloom::BloomForecast& forecast, const bloom::BloomWindow& window) {
    BloomCourses courses;
    courses.curves = &forecast.curves.at(window.offset.degrees);
    const auto nodes = bloom::residual_nodes();
    const auto places = places_on(window.ladder);
    const auto [season_sd, own_sd] = spreads_of(window);
    courses.each.reserve(window.full_bloom.size() * nodes.size() * nodes.size());
    for (std::size_t member = 0; member < window.full_bloom.size(); ++member) {
        const auto& curves = (*courses.curves)[member];
        const auto effective = effective_days(curves);
        for (const double season : nodes) {
            for (const double own : nodes) {
                const double moved = season * season_sd + own * own_sd;
                courses.each.push_back(
                    course_of(curves, effective, window.full_bloom[member] + moved, places));
            }
        }
    }
    courses.too_cold = share_without_work(courses.each);
    return courses;
}

BloomCourses from_day(BloomCourses courses, SeasonDay from) {
    courses.from = from;
    const int gone = std::clamp(bit_of(from), 0, season_length);
    const SeasonDays left = gone < season_length ? ~SeasonDays{} << gone : SeasonDays{};
    for (auto& course : courses.each) {
        course.workable &= left;
        course.working = run_of(course.workable, course.working);
        course.balloon.first = std::max(course.balloon.first, from);
        course.fresh = fresh_days(course.balloon);
    }
    return courses;
}

std::optional<SeasonDay> first_day(const BloomCourses& courses, DayRun BloomCourse::*run, double chance) {
    return day_of_runs(courses, run, &DayRun::first, chance);
}

std::optional<SeasonDay> last_day(const BloomCourses& courses, DayRun BloomCourse::*run, double chance) {
    return day_of_runs(courses, run, &DayRun::last, chance);
}

double share_with(const BloomCourses& courses, DayRun BloomCourse::*run) {
    const auto count =
        std::ranges::count_if(courses.each, [&](const auto& course) { return !(course.*run).empty(); });
    return static_cast<double>(count) / static_cast<double>(std::max<std::size_t>(1, courses.each.size()));
}

}  // namespace pipward::cross::detail
