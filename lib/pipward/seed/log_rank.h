// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

namespace pipward::seed {

/// So many seeds on a day.
struct SeedsOnDay {
    double day = 0;  ///< since the lot's beginning, may be part of a day
    int seeds = 0;   ///< in number
};

/// When the seeds of a lot germinated, and when those that did not were seen last.
struct GerminationTimes {
    std::vector<SeedsOnDay> germinated;  ///< new ones
    std::vector<SeedsOnDay> censored;  ///< taken out before they germinated, or still there at the last count
};

/// Whether chance alone would part two lots so far.
struct LogRank {
    double expected_a = 0;  ///< seeds of the first lot that would have germinated if both were alike
    double expected_b = 0;  ///< likewise of the second lot
    double chi_square = 0;  ///< of one degree of freedom
    double p = 1;           ///< chance of a chi-square as large or larger where both are alike, 0..1
};

/// Whether two lots germinate at one pace: the log-rank test (Mantel 1966, Cancer Chemother. Rep. 50:163)
/// with the variance for ties. A seed seen last on a day is still at risk on it. Nothing where no seed
/// germinated, or none ever did while both lots had seeds left.
std::optional<LogRank> log_rank(const GerminationTimes& a, const GerminationTimes& b);

}  // namespace pipward::seed
