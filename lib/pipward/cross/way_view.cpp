// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/way_view.h"

#include <fmt/format.h>

namespace pipward::cross::detail {

WayOutlook begin_way(const WayView& view, PollenWay way) {
    WayOutlook outlook;
    outlook.row.way = way;
    outlook.row.use_from = view.crossing.day(view.working.first);
    outlook.row.use_to = view.crossing.day(view.working.last);
    outlook.by_median = view.by_median;
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

DayRun balloon_collecting(const BloomCourses& donor, double risk) {
    const auto first = first_day(donor, &BloomCourse::balloon, risk);
    const auto last = last_day(donor, &BloomCourse::balloon, risk);
    return first && last ? DayRun{*first, *last} : DayRun{};
}

void collect_at(WayOutlook& outlook, const Crossing& crossing, const DonorTree& donor) {
    const auto& standing = crossing.donors.front();
    const auto usual = first_day(*standing.whole, &BloomCourse::balloon, 0.5);
    const auto here = first_day(*donor.whole, &BloomCourse::balloon, 0.5);
    outlook.tree = donor.tree;
    outlook.early_tree = donor.tree != standing.tree && usual && here && *here < *usual;
}

}  // namespace pipward::cross::detail
