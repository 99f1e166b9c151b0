// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// Inside of the room: which of several spacings each row has.
namespace pipward::place::detail {

struct ChosenSpacing {
    double spacing = 1;   ///< metres
    bool is_sure = true;  ///< false: another one fits nearly as well
    double other = 0;     ///< metres: that one
};

/// Rows of one block may have one spacing or another, every second one for example. `along` are metres along
/// each row, `spacings` what each was taken to have, `least` to `most` metres what another may be. Another
/// spacing is looked for where all rows together keep to one that none of `spacings` explains; each row is
/// given that to which its trees keep best, by the log likelihood of phases that scatter widely: n R^2, with
/// the mean resultant length R (Mardia & Jupp 2000, Directional Statistics, 5.3).
std::vector<ChosenSpacing> choose_spacings(std::span<const std::vector<double>> along,
                                           std::span<const double> spacings, double least, double most);

}  // namespace pipward::place::detail
