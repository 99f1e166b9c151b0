// SPDX-License-Identifier: MIT
#include "pipward/seed/lot_course.h"

#include <algorithm>
#include <map>

namespace pipward::seed {
namespace {

struct OfLot {
    std::map<Day, int> counts;  ///< germinated in all
    std::map<Day, int> out;     ///< leaving on that day
};

std::map<std::string, OfLot> by_lot(const Orchard& orchard, Day as_of) {
    std::map<std::string, OfLot> lots;
    for (const auto& count : orchard.germination_counts) {
        if (count.counted_on <= as_of) {
            auto& germinated = lots[count.lot].counts[count.counted_on];
            germinated = std::max(germinated, count.germinated);
        }
    }
    for (const auto& out : orchard.seed_withdrawals) {
        if (out.withdrawn_on <= as_of) {
            lots[out.lot].out[out.withdrawn_on] += out.seeds;
        }
    }
    return lots;
}

/// A later count that is lower than an earlier one is a slip of the pen: the higher one stands.
void add_counts(LotCourse& course, const OfLot& of) {
    int before = 0;
    for (const auto& [day, told] : of.counts) {
        const int germinated = std::max(before, told);
        course.germinated = germinated;
        course.counted_on = day;
        if (course.from) {
            const double days = day - *course.from;
            course.points.push_back({days, germinated});
            if (germinated > before) {
                course.times.germinated.push_back({days, germinated - before});
            }
        }
        before = germinated;
    }
}

int germinated_by(const OfLot& of, Day day) {
    int germinated = 0;
    for (const auto& [counted_on, told] : of.counts) {
        if (counted_on <= day) {
            germinated = std::max(germinated, told);
        }
    }
    return germinated;
}

/// Seeds that left before they germinated: those by which all that left are more than all that had
/// germinated.
void add_out(LotCourse& course, const OfLot& of) {
    for (const auto& [day, seeds] : of.out) {
        course.out += seeds;
        const int ungerminated = std::max(0, course.out - germinated_by(of, day)) - course.out_ungerminated;
        // What leaves after the last count ends the count's own censoring.
        if (ungerminated > 0 && course.counted_on && day < *course.counted_on) {
            course.out_ungerminated += ungerminated;
            if (course.from) {
                course.times.censored.push_back({static_cast<double>(day - *course.from), ungerminated});
            }
        }
    }
}

void add_left(LotCourse& course) {
    if (course.points.empty()) {
        return;
    }
    const int left = course.lot->seeds - *course.germinated - course.out_ungerminated;
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
        course.from = lot.stratified_from ? lot.stratified_from : lot.washed_on;
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
    return course.lot->washed_on ? course.lot->washed_on : course.lot->stratified_from;
}

int not_germinated(const LotCourse& course) {
    return std::max(0, course.lot->seeds - std::max(course.out, course.germinated.value_or(0)));
}

int germinated_in_lot(const LotCourse& course) {
    return std::max(0, course.germinated.value_or(0) - (course.out - course.out_ungerminated));
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
