// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/detail/bloom_course.h"
#include "pipward/cross/detail/stock.h"
#include "pipward/cross/plan.h"
#include "pipward/cross/ploidy_attrition.h"
#include "pipward/lineage/kinship.h"
#include "pipward/lineage/s_alleles.h"
#include "pipward/record/orchard_index.h"

/// One goal and one donor, with all that the four ways ask of them.
namespace pipward::cross::detail {

/// The courses of the forecast's windows, each worked out when first asked for.
class CourseShelf {
  public:
    /// The forecast is lent. Windows are told by their number in it.
    explicit CourseShelf(const bloom::BloomForecast& forecast) : forecast_(&forecast) {}

    const BloomCourses& whole(std::size_t window);  ///< from the season's first day on
    const BloomCourses& left(std::size_t window);   ///< from the day of the forecast on

  private:
    const bloom::BloomForecast* forecast_;
    std::map<std::size_t, BloomCourses> whole_;
    std::map<std::size_t, BloomCourses> left_;
};

/// Everything that a plan is made from.
struct Bench {
    const bloom::BloomForecast* forecast = nullptr;  ///< never null
    const Orchard* orchard = nullptr;                ///< never null
    CrossingAssumptions assumptions;                 ///< of the plan
    OrchardIndex book;                               ///< of `orchard`
    Stock stock;                                     ///< trees, lots and counts on the day of the plan
    std::optional<lineage::Kinship> kinship;         ///< nothing where the pedigree runs in a circle
    CourseShelf shelf;                               ///< of `forecast`
};

/// A living tree that pollen can come from.
struct DonorTree {
    const Tree* tree = nullptr;           ///< never null
    const BloomCourses* whole = nullptr;  ///< the whole season
    const BloomCourses* left = nullptr;   ///< what is left of it
};

/// A goal with one of its donors; lent from the bench.
struct Crossing {
    const CrossGoal* goal = nullptr;           ///< never null
    std::string donor;                         ///< an accession
    bool blend = false;                        ///< the donor is one member of a blend
    Share share{1};                            ///< of the blend's pollen
    bool next_season = false;                  ///< the goal is of the season after the forecast's
    Day anchor;                                ///< day 0 of the season of use
    SeasonDay from = season_first;             ///< of the season of use: earlier days are over
    const BloomCourses* seed_whole = nullptr;  ///< nothing where the seed parent has no living tree
    const BloomCourses* seed_left = nullptr;   ///< from `from` on
    std::vector<DonorTree> donors;  ///< the tree that stands for the accession first; empty: none lives
    /// That its wood needs before a cut branch forces: its own, else usual_chill.
    ChillPortions donor_chill;
    lineage::SCompatibility compatibility;  ///< of the donor's pollen with the seed parent's style
    bool selfed = false;                    ///< seed parent and donor are one accession
    PloidyAttrition ploidy;                 ///< what the parents' chromosome sets cost
    /// Of seed parent and donor; empty where the pedigree does not tell it.
    std::optional<double> kinship;

    /// The calendar day of a day of the season of use.
    Day day(SeasonDay of_use) const { return anchor + of_use; }
};

/// By the S-alleles that the book tells; no pollen of its own passes a style.
lineage::SCompatibility compatibility_of(const OrchardIndex& book, const std::string& seed_parent,
                                         const std::string& donor);

/// The donors of a goal, by name, and their parts of its pollen: 1 in all, unless no member of a blend has
/// any.
std::vector<DonorShare> donors_of(const OrchardIndex& book, const CrossGoal& goal);

/// Everything about the pair that does not depend on the way. The bench must outlive it.
Crossing crossing_of(Bench& bench, const CrossGoal& goal, const DonorShare& donor);

}  // namespace pipward::cross::detail
