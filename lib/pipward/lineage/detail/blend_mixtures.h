// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>

#include "pipward/record/orchard.h"

namespace pipward::lineage::detail {

/// Shares of a blend's pollen by member, 0..1.
using BlendMixture = std::map<std::string, double>;
using BlendMixtures = std::map<std::string, BlendMixture>;

/// By blend. Shares that are missing divide what the others leave; shares that fall short of 1 stay so,
/// shares above 1 are scaled down.
BlendMixtures blend_mixtures(std::span<const BlendMember> blends);

}  // namespace pipward::lineage::detail
