// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>

#include "pipward/bloom/observation.h"

namespace pipward::bloom::detail {

/// The ladder of each species, learned from springs in which full bloom was noted beside first bloom or the
/// end. A species starts from its usual ladder, worth three springs, and a spring counts half as much as one
/// five years later: what an observer calls first bloom wanders. Springs without curves teach nothing;
/// `season` is the one that it is for. A spring counts once, however many accessions were noted.
Ladders learn_ladders(std::span<const StageSeen> stages, const CurvesOf& curves, Hemisphere hemisphere,
                      Season season);

/// Each stage placed on the ladder of its accession's species.
void place_stages(std::vector<StageSeen>& stages, const Ladders& ladders);

}  // namespace pipward::bloom::detail
