// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/palette.h"
#include "pipward/style/detail/parts_xml.h"

namespace pipward::style::detail {
namespace {

const char* shape_name(MarkerShape shape) {
    switch (shape) {
        case MarkerShape::square:
            return "square";
        case MarkerShape::triangle:
            return "triangle";
        case MarkerShape::diamond:
            return "diamond";
        case MarkerShape::star:
            return "star";
        case MarkerShape::pentagon:
            return "pentagon";
        case MarkerShape::cross:
            return "cross2";
        case MarkerShape::circle:
            break;
    }
    return "circle";
}

constexpr int by_expression = 3;  // the desktop's kind of a calculated property
constexpr auto growing_unit = "RenderMetersInMapUnits";

// "3x:" nearest scale, farthest scale, then the bounds in millimetres, each after a 1 that switches it on.
std::string bounds(const GrowingSize& size) {
    return fmt::format("3x:0,0,1,{},1,{}", xml::number(size.least_mm), xml::number(size.most_mm));
}

pugi::xml_node add_symbol(pugi::xml_node parent, const std::string& name, const char* type) {
    auto symbol = xml::child(parent, "symbol");
    xml::set(symbol, "type", type);
    xml::set(symbol, "name", name);
    xml::set(symbol, "alpha", "1");
    xml::set(symbol, "clip_to_extent", "1");
    xml::set(symbol, "force_rhr", "0");
    return symbol;
}

pugi::xml_node add_symbol_layer(pugi::xml_node symbol, const char* kind) {
    auto layer = xml::child(symbol, "layer");
    xml::set(layer, "class", kind);
    xml::set(layer, "enabled", "1");
    xml::set(layer, "locked", "0");
    xml::set(layer, "pass", "0");
    return layer;
}

struct SymbolWriter {
    pugi::xml_node parent;
    std::string name;

    void operator()(const MarkerLook& look) const {
        const auto symbol = add_symbol(parent, name, "marker");
        if (look.on_disc) {
            add_marker(symbol, disc_behind(look));
        }
        add_marker(symbol, look);
    }

    // Every mark of a place has the same, so that the one above hides those below it whole.
    static MarkerLook disc_behind(const MarkerLook& look) {
        constexpr double growth = 1.5;
        MarkerLook disc = look;
        disc.shape = MarkerShape::circle;
        disc.fill = ink::white;
        disc.size = {growth * look.size.metres, growth * look.size.least_mm, growth * look.size.most_mm};
        return disc;
    }

    static void add_marker(pugi::xml_node symbol, const MarkerLook& look) {
        const auto layer = add_symbol_layer(symbol, "SimpleMarker");
        const auto map = xml::option_map(layer);
        xml::option(map, "name", shape_name(look.shape));
        xml::option(map, "color", colour_text(look.fill));
        xml::option(map, "outline_color", colour_text(look.edge));
        xml::option(map, "outline_style", "solid");
        xml::option(map, "outline_width", xml::number(look.edge_width.metres));
        xml::option(map, "outline_width_unit", growing_unit);
        xml::option(map, "outline_width_map_unit_scale", bounds(look.edge_width));
        xml::option(map, "size", xml::number(look.size.metres));
        xml::option(map, "size_unit", growing_unit);
        xml::option(map, "size_map_unit_scale", bounds(look.size));
        xml::option(map, "scale_method", "diameter");
        xml::option(map, "offset_unit", "MM");
        xml::option(map, "joinstyle", "miter");
        if (look.aside_mm != 0 || look.above_mm != 0) {
            add_offset(layer, look);
        }
    }

    void operator()(const LineLook& look) const {
        const auto symbol = add_symbol(parent, name, "line");
        const auto map = xml::option_map(add_symbol_layer(symbol, "SimpleLine"));
        xml::option(map, "line_color", colour_text(look.ink));
        xml::option(map, "line_style", "solid");
        xml::option(map, "line_width", xml::number(look.width_mm));
        xml::option(map, "line_width_unit", "MM");
        xml::option(map, "capstyle", "round");
        if (look.arrow) {
            add_arrow(symbol, look);
        }
    }

    void operator()(const AreaLook& look) const {
        const auto symbol = add_symbol(parent, name, "fill");
        const auto map = xml::option_map(add_symbol_layer(symbol, "SimpleFill"));
        xml::option(map, "color", colour_text(look.fill));
        xml::option(map, "style", "solid");
        xml::option(map, "outline_color", colour_text(look.edge));
        xml::option(map, "outline_style", "solid");
        xml::option(map, "outline_width", xml::number(look.edge_mm));
        xml::option(map, "outline_width_unit", "MM");
        xml::option(map, "joinstyle", "round");
    }

    // Calculated for each row, so that the legend, which has no rows, shows the symbol in its middle.
    static void add_offset(pugi::xml_node layer, const MarkerLook& look) {
        const auto all = xml::option_map(xml::child(layer, "data_defined_properties"));
        xml::option(all, "name", "");
        xml::option(all, "type", "collection");
        const auto offset = named_map(named_map(all, "properties"), "offset");
        xml::flag_option(offset, "active", true);
        xml::number_option(offset, "type", by_expression, true);
        xml::option(offset, "expression",
                    fmt::format("CASE WHEN $id IS NULL THEN '0,0' ELSE '{},{}' END",
                                xml::number(look.aside_mm), xml::number(0 - look.above_mm)));
    }

    static pugi::xml_node named_map(pugi::xml_node parent, const char* name) {
        const auto map = xml::option_map(parent);
        xml::set(map, "name", name);
        return map;
    }

    // The head lies a little beyond the last tree, so that the tree does not hide it.
    void add_arrow(pugi::xml_node symbol, const LineLook& look) const {
        const auto layer = add_symbol_layer(symbol, "MarkerLine");
        const auto map = xml::option_map(layer);
        xml::option(map, "placement", "lastvertex");
        xml::option(map, "rotate", "1");
        const auto head = add_symbol(layer, "@" + name + "@1", "marker");
        const auto head_map = xml::option_map(add_symbol_layer(head, "SimpleMarker"));
        xml::option(head_map, "name", "filled_arrowhead");
        xml::option(head_map, "color", colour_text(look.ink));
        xml::option(head_map, "outline_color", colour_text(look.ink));
        xml::option(head_map, "outline_style", "no");
        xml::option(head_map, "size", "2.4");
        xml::option(head_map, "size_unit", "MM");
        xml::option(head_map, "offset", "5,0");
        xml::option(head_map, "offset_unit", "MM");
    }
};

void write_symbols(pugi::xml_node renderer, const std::vector<RuleLook>& rules) {
    const auto symbols = xml::child(renderer, "symbols");
    for (std::size_t i = 0; i < rules.size(); ++i) {
        std::visit(SymbolWriter{symbols, std::to_string(i)}, rules[i].look);
    }
}

pugi::xml_node add_renderer(pugi::xml_node layer, const char* type, const std::string& weight) {
    auto renderer = xml::child(layer, "renderer-v2");
    xml::set(renderer, "type", type);
    xml::set(renderer, "forceraster", "0");
    xml::set(renderer, "symbollevels", "0");
    xml::set(renderer, "enableorderby", weight.empty() ? "0" : "1");
    xml::set(renderer, "referencescale", "-1");
    return renderer;
}

}  // namespace

std::string colour_text(const Ink& ink) {
    return fmt::format("{},{},{},{}", ink.red, ink.green, ink.blue, ink.opacity);
}

void write_renderer(pugi::xml_node layer, const LayerStyle& style) {
    if (style.rules.empty()) {
        return;
    }
    const auto renderer = add_renderer(layer, "RuleRenderer", style.weight);
    const auto rules = xml::child(renderer, "rules");
    xml::set(rules, "key", fmt::format("{{pipward-{}}}", style.table));
    for (std::size_t i = 0; i < style.rules.size(); ++i) {
        auto rule = xml::child(rules, "rule");
        xml::set(rule, "key", fmt::format("{{pipward-{}-{}}}", style.table, i));
        xml::set(rule, "symbol", i);
        xml::set(rule, "label", style.rules[i].words);
        if (style.rules[i].farthest > 0) {
            xml::set(rule, "scalemindenom", 1);
            xml::set(rule, "scalemaxdenom", style.rules[i].farthest);
        }
        if (!style.rules[i].filter.empty()) {
            xml::set(rule, "filter", style.rules[i].filter);
        }
    }
    write_symbols(renderer, style.rules);
    if (!style.weight.empty()) {
        auto clause = xml::child(xml::child(renderer, "orderby"), "orderByClause");
        xml::set(clause, "asc", "1");
        xml::set(clause, "nullsFirst", "1");
        clause.text().set(style.weight.c_str());
    }
}

}  // namespace pipward::style::detail
