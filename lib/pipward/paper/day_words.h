// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/record/reader_days.h"

/// Days as the heads of sheets say them; for the others see reader_days.h. Not escaped.
namespace pipward::paper {

/// "20 March 2026".
Sentence long_day(Day day);

}  // namespace pipward::paper
