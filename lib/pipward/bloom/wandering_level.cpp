// SPDX-License-Identifier: MIT
#include "pipward/bloom/wandering_level.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "pipward/math/squared.h"

namespace pipward::bloom {
namespace {

struct PriorPace {
    double pace;
    double weight;
};

// Where the level wanders, slow is likelier than fast. Common practice, no source.
constexpr std::array prior_paces{PriorPace{0.01, 0.27}, PriorPace{0.03, 0.27}, PriorPace{0.08, 0.20},
                                 PriorPace{0.20, 0.16}, PriorPace{0.50, 0.10}};
constexpr double prior_worth = 3;       // values, of the usual noise
constexpr double start_variance = 1;    // of the first level about the mean of all, over that of the noise
constexpr double largest_surprise = 3;  // deviations: what departs by more is taken for so much

// The level beside a run of values, its variance in units of the noise's.
struct Filter {
    double mean = 0;
    double variance = start_variance;
    int year = 0;
    bool begun = false;

    void go_to(int to, double pace) {
        variance += begun ? pace * std::abs(to - year) : 0;
        year = to;
        begun = true;
    }
    // Returns the value's surprise and its variance.
    std::pair<double, double> take(double value, double noise) {
        const double expected = variance + 1;
        const double limit = largest_surprise * std::sqrt(expected * noise);
        const double surprise = std::clamp(value - mean, -limit, limit);
        const double kept = variance / expected;
        mean += kept * surprise;
        variance *= 1 - kept;
        return {surprise, expected};
    }
    double precision() const { return begun ? 1 / variance : 0; }
};

struct Fitness {
    double log_weight = 0;
    double noise = 1;
};

// How well a pace forecasts each value from those before it, the noise's variance being learned on the way.
Fitness fitness_of(const std::vector<YearValue>& values, double middle_year, double trend, double pace,
                   double usual_noise) {
    double squares = prior_worth * math::squared(usual_noise);
    double logs = 0;
    double told = prior_worth;
    Filter filter;
    for (const auto& [year, value] : values) {
        filter.go_to(year, pace);
        const auto [surprise, expected] = filter.take(value - trend * (year - middle_year), squares / told);
        squares += math::squared(surprise) / expected;
        logs += std::log(expected);
        told += 1;
    }
    return {-(told * std::log(squares) + logs) / 2, squares / told};
}

std::vector<PriorPace> paces_beforehand(double still) {
    std::vector<PriorPace> paces{{0, still}};
    for (const auto& [pace, weight] : prior_paces) {
        paces.push_back({pace, (1 - still) * weight});
    }
    return paces;
}

}  // namespace

WanderingLevel::WanderingLevel(std::vector<YearValue> values, double usual_noise, double still,
                               std::span<const YearlyTrend> trends)
    : values_(std::move(values)) {
    std::ranges::sort(values_, {}, &YearValue::year);
    const auto n = static_cast<double>(values_.size());
    for (const auto& value : values_) {
        middle_ += value.value / n;
        middle_year_ += value.year / n;
    }
    for (auto& value : values_) {
        value.value -= middle_;
    }
    static constexpr std::array no_trend{YearlyTrend{}};
    std::vector<double> logs;
    for (const auto& trend : trends.empty() ? std::span<const YearlyTrend>(no_trend) : trends) {
        for (const auto& prior : paces_beforehand(still)) {
            const auto fit = fitness_of(values_, middle_year_, trend.a_year, prior.pace, usual_noise);
            paces_.push_back({trend.a_year, prior.pace, fit.noise, trend.weight * prior.weight});
            logs.push_back(fit.log_weight);
        }
    }
    const double best = *std::ranges::max_element(logs);
    double total = 0;
    for (std::size_t i = 0; i < logs.size(); ++i) {
        paces_[i].weight *= std::exp(logs[i] - best);
        total += paces_[i].weight;
    }
    for (auto& paced : paces_) {
        paced.weight /= total;
    }
}

UsualLevel WanderingLevel::at(int year, const Paced& paced) const {
    const auto trend_at = [&](int of) { return paced.trend * (of - middle_year_); };
    Filter before;
    Filter after;
    for (auto value = values_.begin(); value != values_.end() && value->year < year; ++value) {
        before.go_to(value->year, paced.pace);
        before.take(value->value - trend_at(value->year), paced.noise);
    }
    for (auto value = values_.rbegin(); value != values_.rend() && value->year > year; ++value) {
        after.go_to(value->year, paced.pace);
        after.take(value->value - trend_at(value->year), paced.noise);
    }
    before.variance += before.begun ? paced.pace * (year - before.year) : 0;
    after.variance += after.begun ? paced.pace * (after.year - year) : 0;
    const double precision = before.precision() + after.precision();
    if (precision == 0) {
        return {trend_at(year), std::sqrt(paced.noise * start_variance)};
    }
    const double mean = (before.mean * before.precision() + after.mean * after.precision()) / precision;
    return {mean + trend_at(year), std::sqrt(paced.noise / precision)};
}

UsualLevel WanderingLevel::at(int year) const {
    UsualLevel level;
    double squares = 0;
    for (const auto& paced : paces_) {
        const auto one = at(year, paced);
        level.mean += paced.weight * one.mean;
        squares += paced.weight * (math::squared(one.mean) + math::squared(one.sd));
    }
    level.sd = std::sqrt(std::max(0.0, squares - math::squared(level.mean)));
    level.mean += middle_;
    return level;
}

double WanderingLevel::pace() const {
    double pace = 0;
    for (const auto& paced : paces_) {
        pace += paced.weight * paced.pace;
    }
    return pace;
}

}  // namespace pipward::bloom
