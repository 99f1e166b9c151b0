// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/pollen_life.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "pipward/math/distributions.h"

namespace pipward::cross::detail {
namespace {

// The share kept is exp(-(k t)^b), t in months: a Weibull curve, b below 1 falling fastest at first.
struct Decay {
    Store store;
    double b = 1;
    double k = 0;   // a month
    double sd = 0;  // root mean square departure of the table, months 1 to 6, from the curve
};

constexpr std::array decays{
    Decay{Store::room, 0.65, 0.5925, 0.044},
    Decay{Store::refrigerator, 0.80, 0.297, 0.072},
    Decay{Store::freezer, 0.90, 0.0395, 0.015},
    Decay{Store::deep_freezer, 0.95, 0.0325, 0.015},
};

constexpr int one_sitting_days = 14;  // common practice, no source

const Decay& decay_of(Store store) {
    return *std::ranges::find(decays, store, &Decay::store);
}

double months_between(Day from, Day to) {
    return (to - from) / days_a_month;
}

// How long pollen stands in a store until so much is kept.
double months_for(Store store, double kept) {
    const auto& decay = decay_of(store);
    return kept >= 1 ? 0 : std::pow(-std::log(std::max(kept, 1e-300)), 1 / decay.b) / decay.k;
}

// Two grains of either kind added (Agresti & Coull 1998): no sample proves 0 or 100 %.
double count_variance(double germinated, double grains) {
    const double share = (germinated + 2) / (grains + 4);
    return share * (1 - share) / (grains + 4);
}

std::vector<PollenTest> counted(Day collected_on, std::span<const PollenTest> tests, Day as_of) {
    std::vector<PollenTest> kept;
    for (const auto& test : tests) {
        const bool makes_sense = test.grains > 0 && test.germinated >= 0 && test.germinated <= test.grains;
        if (makes_sense && test.tested_on >= collected_on && test.tested_on <= as_of) {
            kept.push_back(test);
        }
    }
    return kept;
}

// A product of two uncertain shares; to the first order their relative variances add up.
Germination untested_at(std::span<const Stay> stays, Day use) {
    const double kept = germination_kept(stays, use);
    const double curve_sd = use > stays.front().from ? germination_kept_sd(stays.back().store) : 0;
    return {untested_pollen.mean * kept,
            std::hypot(untested_pollen.sd * kept, untested_pollen.mean * curve_sd)};
}

// Each test is taken along the curve from its own day to the day of use and weighed by its grains. The
// counting error shrinks as the share does; the curve's own is of a start of 1 and shrinks with what the lot
// started at.
Germination carried_forward(std::span<const Stay> stays, std::span<const PollenTest> tests, Day latest,
                            Day use) {
    const double kept_at_use = germination_kept(stays, use);
    double grains = 0;
    double germinated = 0;
    double counted_at_use = 0;
    for (const auto& test : tests) {
        if (latest - test.tested_on <= one_sitting_days) {
            const double kept = germination_kept(stays, test.tested_on);
            grains += test.grains;
            germinated += test.germinated;
            counted_at_use += test.germinated * std::min(1.0, kept_at_use / kept);
        }
    }
    const double mean = counted_at_use / grains;
    const double shrunk = germinated > 0 ? counted_at_use / germinated : 1;
    const double start = mean / std::max(kept_at_use, 1e-9);
    const double curve_sd = use > latest ? std::min(1.0, start) * germination_kept_sd(stays.back().store) : 0;
    return {mean, std::hypot(shrunk * std::sqrt(count_variance(germinated, grains)), curve_sd)};
}

}  // namespace

double germination_kept(Store store, double months) {
    const auto& decay = decay_of(store);
    return std::exp(-std::pow(decay.k * std::max(0.0, months), decay.b));
}

double germination_kept_sd(Store store) {
    return decay_of(store).sd;
}

std::optional<Day> last_tested(Day collected_on, std::span<const PollenTest> tests, Day as_of) {
    const auto kept = counted(collected_on, tests, as_of);
    const auto latest = std::ranges::max_element(kept, {}, &PollenTest::tested_on);
    return latest == kept.end() ? std::nullopt : std::optional{latest->tested_on};
}

double germination_kept(std::span<const Stay> stays, Day day) {
    double kept = 1;
    for (std::size_t i = 0; i < stays.size() && (i == 0 || stays[i].from < day); ++i) {
        const Day until = i + 1 < stays.size() ? std::min(day, stays[i + 1].from) : day;
        const double months = months_between(stays[i].from, until);
        kept = germination_kept(stays[i].store, months_for(stays[i].store, kept) + std::max(0.0, months));
    }
    return kept;
}

Germination germination_at(std::span<const Stay> stays, std::span<const PollenTest> tests, Day as_of,
                           Day use) {
    const Day collected_on = stays.front().from;
    const auto latest = last_tested(collected_on, tests, as_of);
    return latest ? carried_forward(stays, counted(collected_on, tests, as_of), *latest, use)
                  : untested_at(stays, use);
}

Germination germination_at(Store store, Day collected_on, std::span<const PollenTest> tests, Day as_of,
                           Day use) {
    const Stay stay{store, collected_on};
    return germination_at(std::span(&stay, 1), tests, as_of, use);
}

double chance_usable(Germination germination, Share usable) {
    if (germination.sd <= 0) {
        return germination.mean >= usable.value ? 1 : 0;
    }
    return math::normal_below((germination.mean - usable.value) / germination.sd);
}

}  // namespace pipward::cross::detail
