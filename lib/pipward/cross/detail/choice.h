// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/cross/detail/way_outlook.h"

namespace pipward::cross::detail {

/// Verdicts by the chance of a way: good from 0.80, fair from 0.50, doubtful from 0.20, unlikely from 0.02.
/// Common practice, no source: four springs in five is what a breeder plans on. A triploid parent is doubtful
/// at best, and so are more flowers than can be worked; a bloom guessed without own observations is fair at
/// best.
inline constexpr double good_chance = 0.80;
inline constexpr double fair_chance = 0.50;      ///< as above
inline constexpr double doubtful_chance = 0.20;  ///< as above
inline constexpr double unlikely_chance = 0.02;  ///< as above
/// A lot in hand is used first where its chance is at least this.
inline constexpr double lot_chance = 0.75;
/// What is in hand serves so many times its flowers before it is topped up: a brush is no balance, and what
/// was collected as asked must not be asked for again because it will be a little older. Common practice, no
/// source.
inline constexpr double spread_thinner = 1.1;
/// Ways within this of the best are as good, and the simplest of them is taken.
inline constexpr double as_good = 0.05;
/// Below this chance nothing is collected, cut, bagged or worked.
inline constexpr double worth_working = 0.10;

/// More flowers than this on one tree cannot be worked while they take pollen. Common practice, no source.
inline constexpr int most_flowers_a_tree = 1000;

/// By these limits; what else caps a verdict, choose_ways() knows.
Verdict verdict_of(Share chance, bool triploid);

/// What is asked of a goal's pollen.
struct PollenNeed {
    int flowers = 0;        ///< of the seed parent, still to be worked
    int pollinated = 0;     ///< worked already
    Share share{1};         ///< of that pollen, that is to come from this donor
    Share compatible{1};    ///< of its grains, that the style lets through
    Milligrams per_flower;  ///< raw pollen of one donor flower
    double serves = 0;      ///< flowers pollinated by one donor flower's pollen at full germination
    int trees = 1;          ///< living ones of the seed parent
    bool triploid = false;  ///< either parent is
};

/// Donor flowers planned from each lot so far, by code.
using LotLedger = std::map<std::string, double>;

/// Donor flowers and pollen for the way's flowers, at the germination on its last day of use.
void fill_amounts(WayOutlook& way, const PollenNeed& need);

/// Chooses the ways to follow, fills amounts, and leaves each way once, the chosen first, then by chance.
/// Lots are followed as far as they go, one after the other, and the best other way covers the rest: then a
/// way may stand more than once and several ways are `best`. `before` is what earlier goals take from the
/// lots, `taken` is added to.
void choose_ways(std::vector<WayOutlook>& ways, const PollenNeed& need, const LotLedger& before,
                 LotLedger& taken);

/// Follows `to` in the place of `from`; both are of `ways`, which are put in order again.
void follow_instead(std::vector<WayOutlook>& ways, WayOutlook& from, WayOutlook& to);

/// The followed ways first, in their turn, then a second way, then by chance.
void put_in_order(std::vector<WayOutlook>& ways);

/// Verdicts and reasons, when days, stores and amounts are decided.
void finish_ways(std::vector<WayOutlook>& ways, const PollenNeed& need);

}  // namespace pipward::cross::detail
