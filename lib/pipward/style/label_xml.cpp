// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/parts_xml.h"

namespace pipward::style::detail {
namespace {

// The desktop's own numbers for where a label stands.
constexpr int place_horizontal_in_area = 4;
constexpr int place_ordered_around_point = 6;

void write_text_style(pugi::xml_node settings, const LabelLook& look) {
    const auto style = xml::child(settings, "text-style");
    xml::set(style, "fieldName", look.expression);
    xml::set(style, "isExpression", "1");
    xml::set(style, "fontSize", xml::number(look.points));
    xml::set(style, "fontSizeUnit", "Point");
    xml::set(style, "fontWeight", look.bold ? "75" : "50");
    xml::set(style, "textColor", colour_text(look.ink));
    xml::set(style, "textOpacity", "1");
    xml::set(style, "multilineHeight", "1");
    const auto buffer = xml::child(style, "text-buffer");
    xml::set(buffer, "bufferDraw", "1");
    xml::set(buffer, "bufferSize", "0.6");
    xml::set(buffer, "bufferSizeUnits", "MM");
    xml::set(buffer, "bufferColor", "255,255,255,255");
    xml::set(buffer, "bufferOpacity", "0.85");
    xml::set(buffer, "bufferNoFill", "1");
}

void write_placement(pugi::xml_node settings, const LabelLook& look) {
    const auto placement = xml::child(settings, "placement");
    const bool inside = look.place == LabelPlace::inside_area;
    xml::set(placement, "placement", inside ? place_horizontal_in_area : place_ordered_around_point);
    xml::set(placement, "dist", xml::number(look.distance_mm));
    xml::set(placement, "distUnits", "MM");
    xml::set(placement, "offsetType", look.place == LabelPlace::at_start_of_line ? "0" : "1");
    xml::set(placement, "priority", look.priority);
    xml::set(placement, "fitInPolygonOnly", "0");
    if (look.place == LabelPlace::at_start_of_line) {
        xml::set(placement, "predefinedPositionOrder", "L,TL,BL");
        xml::set(placement, "geometryGenerator", "start_point($geometry)");
        xml::set(placement, "geometryGeneratorEnabled", "1");
        xml::set(placement, "geometryGeneratorType", "PointGeometry");
    } else {
        xml::set(placement, "predefinedPositionOrder",
                 look.place == LabelPlace::below_point ? "BR,BL,B,R,L" : "BR,TR,BL,TL,B,T,R,L");
    }
}

void write_rendering(pugi::xml_node settings, const LabelLook& look) {
    const auto rendering = xml::child(settings, "rendering");
    xml::set(rendering, "drawLabels", "1");
    xml::set(rendering, "scaleVisibility", "1");
    xml::set(rendering, "scaleMin", look.nearest);
    xml::set(rendering, "scaleMax", look.farthest);
    xml::set(rendering, "obstacle", "1");
    xml::set(rendering, "obstacleFactor", "1");
    xml::set(rendering, "displayAll", "0");
    xml::set(rendering, "upsidedownLabels", "0");
    xml::set(rendering, "fontMinPixelSize", "0");
    xml::set(rendering, "fontMaxPixelSize", "10000");
}

}  // namespace

void write_labels(pugi::xml_node layer, const LayerStyle& map_style) {
    if (!map_style.label) {
        return;
    }
    const auto labeling = xml::child(layer, "labeling");
    xml::set(labeling, "type", "simple");
    const auto settings = xml::child(labeling, "settings");
    write_text_style(settings, *map_style.label);
    write_placement(settings, *map_style.label);
    write_rendering(settings, *map_style.label);
}

}  // namespace pipward::style::detail
