// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/season/pipeline.h"

namespace pipward::season::detail {

/// Fills in the place's station, its record and the season: the named station, else the book's only one, else
/// the one with the most days, with a note that says so. Throws Error: usage for a name that the book does
/// not have, input where no station will do.
void choose_station(Place& place, const std::string& wanted);

}  // namespace pipward::season::detail
