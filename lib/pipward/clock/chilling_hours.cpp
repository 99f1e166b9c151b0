// SPDX-License-Identifier: MIT
#include "pipward/clock/chilling_hours.h"

namespace pipward::clock {

ChillingHours chilling_hours(Celsius hour) {
    return {hour.degrees >= 0 && hour.degrees <= 7.2 ? 1.0 : 0.0};
}

ChillingHours chilling_hours_below_45f(Celsius hour) {
    return {hour <= from_fahrenheit(45) ? 1.0 : 0.0};
}

}  // namespace pipward::clock
