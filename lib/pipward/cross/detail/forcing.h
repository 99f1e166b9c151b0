// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/bbch.h"
#include "pipward/value/day.h"
#include "pipward/value/quantity.h"

/// Cut branches forced indoors at about 20 °C, for pollen before its time.
namespace pipward::cross::detail {

/// Anthers dry for 12 to 48 hours before they shed. Common practice, no source.
inline constexpr int drying_days = 2;

/// A branch in water in a warm room gives pollen more often than not, but not always: buds dry out, anthers
/// stay shut, the branch was short of chill. Common practice, no source.
inline constexpr double forcing_success = 0.7;

/// Dormant wood without its chill does not force. Where the book does not tell an accession's need, that of
/// 'Golden Delicious' stands in (Erez 2000: 50 portions).
inline constexpr ChillPortions usual_chill{50};

/// How long a cut branch stands in the room, days.
struct ForcingDays {
    int least = 0;  ///< where all goes well
    int most = 0;   ///< what one plans on
};

/// Days from cutting to open anthers by the stage of the tree when the branch is cut. Common practice, no
/// source: dormant but chilled 21 to 28, swelling to mouse ear (51 to 54) 12 to 16, tight cluster (55, 56) 7
/// to 10, pink 3 to 5, balloon 1 to 2; none from first bloom on.
ForcingDays forcing_days(Bbch at_cutting);

/// The longer of the two for a tree that stands `after_full` degree-days on the stage ladder, linear between
/// the stages. Range 0..28.
double forcing_days_at(DegreeDays after_full);

/// The last day to cut for pollen dried and ready on `wanted`.
constexpr Day cut_by(Day wanted, int days_to_open_anthers) {
    return wanted - drying_days - days_to_open_anthers;
}

}  // namespace pipward::cross::detail
