// SPDX-License-Identifier: MIT
#include "pipward/season/suggestion.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "pipward/lineage/kinship.h"
#include "pipward/lineage/trait_wish.h"

namespace pipward::season {
namespace {

/// So many pairs are held against the season; more would not be crossed in one spring.
constexpr std::size_t most_held_against_season = 60;
constexpr int seedlings_without_a_wish = 50;

/// Empty for one that is not left out.
Sentence reason_of(cross::LeftOut why, double most_kinship) {
    switch (why) {
        case cross::LeftOut::related:
            return say("the parents' kinship is above {:.3f}", most_kinship);
        case cross::LeftOut::no_seed:
            return say("the same S-alleles: no seed is to be expected, either way");
        case cross::LeftOut::triploid:
            return say("a parent is not diploid: few sound seeds and weak seedlings");
        case cross::LeftOut::other_genus:
            return say("of two genera: apple and pear, for instance, give hardly any seedlings");
        case cross::LeftOut::not_forecast:
            return say("the scores have no information on one parent");
        case cross::LeftOut::no:
            break;
    }
    return {};
}

/// Crosses of which one side does not show the wished-for trait are left out.
void expect_shown(std::vector<WeighedCross>& crosses, const SuggestionWish& wish,
                  const SuggestionParents& parents, const Orchard& orchard, Day as_of) {
    const auto wanted = lineage::parse_shown(wish.both_sides);
    if (!wanted) {
        return;
    }
    const OrchardIndex book(orchard);
    const auto means = lineage::own_means(orchard, wanted->trait, as_of);
    const auto shown = [&](std::size_t parent) {
        return lineage::shown_by(book, means, *wanted, parents.candidates[parent].name);
    };
    for (auto& cross : crosses) {
        cross.shown_by_one = shown(cross.cross.one);
        cross.shown_by_other = shown(cross.cross.other);
        if (cross.reason.empty() && !(cross.shown_by_one && cross.shown_by_other)) {
            cross.reason = say("not shown in both parents: {}", wish.both_sides);
        }
    }
}

/// Where no trait was wished for, what is easiest to do this spring between the least related comes first.
void sort_without_a_wish(std::vector<WeighedCross>& crosses) {
    const auto key = [](const WeighedCross& cross) {
        const auto* way = cross.meeting && cross.meeting->way ? &*cross.meeting->way : nullptr;
        constexpr double unknown_kinship = 2;  // after all that is known
        return std::tuple(!cross.reason.empty(), cross.cross.kinship.value_or(unknown_kinship),
                          way == nullptr ? cross::Verdict::impossible : way->verdict,
                          way == nullptr ? 0.0 : -way->chance.value, way == nullptr ? 0 : way->flowers);
    };
    std::ranges::stable_sort(crosses, {}, key);
}

}  // namespace

std::vector<WeighedCross> weighed_crosses(const SuggestionWish& wish, const SuggestionParents& parents,
                                          const cross::SuggestionRules& rules, const Orchard& orchard,
                                          Day as_of) {
    const lineage::Kinship kinship(orchard.accessions, orchard.blend_members);
    std::vector<WeighedCross> crosses;
    for (auto& cross : cross::suggest_crosses(
             parents.candidates, rules, [&](const auto&a, const auto&b) { return kinship.between(a, b); })) {
        crosses.push_back({cross});
        crosses.back().reason = reason_of(cross.left_out, wish.most_kinship);
    }
    expect_shown(crosses, wish, parents, orchard, as_of);
    return crosses;
}

void hold_against_season(std::vector<WeighedCross>& crosses, const SuggestionParents& parents,
                         const PlanWish& plan, Place& place, const Step& step) {
    std::vector<WeighedCross*> shortlist;
    std::vector<std::pair<std::string, std::string>> pairs;
    std::vector<int> seedlings;
    for (auto& cross : crosses) {
        if (cross.reason.empty() && shortlist.size() < most_held_against_season) {
            shortlist.push_back(&cross);
            pairs.emplace_back(parents.candidates[cross.cross.one].name,
                               parents.candidates[cross.cross.other].name);
            seedlings.push_back(cross.cross.plants.value_or(seedlings_without_a_wish));
        }
    }
    const auto forecast = make_forecast(place, plan.method, step).forecast;
    const auto assumptions = assumptions_of(plan, place.orchard, place.as_of);
    const auto meetings = meetings_of(pairs, seedlings, place, forecast, assumptions);
    for (std::size_t i = 0; i < shortlist.size(); ++i) {
        shortlist[i]->meeting = meetings[i];
        const auto& way = meetings[i].way;
        if (way && way->verdict >= cross::Verdict::unlikely) {
            shortlist[i]->reason =
                say("by bloom and pollen it is {} this spring", cross::to_text(way->verdict));
        }
    }
}

void choose_crosses(std::vector<WeighedCross>& crosses, const SuggestionWish& wish,
                    const SuggestionParents& parents) {
    if (!wish.by_traits) {
        sort_without_a_wish(crosses);
    }
    std::map<std::size_t, int> times;
    int rank = 0;
    for (auto& cross : crosses) {
        if (!cross.reason.empty()) {
            continue;
        }
        for (const auto parent : {cross.cross.one, cross.cross.other}) {
            if (cross.reason.empty() && times[parent] >= wish.per_parent) {
                cross.reason = say("{} is in {} better crosses already", parents.candidates[parent].name,
                                   wish.per_parent);
            }
        }
        if (cross.reason.empty() && rank >= wish.crosses) {
            cross.reason = say("{} crosses promise more", wish.crosses);
        }
        if (cross.reason.empty()) {
            cross.rank = ++rank;
            ++times[cross.cross.one];
            ++times[cross.cross.other];
        }
    }
}

}  // namespace pipward::season
