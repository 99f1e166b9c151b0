// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/operation/crossing_request.h"
#include "pipward/operation/field_work.h"

namespace pipward::operation {

/// Everything that the book asks for from `as_of` on: pollen, flowers, fruit, seed; work that is late and can
/// still be done with it. By first day, work without one last. Where the season cannot be foretold its
/// findings tell why, as warnings, and picking days are reckoned from the days of the work.
std::vector<FieldWorkItem> work_to_come(const CrossingRequest& request, Place& place, const Run& lent);

/// The tags that bear fruit to pick, with what the season's bloom tells of their trees.
std::vector<seed::TagToPick> picking_to_come(MethodChoice method, Place& place, const Run& lent);

}  // namespace pipward::operation
