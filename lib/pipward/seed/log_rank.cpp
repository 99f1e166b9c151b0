// SPDX-License-Identifier: MIT
#include "pipward/seed/log_rank.h"

#include <map>

#include "pipward/math/distributions.h"

namespace pipward::seed {
namespace {

struct AtDay {
    int sprouted = 0;
    int censored = 0;
};

using ByDay = std::map<double, AtDay>;

int fill(ByDay& days, const SproutTimes& times) {
    int seeds = 0;
    for (const auto& [day, number] : times.sprouted) {
        days[day].sprouted += number;
        seeds += number;
    }
    for (const auto& [day, number] : times.censored) {
        days[day].censored += number;
        seeds += number;
    }
    return seeds;
}

double variance_at(double of_a, double of_b, double sprouted) {
    const double all = of_a + of_b;
    return all <= 1 ? 0 : sprouted * (of_a / all) * (of_b / all) * (all - sprouted) / (all - 1);
}

}  // namespace

std::optional<LogRank> log_rank(const SproutTimes& a, const SproutTimes& b) {
    ByDay days_a;
    ByDay days_b;
    int of_a = fill(days_a, a);
    int of_b = fill(days_b, b);
    ByDay all = days_a;
    all.insert(days_b.begin(), days_b.end());
    LogRank test;
    double seen_a = 0;
    double variance = 0;
    for (const auto& [day, unused] : all) {
        const AtDay at_a = days_a[day];
        const AtDay at_b = days_b[day];
        if (const double sprouted = at_a.sprouted + at_b.sprouted; sprouted > 0) {
            const double share_a = static_cast<double>(of_a) / (of_a + of_b);
            test.expected_a += sprouted * share_a;
            test.expected_b += sprouted * (1 - share_a);
            seen_a += at_a.sprouted;
            variance += variance_at(of_a, of_b, sprouted);
        }
        of_a -= at_a.sprouted + at_a.censored;
        of_b -= at_b.sprouted + at_b.censored;
    }
    if (variance <= 0) {
        return std::nullopt;
    }
    const double apart = seen_a - test.expected_a;
    test.chi_square = apart * apart / variance;
    test.p = math::chi_square_above(test.chi_square, 1);
    return test;
}

}  // namespace pipward::seed
