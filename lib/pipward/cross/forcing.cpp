// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/forcing.h"

#include <algorithm>
#include <array>

#include "pipward/bloom/stage_ladder.h"

namespace pipward::cross::detail {
namespace {

struct StageForcing {
    Bbch from;
    ForcingDays days;
};

constexpr std::array table{
    StageForcing{{60}, {0, 0}},  StageForcing{{59}, {1, 2}},   StageForcing{{57}, {3, 5}},
    StageForcing{{55}, {7, 10}}, StageForcing{{51}, {12, 16}}, StageForcing{{0}, {21, 28}},
};

struct Knot {
    double after_full;
    double days;
};

// Dormant wood is taken to stand as far before bud swelling on the ladder as a warm room would make up in the
// twelve days between the two lines of the table: 12 days x 20 degrees.
std::array<Knot, 6> make_knots() {
    const auto at = [](int stage) { return bloom::ladder_place({stage}, {})->after_full.value; };
    const auto most = [](int stage) { return static_cast<double>(forcing_days({stage}).most); };
    return {Knot{at(51) - 12 * 20.0, most(0)},
            Knot{at(51), most(51)},
            Knot{at(55), most(55)},
            Knot{at(57), most(57)},
            Knot{at(59), most(59)},
            Knot{at(60), most(60)}};
}

}  // namespace

ForcingDays forcing_days(Bbch at_cutting) {
    const auto* const found =
        std::ranges::find_if(table, [&](const auto& row) { return at_cutting >= row.from; });
    return found->days;
}

double forcing_days_at(DegreeDays after_full) {
    static const auto knots = make_knots();
    const double place = std::clamp(after_full.value, knots.front().after_full, knots.back().after_full);
    const auto* right = std::ranges::find_if(knots, [&](const Knot& k) { return k.after_full >= place; });
    if (right == knots.begin()) {
        return right->days;
    }
    const auto* left = right - 1;
    const double part = (place - left->after_full) / (right->after_full - left->after_full);
    return left->days + part * (right->days - left->days);
}

}  // namespace pipward::cross::detail
