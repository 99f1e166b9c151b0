// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "pipward/bloom/observation.h"

/// Inside of the room: why notes teach nothing.
namespace pipward::bloom::detail {

using ObservationsOfSeasons = std::map<Season, int>;  ///< how many notes, by season

/// The season under way speaks for itself; of the others, many are told together.
void add_without_weather(Findings& findings, ObservationsOfSeasons without, Season under_way);
/// A stage noted on a day that no spring's bloom reaches.
Finding out_of_season(const StageSeen& seen);

}  // namespace pipward::bloom::detail
