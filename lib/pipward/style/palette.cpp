// SPDX-License-Identifier: MIT
#include "pipward/style/detail/palette.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pipward::style::ink {
namespace {

constexpr std::array anchors{Ink{68, 1, 84},    Ink{65, 68, 135},  Ink{42, 120, 142},
                             Ink{34, 168, 132}, Ink{122, 209, 81}, Ink{253, 231, 37}};

int between(int from, int to, double share) {
    return static_cast<int>(std::lround(from + share * (to - from)));
}

}  // namespace

Ink ordered(double share) {
    const double place = std::clamp(share, 0.0, 1.0) * (anchors.size() - 1);
    const auto lower = std::min(static_cast<std::size_t>(place), anchors.size() - 2);
    const double rest = place - static_cast<double>(lower);
    const Ink& from = anchors.at(lower);
    const Ink& to = anchors.at(lower + 1);
    return {between(from.red, to.red, rest), between(from.green, to.green, rest),
            between(from.blue, to.blue, rest)};
}

}  // namespace pipward::style::ink
