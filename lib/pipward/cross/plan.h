// SPDX-License-Identifier: MIT
#pragma once

#include <map>
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
enum class PollenWay {
    same_day,          ///< collected at balloon, dried a day or two, used fresh
    kept_this_spring,  ///< collected this spring, or in hand from it, and kept in a store
    /// A lot in hand of an earlier season; for a goal of the next season also pollen that is frozen this
    /// spring.
    kept_from_last_year,
    forced_branch,  ///< a branch cut and brought to bloom indoors
};
/// The word for tables: "kept from last year".
std::string_view to_text(PollenWay way);

/// In one word. "impossible" means that no seed is to be expected, not that none can come: styles leak.
enum class Verdict {
    good,        ///< chance of 0.80 and more
    fair,        ///< from 0.50; no better where bloom is guessed without own observations
    doubtful,    ///< from 0.20; no better with a triploid parent or more flowers than can be worked
    unlikely,    ///< from 0.02
    impossible,  ///< below
};
/// The verdict's word for tables.
std::string_view to_text(Verdict verdict);

/// One cross goal by one way and, where the pollen parent is a blend, one of its members.
struct CrossWay {
    std::string cross;                    ///< code of the goal
    Season season;                        ///< of the goal: the forecast's, or the next
    std::string seed_parent;              ///< bears the seed
    std::string pollen_parent;            ///< as in the goal: an accession or a blend
    std::string donor;                    ///< the accession whose pollen it is
    PollenWay way = PollenWay::same_day;  ///< one of the four
    Share chance;                     ///< that live, compatible pollen is on hand while flowers can take it
    std::optional<Day> collect_from;  ///< collect balloon flowers (or cut the branch) from ...
    std::optional<Day> collect_to;    ///< ... to: the last safe day at the stated risk
    std::optional<Store> store;       ///< of the pollen until use; empty where the way is closed
    std::optional<Day> use_from;      ///< the seed parent can be worked from ...
    /// ... to: the last safe day at the stated risk, or a median. Both empty where it is closed.
    std::optional<Day> use_to;
    int flowers = 0;        ///< of the seed parent, to be worked for the wanted seedlings
    int donor_flowers = 0;  ///< of the donor, to be collected
    Milligrams pollen;      ///< raw, of the donor flowers or of what is taken from the lot
    /// What the donor's S-alleles do at the seed parent's style.
    lineage::SMatch s_match = lineage::SMatch::unknown;
    /// Of seed parent and donor, 0..1; empty where the pedigree does not tell it.
    std::optional<double> kinship;
    std::optional<std::string> lot;       ///< a lot in hand that this way uses
    bool collect_by_median = false;       ///< `collect_to` is a median: the risk would leave no time
    bool use_by_median = false;           ///< `use_to` is, likewise
    std::optional<Day> balloon_from;      ///< the donor is likely to stand at balloon from (median) ...
    std::optional<Day> balloon_to;        ///< ... to (median); empty where nothing is to be collected
    Verdict verdict = Verdict::doubtful;  ///< by the chance, the parents and the number of flowers
    Sentence why;                         ///< whole sentences, for people
    /// The way that the plan follows for this goal (and member). Where a lot in hand is too small, those that
    /// cover the rest are marked too: their `flowers` are those of the goal together. Where nothing works the
    /// likeliest is marked, and no work is planned on it.
    bool best = false;
    /// A second way besides the followed ones, in case they fail: it raises the chance by so much that it
    /// pays its work, and cannot wait any longer.
    bool insurance = false;
};

/// How soon work must be done, by its last day.
enum class Urgency {
    today,      ///< the last day is the day of the plan
    this_week,  ///< within seven days
    later,      ///< after that
    too_late,   ///< the last day is past
};
/// The word for tables: "this week".
std::string_view to_text(Urgency urgency);

/// What is done for pollen.
enum class PollenWork {
    collect,     ///< closed balloon flowers
    cut_branch,  ///< to be forced indoors
    test_lot,    ///< germination of a lot in hand
};
/// The word for tables: "cut branch".
std::string_view to_text(PollenWork work);

/// Pollen work at one donor tree, collected over the crosses that need it.
struct PollenTask {
    PollenWork work = PollenWork::collect;  ///< collect, cut or test
    std::string donor;                  ///< an accession; of a lot under test its donor, which may be a blend
    std::string tree;                   ///< label; empty where the donor has no living tree
    std::optional<MapPoint> at;         ///< of the tree; empty where it is not on the map or there is none
    Day do_from;                        ///< first day on which it is of use
    Day do_to;                          ///< the last safe day at the stated risk
    int flowers = 0;                    ///< to be collected; 0 for a test
    Milligrams mass;                    ///< raw pollen expected; 0 for a test
    Store store = Store::refrigerator;  ///< until use: the coldest that any of the crosses asks for
    std::optional<Day> keep_until;      ///< the last day of use over the crosses
    std::optional<std::string> lot;     ///< the lot under test
    bool insurance = false;             ///< for a second way only, in case the first fails
    bool by_median = false;             ///< `do_to` is a median: the risk would leave no time
    std::optional<Day> balloon_from;    ///< the tree is likely to stand at balloon from (median) ...
    std::optional<Day> balloon_to;      ///< ... to (median); empty for a test
    Season season_of_use;               ///< the plan's, or the next
    std::vector<std::string> for_crosses;  ///< codes, sorted
    Urgency urgency = Urgency::later;      ///< by do_to
    Sentence why;                          ///< what to do, until when and why; whole sentences, for people
};

/// What is done at the flowers of a seed parent.
enum class FieldWork {
    bag,        ///< before the first flower opens, against foreign pollen
    pollinate,  ///< the flowers in the bag
    unbag,      ///< when the petals are down
};
/// The work's word for tables.
std::string_view to_text(FieldWork work);

/// Where the pollen of some flowers comes from.
struct PollenShare {
    std::string donor;                    ///< an accession
    std::optional<std::string> lot;       ///< in hand; else it is collected or cut
    PollenWay way = PollenWay::same_day;  ///< as the plan follows it
    Store store = Store::room;            ///< until use; the room for fresh pollen
    int flowers = 0;                      ///< of the seed parent
    bool insurance = false;               ///< only where the others fail
};

/// Work at a seed parent's tree.
struct FieldTask {
    FieldWork work = FieldWork::pollinate;  ///< each tree and cross has all three
    std::string cross;                      ///< code of the goal
    std::string seed_parent;                ///< accession of the tree
    std::string donor;                      ///< accession or blend, as in the goal
    std::string tree;                       ///< its label
    std::optional<MapPoint> at;             ///< empty where the tree is not on the map
    Day do_from;                            ///< never before the day of the plan, unless it is too late
    Day do_to;                              ///< last day of use
    int flowers = 0;                        ///< to be worked at this tree
    std::vector<PollenShare> shares;        ///< of its flowers, by donor and in the order of use
    /// The shares in words: "lot P-2025-03", "collected this spring, refrigerator", "fresh".
    Sentence pollen;
    bool by_median = false;            ///< the last day of pollination is a median
    Urgency urgency = Urgency::later;  ///< by do_to
    Sentence why;                      ///< what to do, when and why; whole sentences, for people
};

/// What the sums assume; the defaults are the handbook's, each explained where it is used (docs/method).
struct CrossingAssumptions {
    double risk = 0.10;                   ///< deadlines leave this chance of being too late
    double confidence = 0.95;             ///< of reaching the wanted number of seedlings
    Share fruit_set{0.30};                ///< of pollinated flowers
    double seeds_per_fruit = 5;           ///< mean number of sound seeds, above 0
    double seeds_per_fruit_variance = 5;  ///< of that number between fruits
    Share seed_to_seedling{0.72};         ///< germination x survival
    /// Flowers that the pollen of one donor flower serves, at full germination.
    double flowers_per_donor_flower = 5;
    Milligrams pollen_per_flower{1.0};  ///< raw, anther dust included; the book's own lots replace it
    Share usable_germination{0.30};     ///< below this a store is not planned on
    /// Standard deviation of set from cross to cross, 0..0.5: springs, trees and hands differ more than
    /// chance (common practice, no source).
    double fruit_set_sd = 0.12;
    /// Set by the seed parent's genus, where the orchard's own counts tell it apart; else `fruit_set`.
    std::map<std::string, Share> fruit_set_of_genus;
};

/// The set to count on for seed parents of a genus ("Malus"; empty where it is not known).
Share fruit_set_of(const CrossingAssumptions& assumptions, const std::string& genus);

/// What is to be done for a season's crosses, and for the next season's where it must be done now.
struct SeasonPlan {
    Season season;                   ///< of the forecast
    Day as_of;                       ///< day of the plan
    std::vector<CrossWay> ways;      ///< by season, priority and code of the goal, the followed way first
    std::vector<PollenTask> pollen;  ///< by last safe day
    std::vector<FieldTask> field;    ///< by first day
    /// Goals passed over, parents that the book does not have, a pedigree that cannot be calculated.
    Findings findings;
};

/// Meets the windows of every goal of the forecast's season, and of the next season where pollen must be
/// collected now for it. Throws nothing for a cross that cannot work: its ways say why.
SeasonPlan plan_season(const bloom::BloomForecast& forecast, const Orchard& orchard,
                       const CrossingAssumptions& assumptions);

/// The urgencies as they are typed.
std::span<const Word<Urgency>> words(Urgency);

}  // namespace pipward::cross
