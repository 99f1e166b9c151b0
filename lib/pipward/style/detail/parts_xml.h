// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/style/detail/xml.h"
#include "pipward/style/layer_style.h"

/// Inside of the room: the parts of a layer in the desktop's XML. A style holds them under its root, a
/// project under each layer.
namespace pipward::style::detail {

/// A relation that ends at a layer, as its form shows it.
struct ShownRelation {
    std::string id;
    std::string title;
};

/// What a layer may lean on in a project and not in a style: other layers, by table, and relations.
struct Surroundings {
    std::map<std::string, std::string> layer_ids{};
    std::vector<ShownRelation> relations{};
};

/// As the desktop writes a colour: red, green, blue and opacity with commas between, 0 to 255 each.
std::string colour_text(const Ink& ink);

void write_renderer(pugi::xml_node layer, const LayerStyle& style);
void write_labels(pugi::xml_node layer, const LayerStyle& style);
void write_fields(pugi::xml_node layer, const LayerStyle& style, const Surroundings& around);
void write_form(pugi::xml_node layer, const LayerStyle& style, const Surroundings& around);
void write_lasting(pugi::xml_node layer, const LayerStyle& style);
/// All of the above, and what names and explains a row.
void write_layer_parts(pugi::xml_node layer, const LayerStyle& style, const Surroundings& around);

}  // namespace pipward::style::detail
