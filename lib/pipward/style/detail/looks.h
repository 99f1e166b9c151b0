// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "pipward/style/layer_style.h"
#include "pipward/style/orchard_style.h"

/// Inside of the room: symbols, labels and tips of the tables that stand on the map.
namespace pipward::style::detail {

void style_ground(LayerStyle& layer, const Wording& wording);
void style_trees(LayerStyle& layer, const Wording& wording);
void style_bloom(LayerStyle& layer, const std::optional<BloomSpan>& span, const Wording& wording);
void style_work(LayerStyle& layer, const Wording& wording);
void style_positions(LayerStyle& layer, const Wording& wording);
void style_tree_numbers(LayerStyle& layer, const Wording& wording);
void style_first_fruiting(LayerStyle& layer, const Wording& wording);

}  // namespace pipward::style::detail
