// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/way_view.h"

#include <algorithm>

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/how.h"

namespace pipward::cross::detail {
namespace {

// The refrigerator will do where it keeps pollen usable with this chance.
constexpr double safe_store = 0.90;

}  // namespace

WayOutlook begin_way(const WayView& view, PollenWay way) {
    WayOutlook outlook;
    outlook.row.way = way;
    outlook.row.season = view.crossing.goal->season;
    outlook.row.donor = view.crossing.donor;
    outlook.row.use_from = view.crossing.day(view.working.first);
    outlook.row.use_to = view.crossing.day(view.working.last);
    outlook.row.use_by_median = view.by_median;
    outlook.germination = untested_pollen.mean;
    return outlook;
}

WayOutlook way_without_tree(const WayView& view, PollenWay way) {
    auto outlook = begin_way(view, way);
    outlook.sentences.push_back(say("{} has no living tree to collect pollen from.", view.crossing.donor));
    return outlook;
}

Germination kept_germination(Store store, int days) {
    return germination_at(store, Day{0}, {}, Day{0}, Day{0} + days);
}

Store store_for(int days, Share usable) {
    const auto kept = kept_germination(Store::refrigerator, days);
    return chance_usable(kept, usable) >= safe_store ? Store::refrigerator : Store::freezer;
}

DayRun balloon_collecting(const BloomCourses& donor, double risk) {
    const auto first = first_day(donor, &BloomCourse::balloon, risk);
    const auto last = last_day(donor, &BloomCourse::balloon, risk);
    return first && last ? DayRun{*first, *last} : DayRun{};
}

void collect_at(WayOutlook& outlook, const Crossing& crossing, const DonorTree& donor, Day anchor) {
    const auto& standing = crossing.donors.front();
    const auto usual = first_day(*standing.whole, &BloomCourse::balloon, 0.5);
    const auto here = first_day(*donor.whole, &BloomCourse::balloon, 0.5);
    const auto last = last_day(*donor.whole, &BloomCourse::balloon, 0.5);
    if (here && last) {
        outlook.row.balloon_from = anchor + *here;
        outlook.row.balloon_to = anchor + *last;
    }
    outlook.tree = donor.tree;
    outlook.early_tree = donor.tree != standing.tree && usual && here && *here < *usual;
}

void keep_until_use(WayOutlook& outlook, Day stored_on, Share usable) {
    const auto& row = outlook.row;
    const auto germination =
        row.store == Store::room
            ? untested_pollen
            : kept_germination(*row.store, std::max(drying_days, *row.use_to - stored_on));
    outlook.germination = germination.mean;
    outlook.row.chance = {outlook.meets * chance_usable(germination, usable)};
}

void add_how(WayOutlook& outlook, const WayView& view) {
    outlook.how = outlook.sentences.size();
    outlook.sentences.push_back(how_text(outlook, view.assume().usable_germination));
}

}  // namespace pipward::cross::detail
