// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/record/orchard.h"

namespace pipward::weather {

/// The station of that name. Throws Error (usage) with the nearest name, or all of them.
const Station& named_station(const std::vector<Station>& stations, const std::string& wanted);

}  // namespace pipward::weather
