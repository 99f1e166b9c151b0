// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

namespace pipward::bloom::detail {

/// Tells how much of the scoring is done, 0..1; throws Error (cancelled) where it is not to go on. An empty
/// `progress` is told nothing.
void tell_scoring(const std::function<bool(double)>& progress, double share);

}  // namespace pipward::bloom::detail
