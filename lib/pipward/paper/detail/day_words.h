// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/day.h"

/// Days as people say them. Not escaped.
namespace pipward::paper::detail {

/// "20 March 2026".
Sentence long_day(Day day);
/// "Fri 20 Mar".
Sentence work_day(Day day);

}  // namespace pipward::paper::detail
