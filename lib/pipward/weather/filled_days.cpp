// SPDX-License-Identifier: MIT
#include "pipward/weather/filled_days.h"

namespace pipward::weather {

Sentence filled_days_words(int days) {
    return days == 1 ? say("1 missing day was filled from its neighbours.")
                     : say("{} missing days in short gaps were filled from their neighbours.", days);
}

}  // namespace pipward::weather
