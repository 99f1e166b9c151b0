// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "pipward/dress/layer_dress.h"
#include "pipward/dress/orchard_dress.h"

/// Inside of the room: symbols, labels and tips of the tables that stand on the map.
namespace pipward::dress::detail {

void dress_ground(LayerDress& layer, const Wording& wording);
void dress_trees(LayerDress& layer, const Wording& wording);
void dress_bloom(LayerDress& layer, const std::optional<BloomSpan>& span, const Wording& wording);
void dress_work(LayerDress& layer, const Wording& wording);
void dress_positions(LayerDress& layer, const Wording& wording);
void dress_tree_numbers(LayerDress& layer, const Wording& wording);
void dress_first_fruit(LayerDress& layer, const Wording& wording);

}  // namespace pipward::dress::detail
