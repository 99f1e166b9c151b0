// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"

/// Seed that leaves its lots when its seedlings are planted.
namespace pipward::seed {
struct PlantingMark;
}  // namespace pipward::seed

namespace pipward::seed::detail {

/// What planting so many seedlings, by cross, takes out of the lots: germinated seed, the oldest lots first.
/// Seedlings that were withdrawn before, potted as a rule, and have no place yet are planted first and draw
/// nothing.
std::vector<SeedWithdrawal> seed_drawn(const std::map<std::string, int>& planted, const Orchard& orchard,
                                       const PlantingMark& mark);

}  // namespace pipward::seed::detail
