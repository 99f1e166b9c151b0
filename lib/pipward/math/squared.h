// SPDX-License-Identifier: MIT
#pragma once

namespace pipward::math {

/// The square, in the unit squared.
constexpr double squared(double value) {
    return value * value;
}

}  // namespace pipward::math
