// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/cross/detail/way_outlook.h"

namespace pipward::cross::detail {

/// How the way's pollen is obtained: from which lot, or when to collect or cut and where to store it. By the
/// row as it stands, so that it never tells other days or stores than the row. `usable` as in the
/// assumptions.
Sentence how_text(const WayOutlook& way, Share usable);

/// Likewise, in the place where the way's sentences tell it; nothing where they do not.
void tell_how_again(WayOutlook& way, Share usable);

}  // namespace pipward::cross::detail
