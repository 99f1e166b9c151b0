// SPDX-License-Identifier: MIT
#include "pipward/dress/detail/parts_xml.h"

namespace pipward::dress::detail {

// Mode 2 of the desktop: each row has a day of beginning and a day of end.
void write_lasting(pugi::xml_node layer, const LayerDress& dress) {
    const auto temporal = xml::child(layer, "temporal");
    xml::set(temporal, "enabled", dress.lasting ? "1" : "0");
    xml::set(temporal, "mode", dress.lasting ? "2" : "0");
    xml::set(temporal, "limitMode", "0");
    xml::set(temporal, "startField", dress.lasting ? dress.lasting->from : "");
    xml::set(temporal, "endField", dress.lasting ? dress.lasting->to : "");
    xml::set(temporal, "durationField", "");
    xml::set(temporal, "durationUnit", "d");
    xml::set(temporal, "fixedDuration", "0");
    xml::set(temporal, "accumulate", "0");
    xml::set(temporal, "startExpression", "");
    xml::set(temporal, "endExpression", "");
}

void write_layer_parts(pugi::xml_node layer, const LayerDress& dress, const Surroundings& around) {
    write_lasting(layer, dress);
    write_renderer(layer, dress);
    write_labels(layer, dress);
    write_fields(layer, dress, around);
    write_form(layer, dress, around);
    xml::text_child(layer, "previewExpression", dress.row_name);
    xml::text_child(layer, "mapTip", dress.map_tip);
}

}  // namespace pipward::dress::detail
