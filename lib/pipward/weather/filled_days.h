// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/sentence.h"

namespace pipward::weather {

/// That so many missing days, 1 or more, were filled.
Sentence filled_days_words(int days);

}  // namespace pipward::weather
