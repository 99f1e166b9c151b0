// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/stock.h"

#include <algorithm>
#include <span>
#include <tuple>

#include "pipward/cross/detail/crossing.h"
#include "pipward/record/presence.h"

namespace pipward::cross::detail {
namespace {

// Parents before other trees, then by label.
bool stands_before(const bloom::TreeBloom& a, const bloom::TreeBloom& b) {
    return std::tuple(a.tree->purpose != TreePurpose::parent, a.tree->label, a.tree->fid) <
           std::tuple(b.tree->purpose != TreePurpose::parent, b.tree->label, b.tree->fid);
}

void take_trees(Stock& stock, const bloom::BloomForecast& forecast) {
    for (const auto& bloom : forecast.trees) {
        stock.trees[forecast.windows[bloom.window].accession].push_back(bloom);
    }
    for (auto& [accession, trees] : stock.trees) {
        std::ranges::sort(trees, stands_before);
    }
}

std::vector<Stay> stays_of(const PollenLot& lot, const std::vector<PollenMove>& moves, Day as_of) {
    std::vector<Stay> stays{{lot.store, lot.collected_on}};
    for (const auto& move : moves) {
        if (move.lot == lot.code && move.moved_on >= lot.collected_on && move.moved_on <= as_of) {
            stays.push_back({move.store, move.moved_on});
        }
    }
    std::ranges::stable_sort(stays, {}, &Stay::from);
    return stays;
}

void take_lots(Stock& stock, const Orchard& orchard) {
    for (const auto& lot : orchard.pollen_lots) {
        if (in_hand(lot, stock.as_of)) {
            stock.lots[lot.donor].push_back(&lot);
            stock.stays[lot.code] = stays_of(lot, orchard.pollen_moves, stock.as_of);
        }
    }
    for (auto& [donor, lots] : stock.lots) {
        std::ranges::sort(lots, {}, [](const PollenLot* l) { return std::tie(l->collected_on, l->code); });
    }
    for (const auto& test : orchard.pollen_tests) {
        stock.tests[test.lot].push_back(test);
    }
}

// Of a blend, a lot of one member gives that member's share only.
double share_of_lot(const OrchardIndex& book, const CrossGoal& goal, const std::string& donor) {
    const auto donors = donors_of(book, goal);
    const auto found = std::ranges::find(donors, donor, &DonorShare::donor);
    return found == donors.end() || found->share.value <= 0 ? 1 : found->share.value;
}

double drawn_from_lot(const Stock& stock, const OrchardIndex& book, const Pollination& work) {
    constexpr double least = 0.05;  // pollen as good as dead is not drawn without end
    const auto* lot = book.pollen_lot(*work.lot);
    const auto* goal = book.goal(work.cross);
    const auto stays = stock.stays.find(*work.lot);
    if (lot == nullptr || stays == stock.stays.end()) {
        return 0;
    }
    const auto tests = stock.tests.find(lot->code);
    double serves = germination_at(stays->second,
                                   tests == stock.tests.end() ? std::span<const PollenTest>{} : tests->second,
                                   work.pollinated_on, work.pollinated_on)
                        .mean;
    if (goal == nullptr) {
        return work.flowers / std::max(least, serves);
    }
    const auto compatible = compatibility_of(book, goal->seed_parent, lot->donor).pollen_share.value;
    serves *= compatible > 0 ? compatible : 1;
    return work.flowers * share_of_lot(book, *goal, lot->donor) / std::max(least, serves);
}

void take_pollinations(Stock& stock, const Orchard& orchard) {
    const OrchardIndex book(orchard);
    const auto passes = passes_of(orchard.pollinations);
    for (std::size_t i = 0; i < passes.size(); ++i) {
        const auto& work = orchard.pollinations[i];
        if (work.pollinated_on > stock.as_of) {
            continue;
        }
        if (passes[i] == 1) {
            stock.pollinated_for_cross[work.cross] += work.flowers;
        }
        if (work.lot) {
            stock.pollinated_from_lot[*work.lot] += drawn_from_lot(stock, book, work);
        }
    }
}

/// Sums of mass over sums of flowers: a large lot tells more than a small one.
struct Weighed {
    double milligrams = 0;
    double flowers = 0;

    void add(double more_milligrams, double more_flowers) {
        milligrams += more_milligrams;
        flowers += more_flowers;
    }
};

void weigh_pollen(Stock& stock, const Orchard& orchard) {
    std::map<std::string, Weighed> of_donor;
    Weighed all;
    for (const auto& lot : orchard.pollen_lots) {
        if (lot.collected_on <= stock.as_of && lot.mass && lot.flowers && lot.mass->value > 0 &&
            *lot.flowers > 0) {
            of_donor[lot.donor].add(lot.mass->value, *lot.flowers);
            all.add(lot.mass->value, *lot.flowers);
        }
    }
    for (const auto& [donor, weighed] : of_donor) {
        stock.pollen_per_flower_mg[donor] = weighed.milligrams / weighed.flowers;
    }
    if (all.flowers > 0) {
        stock.usual_pollen_per_flower_mg = all.milligrams / all.flowers;
    }
}

}  // namespace

Stock stock_of(const Orchard& orchard, const bloom::BloomForecast& forecast) {
    Stock stock;
    stock.as_of = forecast.as_of;
    take_trees(stock, forecast);
    take_lots(stock, orchard);
    take_pollinations(stock, orchard);
    weigh_pollen(stock, orchard);
    stock.done = done_at_branches(orchard, stock.as_of);
    return stock;
}

Milligrams pollen_per_flower(const Stock& stock, const std::string& donor, Milligrams otherwise) {
    const auto own = stock.pollen_per_flower_mg.find(donor);
    if (own != stock.pollen_per_flower_mg.end()) {
        return {own->second};
    }
    return {stock.usual_pollen_per_flower_mg.value_or(otherwise.value)};
}

}  // namespace pipward::cross::detail
