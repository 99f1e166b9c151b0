// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace pipward::seed {

/// How long the seed of a species must lie moist and cold before it will germinate.
struct StratificationNeed {
    std::string_view species;  ///< "Malus domestica"
    int least_days = 0;        ///< some seed is ready
    int full_days = 0;         ///< most seed is ready
    std::string_view source;   ///< where it was published, in words for people
};

/// Published needs, by species.
std::span<const StratificationNeed> stratification_needs();

/// Of a species by its name, its genus alone for one that is not in the list; nothing for a genus that is
/// not.
std::optional<StratificationNeed> stratification_need_of(std::string_view species);

}  // namespace pipward::seed
