// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/choice.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

bool freezes_for_next_season(const WayOutlook& way) {
    return !way.lot && way.row.way == PollenWay::kept_from_last_year;
}

// In hand, then in bloom, then in the freezer for a year, then in a warm room.
int trouble_of(const WayOutlook& way) {
    if (way.lot) {
        return 0;
    }
    switch (way.row.way) {
        case PollenWay::same_day:
            return 1;
        case PollenWay::kept_this_spring:
            return 2;
        case PollenWay::kept_from_last_year:
            return 3;
        case PollenWay::forced_branch:
            break;
    }
    return 4;
}

bool spring_will_do(const std::vector<WayOutlook>& ways) {
    return std::ranges::any_of(ways, [](const WayOutlook& way) {
        return trouble_of(way) <= 2 && way.row.chance.value >= good_chance;
    });
}

// Pollen need not be kept for a year where next spring's own is likely to do.
bool worth_considering(const WayOutlook& way, bool spring_does) {
    return !(spring_does && freezes_for_next_season(way));
}

// Of the ways that are not followed yet.
WayOutlook* simplest_of_the_best(std::vector<WayOutlook>& ways) {
    const bool spring_does = spring_will_do(ways);
    const auto stands = [&](const WayOutlook& way) {
        return !way.row.best && worth_considering(way, spring_does);
    };
    double best = 0;
    for (const auto& way : ways) {
        best = std::max(best, stands(way) ? way.row.chance.value : 0);
    }
    WayOutlook* chosen = nullptr;
    for (auto& way : ways) {
        const bool good = stands(way) && way.row.chance.value >= best - as_good;
        if (good && (chosen == nullptr || trouble_of(way) < trouble_of(*chosen))) {
            chosen = &way;
        }
    }
    return chosen;
}

WayOutlook* first_choice(std::vector<WayOutlook>& ways) {
    WayOutlook* in_hand = nullptr;
    for (auto& way : ways) {
        const bool good = way.lot && way.row.chance.value >= lot_chance;
        if (good && (in_hand == nullptr || way.row.chance.value > in_hand->row.chance.value)) {
            in_hand = &way;
        }
    }
    return in_hand != nullptr ? in_hand : simplest_of_the_best(ways);
}

// Flowers of the seed parent that the pollen of one donor flower serves in truth.
double served_by_one(const WayOutlook& way, const PollenNeed& need) {
    return need.serves * way.germination * need.compatible.value;
}

// Rounded up; a billionth is forgiven, for 30 / 0.3 is a little more than 100 for a computer.
double donor_flowers(const WayOutlook& way, const PollenNeed& need, int flowers) {
    const double each = served_by_one(way, need);
    return each > 0 ? std::ceil(flowers * need.share.value / each - 1e-9) : 0;
}

void fill_amounts(WayOutlook& way, const PollenNeed& need, int flowers) {
    const double from_donor = std::min(donor_flowers(way, need, flowers), 1e9);
    way.row.flowers = flowers;
    way.row.donor_flowers = way.lot ? 0 : static_cast<int>(from_donor);
    way.row.pollen = {from_donor * need.per_flower.value};
}

// A lot of the whole blend stands for every member at once, one of a member for that member's share.
double share_in_lot(const WayOutlook& way, const PollenNeed& need) {
    return way.lot->lot->donor == way.row.donor ? need.share.value : 1;
}

// Flowers of the seed parent that what is left of the lot will serve, at most those needed.
int served_by_lot(const WayOutlook& way, const PollenNeed& need, const LotLedger& before) {
    const double share = share_in_lot(way, need);
    if (!way.lot->flowers_left || share <= 0) {
        return need.flowers;
    }
    const auto taken = before.find(way.lot->lot->code);
    const double left = *way.lot->flowers_left - (taken == before.end() ? 0 : taken->second);
    const double serves = std::max(0.0, left) * served_by_one(way, need) / share;
    return static_cast<int>(std::min<double>(need.flowers, std::floor(serves + 1e-9)));
}

void take_from_lot(WayOutlook& way, const PollenNeed& need, LotLedger& taken) {
    if (!way.lot->flowers_left) {
        way.sentences.push_back(say("Its amount is not in the book: weigh it first."));
    }
    taken[way.lot->lot->code] += donor_flowers(way, need, way.row.flowers);
}

struct Lots {
    const LotLedger& before;
    LotLedger& taken;
};

void follow(std::vector<WayOutlook>& ways, WayOutlook& way, const PollenNeed& need, Lots lots);

// What a lot is too small for, by the next best way.
void follow_rest(std::vector<WayOutlook>& ways, WayOutlook& lot, PollenNeed rest, Lots lots) {
    auto* other = simplest_of_the_best(ways);
    const bool helps = other != nullptr && other->row.chance.value >= worth_working;
    const int all = lot.row.flowers + rest.flowers;
    lot.sentences.push_back(
        helps ? say("It is enough for {} of {} flowers; the rest by the way \"{}\".", lot.row.flowers, all,
                    way_text(other->row.way))
              : say("It is enough for {} of {} flowers; the rest cannot be obtained in another way.",
                    lot.row.flowers, all));
    if (helps) {
        follow(ways, *other, rest, lots);
    }
}

void follow(std::vector<WayOutlook>& ways, WayOutlook& way, const PollenNeed& need, Lots lots) {
    const int served = way.lot ? served_by_lot(way, need, lots.before) : need.flowers;
    way.row.best = true;
    fill_amounts(way, need, served);
    if (way.lot) {
        take_from_lot(way, need, lots.taken);
    }
    if (served < need.flowers) {
        PollenNeed rest = need;
        rest.flowers -= served;
        follow_rest(ways, way, rest, lots);
    }
}

// A lot that others have emptied is no way at all.
void drop_emptied(std::vector<WayOutlook>& ways, const PollenNeed& need, const LotLedger& before) {
    for (auto& way : ways) {
        if (way.lot && need.flowers > 0 && served_by_lot(way, need, before) == 0) {
            way.row.chance = {0};
            way.sentences.push_back(say("Nothing is left in it for this cross."));
        }
    }
}

bool comes_before(const WayOutlook& a, const WayOutlook& b) {
    return std::tuple(!a.row.best, -a.row.chance.value, a.row.way, trouble_of(a)) <
           std::tuple(!b.row.best, -b.row.chance.value, b.row.way, trouble_of(b));
}

// Of a way that stands twice the better one is kept, and both where the plan follows both.
void leave_each_way_once(std::vector<WayOutlook>& ways) {
    std::ranges::stable_sort(ways, comes_before);
    std::vector<WayOutlook> kept;
    for (auto& way : ways) {
        const bool again = std::ranges::any_of(kept, [&](const auto& k) { return k.row.way == way.row.way; });
        if (!again || way.row.best) {
            kept.push_back(std::move(way));
        }
    }
    ways = std::move(kept);
}

void say_what_is_not_needed(std::vector<WayOutlook>& ways) {
    const bool in_time = spring_will_do(ways);
    for (auto& way : ways) {
        if (way.row.way == PollenWay::forced_branch && !way.row.best && way.row.chance.value > 0 && in_time) {
            way.sentences.push_back(say("Not needed: pollen comes in time without forcing."));
        }
    }
}

bool too_many(const PollenNeed& need) {
    return need.flowers / most_flowers_a_tree >= std::max(1, need.trees);
}

Verdict capped(Verdict verdict, const WayOutlook& way, const PollenNeed& need) {
    if (too_many(need)) {
        return std::max(verdict, Verdict::doubtful);
    }
    return way.borrowed ? std::max(verdict, Verdict::fair) : verdict;
}

void finish(WayOutlook& way, const PollenNeed& need) {
    if (need.pollinated > 0) {
        way.sentences.push_back(
            need.flowers > 0
                ? say("{} flowers are pollinated already, {} are left to do.", need.pollinated, need.flowers)
                : say("All flowers are pollinated already ({}).", need.pollinated));
    }
    if (too_many(need)) {
        way.sentences.push_back(need.trees == 1
                                    ? say("{} flowers on one tree are more than can be pollinated: add "
                                          "trees, or divide the cross between several springs.",
                                          need.flowers)
                                    : say("{} flowers on {} trees are more than can be pollinated: add "
                                          "trees, or divide the cross between several springs.",
                                          need.flowers, need.trees));
    }
    way.row.verdict = capped(verdict_of(way.row.chance, need.triploid), way, need);
    if (way.row.verdict == Verdict::impossible) {
        way.row.donor_flowers = 0;
        way.row.pollen = {0};
    }
    way.row.why = joined(way.sentences, verbatim(" "));
}

}  // namespace

Verdict verdict_of(Share chance, bool triploid) {
    if (chance.value >= doubtful_chance && triploid) {
        return Verdict::doubtful;
    }
    if (chance.value >= good_chance) {
        return Verdict::good;
    }
    if (chance.value >= fair_chance) {
        return Verdict::fair;
    }
    if (chance.value >= doubtful_chance) {
        return Verdict::doubtful;
    }
    return chance.value >= unlikely_chance ? Verdict::unlikely : Verdict::impossible;
}

void choose_ways(std::vector<WayOutlook>& ways, const PollenNeed& need, const LotLedger& before,
                 LotLedger& taken) {
    drop_emptied(ways, need, before);
    for (auto& way : ways) {
        fill_amounts(way, need, need.flowers);
    }
    if (auto* chosen = first_choice(ways); chosen != nullptr) {
        follow(ways, *chosen, need, {before, taken});
    }
    leave_each_way_once(ways);
    say_what_is_not_needed(ways);
    for (auto& way : ways) {
        finish(way, need);
    }
}

}  // namespace pipward::cross::detail
