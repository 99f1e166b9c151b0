// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/cross/detail/pollen_life.h"
#include "pipward/record/orchard.h"

namespace pipward::cross::detail {

/// A cross at a tree: code and label.
using CrossAtTree = std::pair<std::string, std::string>;

/// Work at branches that was done in the spring of the plan, by its day.
struct DoneAtBranches {
    std::set<CrossAtTree> bagged;      ///< with an empty code: bags for whatever cross
    std::set<CrossAtTree> unbagged;    ///< likewise
    std::set<CrossAtTree> pollinated;  ///< in whatever spring: a goal is of one
    std::map<std::string, Day> cut;    ///< the latest branch cut to be forced, by donor
};

/// What there is to cross with on the day of the plan: trees that bloom, pollen in hand, flowers pollinated.
/// Points into the orchard and the forecast, which must outlive it. Everything is in an order of its own,
/// whatever the order of the records.
struct Stock {
    Day as_of;                                                   ///< day of the plan
    std::map<std::string, std::vector<bloom::TreeBloom>> trees;  ///< standing, by accession
    std::map<std::string, std::vector<const PollenLot*>> lots;   ///< in hand, by donor
    std::map<std::string, std::vector<Stay>> stays;              ///< of each lot in hand, by its code
    std::map<std::string, std::vector<PollenTest>> tests;        ///< by lot
    /// Flowers by lot, as many as its pollen would have served at full germination: pollen that germinates by
    /// half, or is half refused, is used up twice as fast.
    std::map<std::string, double> pollinated_from_lot;
    std::map<std::string, int> pollinated_for_cross;     ///< flowers of a first pass, by cross
    std::map<std::string, double> pollen_per_flower_mg;  ///< by donor, weighed by its own lots
    std::optional<double> usual_pollen_per_flower_mg;    ///< by all lots together
    DoneAtBranches done;                                 ///< bags, cut branches
};

DoneAtBranches done_at_branches(const Orchard& orchard, Day as_of);
/// Whether it was done for the cross, or for whatever cross.
bool is_in(const std::set<CrossAtTree>& done, const std::string& cross, const std::string& tree);

/// On the day of the forecast.
Stock stock_of(const Orchard& orchard, const bloom::BloomForecast& forecast);

/// Raw pollen of one donor flower: of the donor's own lots, else of all lots, else `otherwise`.
Milligrams pollen_per_flower(const Stock& stock, const std::string& donor, Milligrams otherwise);

}  // namespace pipward::cross::detail
