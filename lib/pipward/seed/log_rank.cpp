// SPDX-License-Identifier: MIT
#include "pipward/seed/log_rank.h"

#include <map>

#include "pipward/math/distributions.h"

namespace pipward::seed {
namespace {

struct AtDay {
    int germinated = 0;
    int censored = 0;
};

using ByDay = std::map<double, AtDay>;

int fill(ByDay& days, const GerminationTimes& times) {
    int seeds = 0;
    for (const auto& [day, number] : times.germinated) {
        days[day].germinated += number;
        seeds += number;
    }
    for (const auto& [day, number] : times.censored) {
        days[day].censored += number;
        seeds += number;
    }
    return seeds;
}

double variance_at(double of_a, double of_b, double germinated) {
    const double all = of_a + of_b;
    return all <= 1 ? 0 : germinated * (of_a / all) * (of_b / all) * (all - germinated) / (all - 1);
}

}  // namespace

std::optional<LogRank> log_rank(const GerminationTimes& a, const GerminationTimes& b) {
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
        if (const double germinated = at_a.germinated + at_b.germinated; germinated > 0) {
            const double share_a = static_cast<double>(of_a) / (of_a + of_b);
            test.expected_a += germinated * share_a;
            test.expected_b += germinated * (1 - share_a);
            seen_a += at_a.germinated;
            variance += variance_at(of_a, of_b, germinated);
        }
        of_a -= at_a.germinated + at_a.censored;
        of_b -= at_b.germinated + at_b.censored;
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
