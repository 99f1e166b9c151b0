// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/insurance.h"

#include <algorithm>
#include <cmath>

#include "pipward/cross/detail/forced_branch.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/way_outlook.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

bool is_doubtful(const WayOutlook& way) {
    const bool collected = way.row.way == PollenWay::same_day || way.row.way == PollenWay::kept_this_spring;
    return worth_doing(way) && !way.lot && collected && way.row.chance.value < good_chance;
}

// In water already, or not to be put off.
bool is_ready(const WayOutlook& way, Day as_of) {
    const bool in_water = !way.row.collect_to;
    return way.row.way == PollenWay::forced_branch && !way.row.best && way.collected_now &&
           (in_water || *way.row.collect_to - as_of <= insured_ahead_days);
}

const DonorTree& donor_of(const Crossing& crossing, const WayOutlook& way) {
    const auto found = std::ranges::find(crossing.donors, way.tree, &DonorTree::tree);
    return found == crossing.donors.end() ? crossing.donors.front() : *found;
}

Cutting cutting_of(const Bench& bench, const Crossing& crossing) {
    const auto cut = bench.stock.done.cut.find(crossing.donor);
    return {cut == bench.stock.done.cut.end() ? crossing.from : cut->second - crossing.anchor,
            crossing.donor_chill};
}

// By how much the branch raises the chance, in the springs in which it alone is in time.
double gain_of(const Bench& bench, const Crossing& crossing, const WayOutlook& first,
               const WayOutlook& branch) {
    const double alone = chance_forced_alone(*crossing.seed_left, *donor_of(crossing, branch).whole,
                                             cutting_of(bench, crossing), *donor_of(crossing, first).left,
                                             first.row.way == PollenWay::kept_this_spring);
    const double germinates = branch.meets > 0 ? branch.row.chance.value / branch.meets : 0;
    return alone * forcing_success * germinates;
}

Sentence insurance_text(const WayOutlook& first, const WayOutlook& branch, double gain, int seedlings) {
    const auto from = percent_text(first.row.chance.value);
    const auto to = percent_text(first.row.chance.value + gain);
    const auto more = static_cast<int>(std::lround(gain * seedlings));
    const auto room = days_text(branch.days_in_the_room);
    return say(
        "A second way, in case the first fails: it raises the probability from {} to {}, worth about {} "
        "of {} wanted seedlings, and costs {} flower buds on cut branches and fresh water every two days "
        "for about {}.",
        from, to, more, seedlings, branch.row.donor_flowers, room);
}

void insure(const Bench& bench, DonorPlan& donor) {
    auto* first = way_that(donor.ways, is_doubtful);
    auto* branch =
        way_that(donor.ways, [&](const WayOutlook& way) { return is_ready(way, bench.stock.as_of); });
    if (first == nullptr || branch == nullptr) {
        return;
    }
    const double gain = gain_of(bench, donor.crossing, *first, *branch);
    if (gain < worth_insuring) {
        return;
    }
    branch->row.insurance = true;
    branch->row.flowers = first->row.flowers;
    fill_amounts(*branch, donor.need);
    const double part = static_cast<double>(first->row.flowers) / std::max(1, donor.need.flowers);
    const auto seedlings = static_cast<int>(std::lround(donor.crossing.goal->seedlings_wanted * part));
    branch->sentences.push_back(insurance_text(*first, *branch, gain, seedlings));
    put_in_order(donor.ways);
}

}  // namespace

void insure(const Bench& bench, GoalPlan& plan) {
    if (plan.next_season) {
        return;
    }
    for (auto& donor : plan.donors) {
        insure(bench, donor);
    }
}

}  // namespace pipward::cross::detail
