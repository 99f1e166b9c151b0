// SPDX-License-Identifier: MIT
#include "pipward/seed/stratification_clock.h"

#include <algorithm>
#include <numeric>

#include "pipward/clock/dynamic_model.h"
#include "pipward/seed/detail/stratification_credit.h"
#include "pipward/weather/hours.h"

namespace pipward::seed {
namespace {

double credit_of(const StoreDay& readings) {
    const double sum = std::accumulate(readings.begin(), readings.end(), 0.0, [](double all, Celsius t) {
        return all + detail::stratification_credit(t);
    });
    return sum / static_cast<double>(readings.size());
}

/// The Dynamic Model wants every hour: a day with gaps gives its readings in turn, each held for its share.
void feed(clock::DynamicModel& model, const StoreDay& readings) {
    for (std::size_t hour = 0; hour < weather::hours_a_day; ++hour) {
        model.hour(readings[hour * readings.size() / weather::hours_a_day]);
    }
}

template <class Beyond>
void note_spell(std::vector<Spell>& spells, Day day, Celsius extreme, Beyond beyond) {
    if (!spells.empty() && spells.back().to == day - 1) {
        spells.back().to = day;
        spells.back().extreme = beyond(extreme, spells.back().extreme) ? extreme : spells.back().extreme;
    } else {
        spells.push_back({day, day, extreme});
    }
}

void note_spells(StratificationSum& sum, Day day, const StoreDay& readings) {
    const auto [coldest, warmest] = std::ranges::minmax(readings);
    if (warmest >= detail::warm_for_seed) {
        note_spell(sum.warm, day, warmest, std::greater{});
    }
    if (coldest < detail::frost_for_seed) {
        note_spell(sum.frost, day, coldest, std::less{});
    }
}

}  // namespace

StoreLog steady_store(Celsius temperature) {
    return [temperature](Day) { return StoreDay(weather::hours_a_day, temperature); };
}

StratificationSum count_stratification(Day from, Day to, const StoreLog& store,
                                       const std::vector<double>& needs) {
    StratificationSum sum;
    sum.reached.resize(needs.size());
    clock::DynamicModel model;
    for (Day day = from; day <= to; day = day + 1) {
        const auto readings = store(day);
        if (!readings || readings->empty()) {
            ++sum.unknown_days;
            continue;
        }
        sum.days = std::max(0.0, sum.days + credit_of(*readings));
        feed(model, *readings);
        note_spells(sum, day, *readings);
        for (std::size_t i = 0; i < needs.size(); ++i) {
            if (!sum.reached[i] && sum.days >= needs[i] - 1e-9) {
                sum.reached[i] = day;
            }
        }
    }
    sum.portions = model.total();
    return sum;
}

}  // namespace pipward::seed
