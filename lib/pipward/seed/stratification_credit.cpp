// SPDX-License-Identifier: MIT
#include "pipward/seed/detail/stratification_credit.h"

#include <algorithm>
#include <array>

namespace pipward::seed::detail {
namespace {

struct Knot {
    double degrees;
    double credit;
};

constexpr std::array knots{Knot{0, 0}, Knot{0.5, 1}, Knot{5, 1}, Knot{9.5, 0}};
constexpr double undoing_from = 15;

}  // namespace

double stratification_credit(Celsius temperature) {
    const double degrees = temperature.degrees;
    if (degrees >= undoing_from) {
        return -1;
    }
    if (degrees <= knots.front().degrees || degrees >= knots.back().degrees) {
        return 0;
    }
    const auto* above = std::ranges::find_if(knots, [&](const Knot& k) { return k.degrees >= degrees; });
    const auto& below = *(above - 1);
    return below.credit +
           (above->credit - below.credit) * (degrees - below.degrees) / (above->degrees - below.degrees);
}

}  // namespace pipward::seed::detail
