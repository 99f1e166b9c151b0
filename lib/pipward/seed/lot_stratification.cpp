// SPDX-License-Identifier: MIT
#include "pipward/seed/lot_stratification.h"

#include <algorithm>
#include <cmath>

namespace pipward::seed {
namespace {

constexpr double usual_store_degrees = 4;

Sentence spell_words(const Spell& spell, bool warm) {
    return warm ? say("Warm from {} to {}, up to {:.1f} °C.", to_iso(spell.from), to_iso(spell.to),
                      spell.extreme.degrees)
                : say("Frost from {} to {}, down to {:.1f} °C: check the seed.", to_iso(spell.from),
                      to_iso(spell.to), spell.extreme.degrees);
}

Sentence state_words(const LotStratification& row, Day as_of) {
    std::vector<Sentence> words;
    if (row.sum.reached[1]) {
        words.push_back(say("Ready: sow it before radicles get long."));
    } else if (row.sum.reached[0]) {
        words.push_back(say("The first may germinate: check every week."));
    } else {
        words.push_back(say("{:.0f} of {} days.", row.sum.days, row.need.full_days));
    }
    if (row.ready && as_of > *row.ready + days_to_sow) {
        words.push_back(say("Late for sowing."));
    }
    for (const auto& spell : row.sum.warm) {
        words.push_back(spell_words(spell, true));
    }
    for (const auto& spell : row.sum.frost) {
        words.push_back(spell_words(spell, false));
    }
    if (row.sum.unknown_days > 0) {
        words.push_back(say("{} days without a temperature do not count.", row.sum.unknown_days));
    }
    if (row.need.guessed) {
        words.push_back(say("The species is not known: the requirement of apple is assumed."));
    }
    if (row.assumed_store) {
        words.push_back(
            say("The store's temperature is not known: {:.0f} °C is assumed.", usual_store_degrees));
    }
    return joined(words, verbatim(" "));
}

/// The morning after the last cold day that was needed: 90 days from 25 November end on 23 February. What is
/// left to come is forecast as if the store kept a steady, right cold.
std::optional<Day> ready_on(const StratificationSum& sum, std::size_t which, double need, Day last,
                            bool goes_on) {
    if (sum.reached[which]) {
        return *sum.reached[which] + 1;
    }
    return goes_on ? std::optional{last + 1 + static_cast<int>(std::ceil(need - sum.days - 1e-9))}
                   : std::nullopt;
}

Finding not_in_stratification(const LotCourse& course) {
    return {Level::notice,
            "seed_lot",
            course.lot->code,
            "stratified_from",
            "",
            say("By the book the lot is not in stratification yet."),
            say("Record the first day when stratification begins.")};
}

}  // namespace

LotStratification stratification_of_lot(const LotCourse& course, const CrossStratificationNeed& need,
                                        const std::optional<StoreLog>& log, Day as_of) {
    const auto& lot = *course.lot;
    const Day last = lot.stratified_to ? std::min(*lot.stratified_to, as_of) : as_of;
    LotStratification row{&course, need};
    row.assumed_store = !log && !lot.cold;
    const auto store = log ? *log : steady_store(lot.cold.value_or(Celsius{usual_store_degrees}));
    const double least = need.least_days;
    const double full = need.full_days;
    row.sum = count_stratification(*lot.stratified_from, last, store, {least, full});
    const bool goes_on = !lot.stratified_to || *lot.stratified_to > as_of;
    row.first_ready = ready_on(row.sum, 0, least, last, goes_on);
    row.ready = ready_on(row.sum, 1, full, last, goes_on);
    row.state = state_words(row, as_of);
    return row;
}

bool is_in_stratification(const LotCourse& course, Day as_of, bool also_done) {
    const bool in_stratification = course.lot->stratified_from && *course.lot->stratified_from <= as_of;
    const bool done =
        (course.lot->stratified_to && *course.lot->stratified_to < as_of) || course.out >= course.lot->seeds;
    return in_stratification && (also_done || !done);
}

std::vector<LotStratification> lots_in_cold(const std::vector<LotCourse>& courses, const Orchard& orchard,
                                            const ColdQuestion& question, Findings& findings) {
    const OrchardIndex book(orchard);
    std::vector<LotStratification> rows;
    for (const auto& course : courses) {
        const auto* goal = book.goal(course.lot->cross);
        if (goal != nullptr && is_in_stratification(course, question.as_of, question.also_done)) {
            rows.push_back(stratification_of_lot(course, stratification_need_of_cross(*goal, book),
                                                 question.log, question.as_of));
        } else if (!course.lot->stratified_from && !course.germinated && course.out < course.lot->seeds) {
            findings.push_back(not_in_stratification(course));
        }
    }
    std::ranges::stable_sort(rows, {},
                             [](const LotStratification& row) { return row.ready.value_or(Day{}); });
    return rows;
}

}  // namespace pipward::seed
