// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/cross/detail/way_view.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

std::optional<WayOutlook> lot_way(const WayView& view, PollenWay way, LotQuestion question) {
    question.donor = view.crossing.donor;
    question.blend = view.crossing.blend ? view.crossing.goal->pollen_parent : std::string{};
    question.use = view.crossing.day(view.working.first);
    const auto lot = best_lot(view.bench.stock, question, view.assume());
    if (!lot) {
        return std::nullopt;
    }
    auto outlook = begin_way(view, way);
    outlook.lot = lot;
    outlook.row.lot = lot->lot->code;
    outlook.row.store = lot->store;
    outlook.row.chance = {view.workable * lot->usable};
    outlook.germination = lot->at_use.mean;
    outlook.sentences.push_back(lot_text(*lot, question.use, view.assume().usable_germination));
    return outlook;
}

Day season_begins(const WayView& view) {
    return view.crossing.day(season_first);
}

void freeze(WayOutlook& outlook, const WayView& view, const DonorTree& donor, DayRun days) {
    const auto& forecast = *view.bench.forecast;
    const Day anchor = anchor_of(forecast.season, forecast.hemisphere);
    collect_at(outlook, view.crossing, donor);
    outlook.collected_now = true;
    outlook.row.store = Store::freezer;
    outlook.row.collect_from = anchor + days.first;
    outlook.row.collect_to = anchor + days.last;
    const auto germination =
        kept_germination(Store::freezer, *outlook.row.use_from - *outlook.row.collect_from);
    outlook.germination = germination.mean;
    outlook.row.chance.value *= chance_usable(germination, view.assume().usable_germination);
    outlook.sentences.push_back(say(
        "Collect this spring by {}, dry for a day or two, freeze: about {} should germinate in {}.",
        to_iso(*outlook.row.collect_to), percent_text(germination.mean), view.crossing.goal->season.year));
}

}  // namespace

std::optional<WayOutlook> lot_of_this_spring_way(const WayView& view) {
    LotQuestion question;
    question.collected_from = season_begins(view);
    return lot_way(view, PollenWay::kept_this_spring, question);
}

std::optional<WayOutlook> lot_of_last_year_way(const WayView& view) {
    LotQuestion question;
    question.collected_before = season_begins(view);
    return lot_way(view, PollenWay::kept_from_last_year, question);
}

WayOutlook kept_for_next_season_way(const WayView& view) {
    auto outlook = begin_way(view, PollenWay::kept_from_last_year);
    const auto harvested = pick_donor(view.crossing, [&](const DonorTree& donor) {
        return share_with(*donor.left, &BloomCourse::balloon);
    });
    outlook.row.chance = {harvested.chance * view.workable};
    const auto days = balloon_collecting(*harvested.donor->left, view.assume().risk);
    if (days.empty() || harvested.chance < no_chance) {
        outlook.sentences.push_back(
            say("The balloon stage of {} is over this spring: no pollen can be stored for {}.",
                view.crossing.donor, view.crossing.goal->season.year));
        return outlook;
    }
    freeze(outlook, view, *harvested.donor, days);
    return outlook;
}

}  // namespace pipward::cross::detail
