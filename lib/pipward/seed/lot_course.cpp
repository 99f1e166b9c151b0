// SPDX-License-Identifier: MIT
#include "pipward/seed/lot_course.h"

#include <algorithm>
#include <map>

namespace pipward::seed {
namespace {

struct OfLot {
    std::map<Day, int> counts;  ///< sprouted in all
    std::map<Day, int> out;     ///< leaving on that day
};

std::map<std::string, OfLot> by_lot(const Orchard& orchard, Day as_of) {
    std::map<std::string, OfLot> lots;
    for (const auto& count : orchard.sprout_counts) {
        if (count.counted_on <= as_of) {
            auto& sprouted = lots[count.lot].counts[count.counted_on];
            sprouted = std::max(sprouted, count.sprouted);
        }
    }
    for (const auto& out : orchard.seeds_out) {
        if (out.on_day <= as_of) {
            lots[out.lot].out[out.on_day] += out.seeds;
        }
    }
    return lots;
}

/// A later count that is lower than an earlier one is a slip of the pen: the higher one stands.
void add_counts(LotCourse& course, const OfLot& of) {
    int before = 0;
    for (const auto& [day, told] : of.counts) {
        const int sprouted = std::max(before, told);
        course.sprouted = sprouted;
        course.counted_on = day;
        if (course.from) {
            const double days = day - *course.from;
            course.points.push_back({days, sprouted});
            if (sprouted > before) {
                course.times.sprouted.push_back({days, sprouted - before});
            }
        }
        before = sprouted;
    }
}

int sprouted_by(const OfLot& of, Day day) {
    int sprouted = 0;
    for (const auto& [counted_on, told] : of.counts) {
        if (counted_on <= day) {
            sprouted = std::max(sprouted, told);
        }
    }
    return sprouted;
}

/// Seeds that left before they sprouted: those by which all that left are more than all that had sprouted.
void add_out(LotCourse& course, const OfLot& of) {
    for (const auto& [day, seeds] : of.out) {
        course.out += seeds;
        const int unsprouted = std::max(0, course.out - sprouted_by(of, day)) - course.out_unsprouted;
        // What leaves after the last count ends the count's own censoring.
        if (unsprouted > 0 && course.counted_on && day < *course.counted_on) {
            course.out_unsprouted += unsprouted;
            if (course.from) {
                course.times.censored.push_back({static_cast<double>(day - *course.from), unsprouted});
            }
        }
    }
}

void add_left(LotCourse& course) {
    if (course.points.empty()) {
        return;
    }
    const int left = course.lot->seeds - *course.sprouted - course.out_unsprouted;
    if (left > 0) {
        course.times.censored.push_back({course.points.back().day, left});
    }
}

}  // namespace

std::vector<LotCourse> lot_courses(const Orchard& orchard, Day as_of) {
    const auto lots = by_lot(orchard, as_of);
    std::vector<LotCourse> courses;
    for (const auto& lot : orchard.seed_lots) {
        LotCourse course;
        course.lot = &lot;
        course.from = lot.cold_from ? lot.cold_from : lot.washed_on;
        if (const auto of = lots.find(lot.code); of != lots.end()) {
            add_counts(course, of->second);
            add_out(course, of->second);
        }
        add_left(course);
        courses.push_back(std::move(course));
    }
    return courses;
}

int on_hand(const LotCourse& course) {
    return std::max(0, course.lot->seeds - course.out);
}

std::optional<Day> there_since(const LotCourse& course) {
    return course.lot->washed_on ? course.lot->washed_on : course.lot->cold_from;
}

int not_sprouted(const LotCourse& course) {
    return std::max(0, course.lot->seeds - std::max(course.out, course.sprouted.value_or(0)));
}

std::vector<const LotCourse*> lots_on_hand(const std::vector<LotCourse>& courses, const std::string& cross,
                                           Day as_of) {
    std::vector<const LotCourse*> lots;
    for (const auto& course : courses) {
        const auto day = there_since(course);
        const bool wanted = cross.empty() || course.lot->cross == cross;
        if (wanted && on_hand(course) > 0 && (!day || *day <= as_of)) {
            lots.push_back(&course);
        }
    }
    std::ranges::stable_sort(lots, {},
                             [](const LotCourse* lot) { return there_since(*lot).value_or(Day{}); });
    return lots;
}

}  // namespace pipward::seed
