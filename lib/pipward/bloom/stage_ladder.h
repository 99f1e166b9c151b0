// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "pipward/value/bbch.h"
#include "pipward/value/quantity.h"

namespace pipward::bloom {

/// Stages stand on one ladder of degree-days above freezing: full bloom tells first bloom and the end by it
/// with an RMSE of 2.7 and 2.8 days in apples and 2.6 and 4.5 in a pear; above 4.5 °C it is 3.0 and 3.0,
/// and 3.6 and 5.4 (six apples and a pear, 62 springs at Klein-Altendorf, from daily means).
inline constexpr Celsius ladder_base{0};

/// How a kind of fruit goes through bloom: degree-days from full bloom to its ends, and by how many days the
/// ends depart from that, one standard deviation. What is open between follows a logistic (the shape:
/// Whiting, Salazar & Hoogenboom 2015, Acta Hort. 1068) through first bloom, of which 5 % are open, and full
/// bloom.
struct StageLadder {
    DegreeDays first{-52};       ///< BBCH 60; below 0
    DegreeDays end{108};         ///< BBCH 69
    double first_sd_days = 2.4;  ///< of first bloom, full bloom being known
    double end_sd_days = 2.7;    ///< of the end, full bloom being known

    auto operator<=>(const StageLadder&) const = default;
};

/// So much of these variances is one spring's, shared by all accessions (39 and 44 % of the apples' in the
/// same springs).
inline constexpr double shared_stage_noise = 0.45;

/// Of a genus; what is neither goes by the apple's. Words: "Malus",
/// "Pyrus", with or without the species behind.
StageLadder usual_ladder(std::string_view species);

/// Where a stage stands on the ladder, in degree-days after full bloom (negative before it), and how many
/// days a note of that stage is uncertain by, one standard deviation.
struct LadderPlace {
    DegreeDays after_full;  ///< degree-days above ladder_base; below 0 before full bloom
    double sd_days = 1;     ///< days, above 0
};

/// Stages 51..69; nothing for stages that tell too little of bloom. A note of 5 % open is stage 60, of 10
/// % 61.
std::optional<LadderPlace> ladder_place(Bbch stage, const StageLadder& ladder);
/// The place at which `open` of the flowers have opened. Range of open: 0.01..0.99, clamped.
DegreeDays ladder_place_of_share(Share open, const StageLadder& ladder);
/// The share of flowers that have opened so far.
Share share_opened(DegreeDays after_full, const StageLadder& ladder);

}  // namespace pipward::bloom
