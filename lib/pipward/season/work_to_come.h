// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/season/field_work.h"
#include "pipward/season/pipeline.h"

namespace pipward::season {

/// Everything that the orchard asks for from `place.as_of` on: pollen, flowers, fruit, seed; work that is
/// late and can still be done with it. By first day, work without one last. Where the season cannot be
/// forecast its findings tell why, as warnings, and harvest days are calculated from the days of the work.
std::vector<FieldWorkItem> work_to_come(const PlanWish& wish, Place& place, const Step& step = quietly());

/// The tags that bear fruit to pick, with what the season's bloom tells of their trees.
std::vector<seed::TagToHarvest> harvest_to_come(MethodChoice method, Place& place,
                                                const Step& step = quietly());

}  // namespace pipward::season
