// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/value/bbch.h"
#include "pipward/value/quantity.h"

namespace pipward::bloom {

/// One curve ties the stages of bloom together: the share of flowers that have opened is a logistic in
/// degree-days above 4.5 °C (the shape: Whiting, Salazar & Hoogenboom 2015, Acta Hort. 1068), with 10
/// % at -35, half at 0 and the last petals down at +75. The numbers are defaults of ours, common practice, no
/// source.
inline constexpr Celsius ladder_base{4.5};

/// Where a stage stands on the ladder, in degree-days after full bloom (negative before it), and how many
/// days a note of that stage is uncertain by, one standard deviation.
struct LadderPlace {
    DegreeDays after_full;  ///< degree-days above ladder_base; below 0 before full bloom
    double sd_days = 1;     ///< days, above 0
};

/// Stages 51..69; nothing for stages that tell too little of bloom.
std::optional<LadderPlace> ladder_place(Bbch stage);
/// The place at which `open` of the flowers have opened. Range of open: 0.01..0.99, clamped.
DegreeDays ladder_place_of_share(Share open);
/// The share of flowers that have opened so far.
Share share_opened(DegreeDays after_full);

}  // namespace pipward::bloom
