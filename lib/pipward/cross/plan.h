// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/lineage/s_alleles.h"
#include "pipward/record/orchard.h"
#include "pipward/value/sentence.h"
#include "pipward/value/word.h"

namespace pipward::cross {

/// The four ways of having a donor's pollen when the seed parent is ready for it.
enum class PollenWay { same_day, kept_this_spring, kept_from_last_year, forced_branch };
std::string_view to_text(PollenWay way);

/// In one word. "impossible" means that no seed is to be expected, not that none can come: styles leak.
enum class Verdict { good, fair, doubtful, unlikely, impossible };
std::string_view to_text(Verdict verdict);

/// One cross goal by one way and, where the pollen parent is a blend, one of its members.
struct CrossWay {
    std::string cross;
    Season season;  ///< of the goal: the forecast's, or the next
    std::string seed_parent;
    std::string pollen_parent;  ///< as in the goal: an accession or a blend
    std::string donor;          ///< the accession whose pollen it is
    PollenWay way = PollenWay::same_day;
    Share chance;                    ///< that live, compatible pollen is on hand while flowers can take it
    std::optional<Day> gather_from;  ///< gather balloon flowers (or cut the branch) from ...
    std::optional<Day> gather_to;    ///< ... to: the last safe day at the stated risk
    std::optional<Store> store;
    std::optional<Day> use_from;  ///< the seed parent can be worked from ...
    std::optional<Day> use_to;
    int flowers = 0;        ///< of the seed parent, to be worked for the wanted seedlings
    int donor_flowers = 0;  ///< of the donor, to be gathered
    Milligrams pollen;
    lineage::SMatch s_match = lineage::SMatch::unknown;
    std::optional<double> kinship;
    std::optional<std::string> lot;  ///< a lot in hand that this way uses
    Verdict verdict = Verdict::doubtful;
    Sentence why;  ///< whole sentences, for people
    /// The way that the plan follows for this goal (and member). Where a lot in hand is too small, the way
    /// that covers the rest is marked too. Where nothing works the likeliest is marked, and no work is
    /// planned on it.
    bool best = false;
};

enum class Urgency { today, this_week, later, too_late };
std::string_view to_text(Urgency urgency);

enum class PollenWork { gather, cut_branch, test_lot };
std::string_view to_text(PollenWork work);

/// Pollen work at one donor tree, gathered over the crosses that need it.
struct PollenTask {
    PollenWork work = PollenWork::gather;
    std::string donor;
    std::string tree;  ///< label; empty where the donor has no living tree
    std::optional<MapPoint> at;
    Day do_from;
    Day do_to;  ///< the last safe day at the stated risk
    int flowers = 0;
    Milligrams mass;
    Store store = Store::refrigerator;
    std::optional<Day> keep_until;
    Season season_of_use;
    std::vector<std::string> for_crosses;
    Urgency urgency = Urgency::later;
    Sentence why;
};

enum class FieldWork { bag, pollinate, unbag };
std::string_view to_text(FieldWork work);

/// Work at a seed parent's tree.
struct FieldTask {
    FieldWork work = FieldWork::pollinate;
    std::string cross;
    std::string seed_parent;
    std::string donor;  ///< accession or blend, as in the goal
    std::string tree;
    std::optional<MapPoint> at;
    Day do_from;
    Day do_to;
    int flowers = 0;
    Sentence pollen;  ///< "lot P-2025-03", "gathered this spring, refrigerator", "fresh"
    Urgency urgency = Urgency::later;
    Sentence why;
};

/// What the sums assume; the defaults are the handbook's, each explained where it is used (docs/method).
struct CrossingAssumptions {
    double risk = 0.10;        ///< deadlines leave this chance of being too late
    double confidence = 0.95;  ///< of reaching the wanted number of seedlings
    Share fruit_set{0.30};     ///< of worked flowers
    double seeds_per_fruit = 5;
    double seeds_per_fruit_variance = 5;
    Share seed_to_seedling{0.72};  ///< germination x survival
    double worked_per_donor_flower =
        5;  ///< flowers that the pollen of one donor flower serves, at full germination
    Milligrams pollen_per_flower{1.0};  ///< raw, anther dust included; the book's own lots replace it
    Share usable_germination{0.30};     ///< below this a store is not planned on
};

struct SeasonPlan {
    Season season;
    Day as_of;
    std::vector<CrossWay> ways;      ///< by season, priority and code of the goal, the followed way first
    std::vector<PollenTask> pollen;  ///< by last safe day
    std::vector<FieldTask> field;    ///< by first day
    Findings findings;
};

/// Meets the windows of every goal of the forecast's season, and of the next season where pollen must be
/// gathered now for it. Throws nothing for a cross that cannot work: its ways say why.
SeasonPlan plan_season(const bloom::BloomForecast& forecast, const Orchard& orchard,
                       const CrossingAssumptions& assumptions);

/// The urgencies as they are typed.
std::span<const Word<Urgency>> words(Urgency);

}  // namespace pipward::cross
