// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/meeting_days.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/scenarios.h"

namespace pipward::cross::detail {
namespace {

constexpr double half = 0.5;

// How often each day of the season came; days outside count at its ends.
class DayCounts {
  public:
    void add(SeasonDay day) {
        ++counts_[std::clamp(day, season_first, season_last) - season_first];
        ++total_;
    }
    bool empty() const { return total_ == 0; }

    // The first day that at least `chance` of the counted days do not exceed, as math::quantile() has it.
    SeasonDay quantile(double chance) const {
        const double wanted = std::max(1.0, std::ceil(chance * total_ - 1e-9));
        int below = 0;
        for (int i = 0; i < season_length; ++i) {
            below += counts_[i];
            if (below >= wanted) {
                return season_first + i;
            }
        }
        return season_last;
    }

  private:
    std::array<int, season_length> counts_{};
    int total_ = 0;
};

struct Counted {
    DayCounts collect_first;
    DayCounts collect_last;
    DayCounts use_first;
    DayCounts use_last;

    void add(const MeetingDays& days) {
        collect_first.add(days.collect.first);
        collect_last.add(days.collect.last);
        use_first.add(days.use.first);
        use_last.add(days.use.last);
    }
};

// `meet` tells the days of one scenario, empty runs where the two do not meet.
template <class Meet>
Counted count_scenarios(const BloomCourses& seed_parent, const BloomCourses& donor, Meet meet) {
    Counted counted;
    for_each_scenario(seed_parent, [&](std::size_t s, std::size_t d) {
        const MeetingDays days = meet(seed_parent.each[s], donor.each[d]);
        if (!days.collect.empty() && !days.use.empty()) {
            counted.add(days);
        }
    });
    return counted;
}

std::optional<MeetingDays> summed_up(const Counted& counted, double first_chance, double risk) {
    if (counted.use_first.empty()) {
        return std::nullopt;
    }
    const auto days_at = [&](double chance) {
        return MeetingDays{
            {counted.collect_first.quantile(first_chance), counted.collect_last.quantile(chance)},
            {counted.use_first.quantile(half), counted.use_last.quantile(chance)}};
    };
    const auto safe = days_at(risk);
    if (safe.collect.last > safe.collect.first && safe.use.last > safe.use.first) {
        return safe;
    }
    auto median = days_at(std::max(half, risk));
    median.by_median = true;
    return median;
}

// The first and last day on which both hold.
DayRun common_run(const SeasonDays& a, const SeasonDays& b, DayRun within) {
    DayRun run;
    for (SeasonDay day = within.first; day <= within.last; ++day) {
        if (a.test(day - season_first) && b.test(day - season_first)) {
            run.first = std::min(run.first, day);
            run.last = day;
        }
    }
    return run;
}

}  // namespace

std::optional<MeetingDays> same_day_days(const BloomCourses& seed_parent, const BloomCourses& donor,
                                         double risk) {
    const auto counted = count_scenarios(seed_parent, donor, [](const auto& seed, const auto& giver) {
        const DayRun use = common_run(seed.workable, giver.fresh, seed.working);
        return MeetingDays{{std::max(giver.balloon.first, use.first - fresh_to_days),
                            std::min(giver.balloon.last, use.last - fresh_from_days)},
                           use};
    });
    return summed_up(counted, half, risk);
}

std::optional<MeetingDays> kept_days(const BloomCourses& seed_parent, const BloomCourses& donor,
                                     double risk) {
    const auto counted = count_scenarios(seed_parent, donor, [](const auto& seed, const auto& giver) {
        return MeetingDays{
            {giver.balloon.first, std::min(giver.balloon.last, seed.working.last - drying_days)},
            {std::max(seed.working.first, giver.balloon.first + drying_days), seed.working.last}};
    });
    return summed_up(counted, risk, risk);
}

}  // namespace pipward::cross::detail
