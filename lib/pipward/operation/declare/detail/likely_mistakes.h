// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

namespace pipward::operation::detail {

/// What a book may hold by its rules, but hardly in truth, and what only the rooms of places and weather
/// know: trees where none can stand, days that no thermometer measured. Warnings.
Findings likely_mistakes(const Orchard& orchard);

}  // namespace pipward::operation::detail
