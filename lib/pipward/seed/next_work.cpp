// SPDX-License-Identifier: MIT
#include "pipward/seed/next_work.h"

#include <algorithm>

#include "pipward/record/descent.h"
#include "pipward/seed/harvest.h"
#include "pipward/seed/stratification_need.h"

namespace pipward::seed {
namespace {

constexpr int days_to_wash = 28;
constexpr int days_from_harvest_to_end_of_stratification = 180;
constexpr int days_to_pot = 14;
constexpr int days_in_pots = 400;

NextWork due(SeedWork work, std::optional<Day> from, std::optional<Day> to, Day as_of, Sentence why) {
    return {work, from, to, to && *to < as_of, std::move(why)};
}

NextWork of_lot(NextWork work, const LotCourse& course) {
    work.lot = course.lot->code;
    return work;
}

NextWork harvest(const CrossTally& tally, const OrchardIndex& book, Day as_of) {
    const auto [first, last] = std::ranges::minmax(tally.tags, {}, &Pollination::pollinated_on);
    const auto* mother = book.accession(tally.goal->seed_parent);
    const auto days =
        harvest_days(mother == nullptr ? Accession{} : *mother, first->pollinated_on - days_around_full_bloom,
                     last->pollinated_on + days_around_full_bloom);
    return due(SeedWork::harvest, days.from, days.to, as_of,
               days.usual ? say("Seed is ripe about {} days after full bloom, by the general rule: the book "
                                "has no value for {}.",
                                days.ripe_days, tally.goal->seed_parent)
                          : say("Seed of {} is ripe about {} days after full bloom.", tally.goal->seed_parent,
                                days.ripe_days));
}

NextWork washing(const CrossTally& tally, Day as_of) {
    const Day last = tally.harvested.back();
    auto why =
        say("Fruit was harvested and the book has no seed lot of it. Seed left long in warm fruit germinates "
            "less; open rotten fruit at once.");
    why += verbatim(" ");
    why += say("Seeds are poisonous.");
    return due(SeedWork::wash, last, last + days_to_wash, as_of, std::move(why));
}

bool waits_for_stratification(const LotCourse& course) {
    return !course.lot->stratified_from && !course.germinated && course.out < course.lot->seeds;
}

bool lies_in_stratification(const LotCourse& course) {
    return course.lot->stratified_from && !course.germinated && course.out < course.lot->seeds;
}

// Seedlings in rows that nobody withdrew from a lot: they left it all the same.
int planted_without_withdrawal(const CrossTally& tally) {
    int withdrawn = 0;
    for (const auto& course : tally.lots) {
        withdrawn += course.out - course.out_ungerminated;
    }
    return std::max(0, tally.planted.count.value_or(0) - withdrawn);
}

NextWork cooling(const LotCourse& course, const CrossStratificationNeed& need, Day as_of) {
    const auto begin = course.lot->washed_on;
    const auto to = begin
                        ? std::optional{*begin + days_from_harvest_to_end_of_stratification - need.full_days}
                        : std::nullopt;
    return due(SeedWork::start_stratification, begin, to, as_of,
               say("Lot {} is not in stratification yet; it needs {} to {} days.", course.lot->code,
                   need.least_days, need.full_days));
}

NextWork sowing(const LotCourse& course, const CrossStratificationNeed& need, Day as_of) {
    const Day begin = *course.lot->stratified_from;
    return due(SeedWork::sow, begin + need.least_days, begin + need.full_days + days_to_pot, as_of,
               say("Lot {} has been in stratification since {}: check germination from {} days on.",
                   course.lot->code, to_iso(begin), need.least_days));
}

NextWork potting(const LotCourse& course, int seeds, Day as_of) {
    const Day counted = *course.counted_on;
    return due(SeedWork::pot, counted, counted + days_to_pot, as_of,
               seeds == 1 ? say("1 germinated seed of lot {} is still in it, by the count of {}.",
                                course.lot->code, to_iso(counted))
                          : say("{} germinated seeds of lot {} are still in it, by the count of {}.", seeds,
                                course.lot->code, to_iso(counted)));
}

std::optional<Day> last_count(const CrossTally& tally) {
    std::optional<Day> last;
    for (const auto& course : tally.lots) {
        last = std::max(last, course.counted_on);
    }
    return last;
}

// What stood in pots beside a planted family for longer was given away, or is dead.
bool wants_planting(const CrossTally& tally, Day as_of) {
    if (seedlings_without_place(tally) == 0) {
        return false;
    }
    const auto counted = last_count(tally);
    return !tally.planted.count || (counted && as_of - *counted <= days_in_pots);
}

NextWork planting(const CrossTally& tally) {
    const int seedlings = seedlings_without_place(tally);
    NextWork work;
    work.work = SeedWork::plant;
    work.why = !tally.planted.count
                   ? say("{} seeds germinated and none has a numbered position yet.", seedlings)
               : seedlings == 1 ? say("1 more seedling has no numbered position yet.")
                                : say("{} more seedlings have no numbered position yet.", seedlings);
    return work;
}

// `planted` are seedlings in rows that are not drawn from a lot yet.
std::optional<NextWork> work_at(const LotCourse& course, const CrossStratificationNeed& need, Day as_of,
                                int& planted) {
    if (waits_for_stratification(course)) {
        return of_lot(cooling(course, need, as_of), course);
    }
    if (lies_in_stratification(course)) {
        return of_lot(sowing(course, need, as_of), course);
    }
    const int in_lot = germinated_in_lot(course);
    const int covered = std::min(in_lot, planted);
    planted -= covered;
    return in_lot > covered ? std::optional{of_lot(potting(course, in_lot - covered, as_of), course)}
                            : std::nullopt;
}

}  // namespace

CrossStratificationNeed stratification_need_of_cross(const CrossGoal& goal, const OrchardIndex& book) {
    const auto species = species_of(book, goal.seed_parent);
    const auto known = species ? stratification_need_of(*species) : std::nullopt;
    const auto need = known ? known : stratification_need_of("Malus domestica");
    return {need->least_days, need->full_days, !known};
}

std::vector<NextWork> work_of_cross(const CrossTally& tally, const OrchardIndex& book, Day as_of) {
    if (const auto failed = failed_at(tally); failed && *failed != SeedStep::alive) {
        return {};
    }
    const bool seed_is_there = !tally.lots.empty() || tally.planted.count;
    if (!tally.tags.empty() && !tally.fruits.count && !seed_is_there) {
        return {harvest(tally, book, as_of)};
    }
    if (tally.fruits.count.value_or(0) > 0 && !seed_is_there) {
        return {washing(tally, as_of)};
    }
    std::vector<NextWork> works;
    const auto need = stratification_need_of_cross(*tally.goal, book);
    int planted = planted_without_withdrawal(tally);
    for (const auto& course : tally.lots) {
        if (auto work = work_at(course, need, as_of, planted)) {
            works.push_back(std::move(*work));
        }
    }
    if (wants_planting(tally, as_of)) {
        works.push_back(planting(tally));
    }
    std::ranges::stable_sort(works, {}, &NextWork::work);
    return works;
}

NextWork next_work(const CrossTally& tally, const OrchardIndex& book, Day as_of) {
    auto works = work_of_cross(tally, book, as_of);
    return works.empty() ? NextWork{} : std::move(works.front());
}

}  // namespace pipward::seed
