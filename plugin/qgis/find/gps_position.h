// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>

#include "pipward/place/earth.h"

namespace pipward::desktop {

/// Where the desktop's GPS says that one stands; nothing where none is connected or it has no fix.
std::optional<place::LonLat> gps_position();

}  // namespace pipward::desktop
