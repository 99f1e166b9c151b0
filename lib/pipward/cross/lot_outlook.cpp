// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/lot_outlook.h"

#include <algorithm>
#include <vector>

#include "pipward/cross/detail/bloom_course.h"

namespace pipward::cross::detail {
namespace {

std::optional<double> flowers_in(const Stock& stock, const PollenLot& lot,
                                 const CrossingAssumptions& assumptions) {
    if (lot.flowers) {
        return *lot.flowers;
    }
    const double each = pollen_per_flower(stock, lot.donor, assumptions.pollen_per_flower).value;
    return lot.mass && each > 0 ? std::optional{lot.mass->value / each} : std::nullopt;
}

std::optional<double> flowers_left(const Stock& stock, const PollenLot& lot,
                                   const CrossingAssumptions& assumptions) {
    const auto collected = flowers_in(stock, lot, assumptions);
    const auto used = stock.pollinated_from_lot.find(lot.code);
    if (!collected || used == stock.pollinated_from_lot.end()) {
        return collected;
    }
    return std::max(0.0, *collected - used->second / assumptions.flowers_per_donor_flower);
}

// Collected for the same day or the next ones, it is not kept for the last flowers.
Day last_use(const Stock& stock, const PollenLot& lot, const LotQuestion& question) {
    const bool in_the_room = stock.stays.at(lot.code).back().store == Store::room;
    return in_the_room ? std::clamp(lot.collected_on + fresh_to_days, question.first_use, question.last_use)
                       : question.last_use;
}

}  // namespace

LotOutlook lot_outlook(const Stock& stock, const PollenLot& lot, Day use,
                       const CrossingAssumptions& assumptions) {
    const auto found = stock.tests.find(lot.code);
    const auto tests = found == stock.tests.end() ? std::vector<PollenTest>{} : found->second;
    const auto& stays = stock.stays.at(lot.code);
    const bool fresh = stays.back().store == Store::room && use <= lot.collected_on + fresh_to_days;
    // As the plan counts on it before it is collected.
    const bool as_it_came = fresh && tests.empty() && stays.size() == 1;
    LotOutlook outlook{&lot,
                       as_it_came ? untested_pollen : germination_at(stays, tests, stock.as_of, use),
                       0,
                       last_tested(lot.collected_on, tests, stock.as_of),
                       flowers_left(stock, lot, assumptions),
                       stays.back().store,
                       use,
                       fresh};
    outlook.usable = chance_usable(outlook.at_use, assumptions.usable_germination);
    return outlook;
}

std::vector<LotOutlook> lots_in_hand(const Stock& stock, const LotQuestion& question,
                                     const CrossingAssumptions& assumptions) {
    std::vector<LotOutlook> in_hand;
    for (const auto& donor : {question.blend, question.donor}) {
        const auto lots = stock.lots.find(donor);
        if (lots == stock.lots.end()) {
            continue;
        }
        for (const auto* lot : lots->second) {
            auto outlook = lot_outlook(stock, *lot, last_use(stock, *lot, question), assumptions);
            if (!outlook.flowers_left || *outlook.flowers_left > 0) {
                in_hand.push_back(std::move(outlook));
            }
        }
    }
    return in_hand;
}

}  // namespace pipward::cross::detail
