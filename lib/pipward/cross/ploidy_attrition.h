// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

namespace pipward::cross {

/// Seedlings from a cross as a part of what a cross of two diploids gives, by the parents' chromosome sets.
struct PloidyAttrition {
    double factor = 1;      ///< of the seedlings per flower
    bool triploid = false;  ///< either parent: pollen or seed is mostly unsound
    bool known = true;      ///< false where nothing was published for these ploidies
};

/// Sato & Kanbe 2007, Hort. Res. (Japan) 6:347: seedlings a year old from 100 hand-pollinated flowers were
/// 456 to 772 (diploid with diploid), 24 to 93 (diploid seed parent, triploid pollen), 1 to 13 (triploid seed
/// parent); each range is taken at its middle. Two triploids: the product, a guess. Unknown ploidy counts as
/// diploid.
PloidyAttrition ploidy_attrition(std::optional<int> seed_parent, std::optional<int> donor);

}  // namespace pipward::cross
