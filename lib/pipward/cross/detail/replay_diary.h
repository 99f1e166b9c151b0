// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/cross/detail/bloom_course.h"
#include "pipward/cross/replay.h"

namespace pipward::cross::detail {

/// What bloomed when in a replayed spring.
class TrueBloom {
  public:
    explicit TrueBloom(const bloom::BloomForecast& truth);

    /// Of a tree, or where it is not known of its accession; null where neither is.
    const BloomCourse* of(const std::string& tree, const std::string& accession) const;
    SeasonDay season_day(Day day) const;
    /// The first day on which a branch cut that day has open anthers.
    Day forced_by(Day cut, const std::string& accession) const;

  private:
    const bloom::BloomForecast* truth_;
    std::vector<BloomCourse> courses_;  // by window
    std::map<std::string, std::size_t> of_tree_;
};

/// A book in which the work of a spring is noted as it is done.
class ReplayDiary {
  public:
    ReplayDiary(const ReplaySpring& spring, const TrueBloom& bloom);

    /// The forecast's plan from the book as it stands.
    SeasonPlan plan(bloom::BloomForecast forecast) const;
    /// Does what the plan asks for, from a day to the day before another.
    void work(const SeasonPlan& plan, Day from, Day until);
    int worked(const std::string& cross) const;  ///< flowers so far

  private:
    void collect(const PollenTask& task, Day day, bool& done);
    void pollinate(const FieldTask& task, Day day, std::vector<bool>& done);
    const PollenLot* ready(const PollenShare& share, Day day) const;
    bool give(const FieldTask& task, const PollenShare& share, Day day);
    void add_lot(const PollenTask& task, Day collected_on, Store store);

    const ReplaySpring* spring_;
    const TrueBloom* bloom_;
    Orchard book_;
    std::map<std::string, int> worked_;
};

}  // namespace pipward::cross::detail
