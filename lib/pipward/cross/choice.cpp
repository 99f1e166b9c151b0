// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/choice.h"

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
        const bool hopeless = best > 0 && way.row.chance.value <= 0;
        const bool good = stands(way) && !hopeless && way.row.chance.value >= best - as_good;
        if (good && (chosen == nullptr || trouble_of(way) < trouble_of(*chosen))) {
            chosen = &way;
        }
    }
    return chosen;
}

// Lots stand in the order in which they are used up. What was collected as asked a day or two ago is tried
// before the same is asked for again.
WayOutlook* next_choice(std::vector<WayOutlook>& ways) {
    const auto in_hand = std::ranges::find_if(ways, [](const WayOutlook& way) {
        return way.lot && !way.row.best &&
               way.row.chance.value >= (way.lot->fresh ? worth_working : lot_chance);
    });
    return in_hand != ways.end() ? &*in_hand : simplest_of_the_best(ways);
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
    const auto found = before.find(way.lot->lot->code);
    const double taken = found == before.end() ? 0 : found->second;
    const double each = served_by_one(way, need) / share;
    // In all a tenth thinner at most, whoever comes first.
    return (*way.lot->flowers_left * spread_thinner - taken) * each >= need.flowers
               ? need.flowers
               : static_cast<int>(std::floor(std::max(0.0, *way.lot->flowers_left - taken) * each + 1e-9));
}

void follow(WayOutlook& way, const PollenNeed& need, int flowers, int turn) {
    way.row.best = true;
    way.turn = turn;
    way.row.flowers = flowers;
    fill_amounts(way, need);
}

struct Lots {
    const LotLedger& before;
    LotLedger& taken;
};

// Lots as far as they go, then what makes up for them; the likeliest way is followed even where it is no
// good.
void follow_until_covered(std::vector<WayOutlook>& ways, const PollenNeed& need, Lots lots) {
    PollenNeed rest = need;
    for (int turn = 1; turn == 1 || rest.flowers > 0; ++turn) {
        auto* way = next_choice(ways);
        if (way == nullptr || (turn > 1 && way->row.chance.value < worth_working)) {
            return;
        }
        const int served = way->lot ? served_by_lot(*way, rest, lots.before) : rest.flowers;
        follow(*way, need, served, turn);
        if (way->lot) {
            lots.taken[way->lot->lot->code] += donor_flowers(*way, need, served);
        }
        rest.flowers -= served;
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
    const auto key = [](const WayOutlook& way) {
        return std::tuple(!way.row.best, way.turn, !way.row.insurance, -way.row.chance.value, way.row.way,
                          trouble_of(way));
    };
    return key(a) < key(b);
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

Sentence rest_text(const WayOutlook& lot, const WayOutlook* next, int all) {
    const int enough = lot.row.flowers;
    if (next == nullptr) {
        return say("It is enough for {} of {} flowers; the rest cannot be obtained in another way.", enough,
                   all);
    }
    return next->lot ? say("It is enough for {} of {} flowers; the rest from lot {}.", enough, all,
                           next->lot->lot->code)
                     : say("It is enough for {} of {} flowers; the rest by the way \"{}\".", enough, all,
                           way_text(next->row.way));
}

// The ways that are followed stand first, in their order.
void say_what_lots_give(std::vector<WayOutlook>& ways, const PollenNeed& need) {
    int all = need.flowers;
    for (std::size_t i = 0; i < ways.size() && ways[i].row.best; ++i) {
        if (!ways[i].lot) {
            continue;
        }
        const bool more = i + 1 < ways.size() && ways[i + 1].row.best;
        if (ways[i].row.flowers < all) {
            ways[i].sentences.push_back(rest_text(ways[i], more ? &ways[i + 1] : nullptr, all));
        }
        if (!ways[i].lot->flowers_left) {
            ways[i].sentences.push_back(say("Its amount is not in the book: weigh it first."));
        }
        all -= ways[i].row.flowers;
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

void fill_amounts(WayOutlook& way, const PollenNeed& need) {
    const double from_donor = std::min(donor_flowers(way, need, way.row.flowers), 1e9);
    way.row.donor_flowers = way.lot ? 0 : static_cast<int>(from_donor);
    way.row.pollen = {from_donor * need.per_flower.value};
}

void choose_ways(std::vector<WayOutlook>& ways, const PollenNeed& need, const LotLedger& before,
                 LotLedger& taken) {
    drop_emptied(ways, need, before);
    for (auto& way : ways) {
        way.row.flowers = need.flowers;
        fill_amounts(way, need);
    }
    follow_until_covered(ways, need, {before, taken});
    leave_each_way_once(ways);
}

void follow_instead(std::vector<WayOutlook>& ways, WayOutlook& from, WayOutlook& to) {
    std::swap(from.row.best, to.row.best);
    std::swap(from.turn, to.turn);
    to.row.flowers = from.row.flowers;
    put_in_order(ways);
}

void put_in_order(std::vector<WayOutlook>& ways) {
    std::ranges::stable_sort(ways, comes_before);
}

void finish_ways(std::vector<WayOutlook>& ways, const PollenNeed& need) {
    say_what_lots_give(ways, need);
    say_what_is_not_needed(ways);
    for (auto& way : ways) {
        finish(way, need);
    }
}

}  // namespace pipward::cross::detail
