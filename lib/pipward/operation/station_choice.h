// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/operation/season_pipeline.h"

namespace pipward::operation {

/// The station of that name. Throws Error (usage) with the nearest name, or all of them.
const Station& named_station(const std::vector<Station>& stations, const std::string& wanted);

/// Fills in the place's station, its record and the season: the named station, else the book's only one, else
/// the one with the most days, with a note that says so. Throws Error: usage for a name that the book does
/// not have, input where no station will do.
void choose_station(Place& place, const std::string& wanted);

}  // namespace pipward::operation
