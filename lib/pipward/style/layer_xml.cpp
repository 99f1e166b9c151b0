// SPDX-License-Identifier: MIT
#include "pipward/style/detail/parts_xml.h"

namespace pipward::style::detail {

// Mode 2 of the desktop: each row has a day of beginning and a day of end.
void write_lasting(pugi::xml_node layer, const LayerStyle& style) {
    const auto temporal = xml::child(layer, "temporal");
    xml::set(temporal, "enabled", style.lasting ? "1" : "0");
    xml::set(temporal, "mode", style.lasting ? "2" : "0");
    xml::set(temporal, "limitMode", "0");
    xml::set(temporal, "startField", style.lasting ? style.lasting->from : "");
    xml::set(temporal, "endField", style.lasting ? style.lasting->to : "");
    xml::set(temporal, "durationField", "");
    xml::set(temporal, "durationUnit", "d");
    xml::set(temporal, "fixedDuration", "0");
    xml::set(temporal, "accumulate", "0");
    xml::set(temporal, "startExpression", "");
    xml::set(temporal, "endExpression", "");
}

void write_layer_parts(pugi::xml_node layer, const LayerStyle& style, const Surroundings& around) {
    write_lasting(layer, style);
    write_renderer(layer, style);
    write_labels(layer, style);
    write_fields(layer, style, around);
    write_form(layer, style, around);
    xml::text_child(layer, "previewExpression", style.row_name);
    xml::text_child(layer, "mapTip", style.map_tip);
}

}  // namespace pipward::style::detail
