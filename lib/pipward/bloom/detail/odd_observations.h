// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/observation.h"

/// Which of a spring's observations ask for a second look. Of those that contradict each other the one is
/// named without which the rest agree: a finding that falls on right observations is soon not read any more.
namespace pipward::bloom::detail {

/// An observation and the day of full bloom that it tells of.
struct Told {
    const StageSeen* seen = nullptr;  ///< never null
    double full_bloom = 0;            ///< fractional season day
};

/// Adds the observations whose stages run backwards on a tree and those that stand apart from the others of
/// their spring, each once. `springs`: the observations of one accession, season and offset each, into
/// `stages`, which are by day.
void add_odd_observations(Findings& findings, std::span<const StageSeen> stages,
                          const std::vector<std::vector<Told>>& springs);

}  // namespace pipward::bloom::detail
