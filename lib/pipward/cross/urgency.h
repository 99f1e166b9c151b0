// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/cross/plan.h"

namespace pipward::cross {

/// How soon work must be done, by its last safe day alone: that day is today, within the seven days after
/// today (this week), later than these, or past (too late).
Urgency urgency_of(Day last_day, Day as_of);

}  // namespace pipward::cross
