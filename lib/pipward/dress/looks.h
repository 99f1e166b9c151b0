// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "pipward/dress/layer_dress.h"
#include "pipward/dress/orchard_dress.h"

/// Inside of the room: symbols, labels and tips of the tables that stand on the map.
namespace pipward {

void dress_ground(LayerDress& layer);
void dress_trees(LayerDress& layer);
void dress_bloom(LayerDress& layer, const std::optional<BloomSpan>& span);
void dress_work(LayerDress& layer);
void dress_positions(LayerDress& layer);
void dress_tree_numbers(LayerDress& layer);

}  // namespace pipward
