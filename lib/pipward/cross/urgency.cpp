// SPDX-License-Identifier: MIT
#include "pipward/cross/urgency.h"

namespace pipward::cross {

Urgency urgency_of(Day last_day, Day as_of) {
    constexpr int a_week = 7;
    if (last_day < as_of) {
        return Urgency::too_late;
    }
    if (last_day == as_of) {
        return Urgency::today;
    }
    return last_day - as_of <= a_week ? Urgency::this_week : Urgency::later;
}

}  // namespace pipward::cross
