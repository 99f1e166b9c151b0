// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

namespace pipward::bloom::detail {

/// A departure as a note would tell it.
struct ToldDeparture {
    double departure = 0;  ///< days
    double sd = 1;         ///< days
};

/// What it tells that a departure of usual size `sd` is known to be `least` or more, and `least` only to
/// within `noise`: the note that, taken for a normal one, leaves the same mean and spread (the moments of the
/// truncated normal distribution: Johnson, Kotz & Balakrishnan 1994, Continuous Univariate Distributions 1).
/// Nothing where it was as good as certain anyway.
std::optional<ToldDeparture> told_by_waiting(double least, double sd, double noise);

}  // namespace pipward::bloom::detail
