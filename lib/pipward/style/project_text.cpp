// SPDX-License-Identifier: MIT
#include "pipward/style/project_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/style/detail/host_form.h"
#include "pipward/style/detail/parts_xml.h"

namespace pipward::style {
namespace {

void write_crs(pugi::xml_node parent, const char* name, const ProjectStyle& project) {
    const auto crs = xml::child(xml::child(parent, name), "spatialrefsys");
    xml::text_child(crs, "wkt", project.crs_wkt);
    xml::text_child(crs, "authid", project.crs_code);
    xml::text_child(crs, "geographicflag", project.geographic ? "true" : "false");
}

void write_box(pugi::xml_node parent, const book::MapBox& box) {
    const auto extent = xml::child(parent, "extent");
    xml::text_child(extent, "xmin", xml::number(box.left));
    xml::text_child(extent, "ymin", xml::number(box.bottom));
    xml::text_child(extent, "xmax", xml::number(box.right));
    xml::text_child(extent, "ymax", xml::number(box.top));
}

// Some ground around the trees, so that the outermost do not stand at the edge.
book::MapBox with_margin(const book::MapBox& box) {
    const double across = std::max((box.right - box.left) * 0.08, 1e-5);
    const double along = std::max((box.top - box.bottom) * 0.08, 1e-5);
    return {box.left - across, box.bottom - along, box.right + across, box.top + along};
}

std::string source_of(const ProjectStyle& project, const std::string& table) {
    return fmt::format("./{}|layername={}", project.book_file, table);
}

void write_tree_layer(pugi::xml_node group, const ProjectStyle& project, const LayerStyle& style) {
    const auto node = xml::child(group, "layer-tree-layer");
    xml::set(node, "id", layer_id(style.table));
    xml::set(node, "name", style.title);
    xml::set(node, "source", source_of(project, style.table));
    xml::set(node, "providerKey", "ogr");
    xml::set(node, "checked", "Qt::Checked");
    xml::set(node, "expanded", style.rules.size() > 1 ? "1" : "0");
}

void write_layer_tree(pugi::xml_node root, const ProjectStyle& project) {
    const auto tree = xml::child(root, "layer-tree-group");
    for (const auto& group : project.groups) {
        const auto node = xml::child(tree, "layer-tree-group");
        xml::set(node, "name", group.title);
        xml::set(node, "checked", "Qt::Checked");
        xml::set(node, "expanded", group.open ? "1" : "0");
        for (const auto& layer : group.layers) {
            write_tree_layer(node, project, layer.style);
        }
    }
}

void write_relations(pugi::xml_node root, const ProjectStyle& project) {
    const auto relations = xml::child(root, "relations");
    for (const auto& relation : project.relations) {
        const auto node = xml::child(relations, "relation");
        xml::set(node, "id", relation.id);
        xml::set(node, "name", relation.title);
        xml::set(node, "referencingLayer", layer_id(relation.child));
        xml::set(node, "referencedLayer", layer_id(relation.parent));
        xml::set(node, "strength", "Association");
        for (const auto& column : relation.columns) {
            const auto pair = xml::child(node, "fieldRef");
            xml::set(pair, "referencingField", column.of_child);
            xml::set(pair, "referencedField", column.of_parent);
        }
    }
}

const char* geometry_name(book::GeometryKind kind) {
    switch (kind) {
        case book::GeometryKind::point:
            return "Point";
        case book::GeometryKind::line:
            return "Pedigree";
        case book::GeometryKind::polygon:
            return "Polygon";
        case book::GeometryKind::none:
            break;
    }
    return "No geometry";
}

detail::Surroundings surroundings_of(const ProjectStyle& project, const std::string& table) {
    detail::Surroundings around;
    for (const auto& group : project.groups) {
        for (const auto& layer : group.layers) {
            around.layer_ids[layer.style.table] = layer_id(layer.style.table);
        }
    }
    for (const auto& relation : project.relations) {
        if (relation.parent == table) {
            around.relations.push_back({relation.id, relation.title});
        }
    }
    return around;
}

void write_layer(pugi::xml_node layers, const ProjectStyle& project, const ProjectLayer& layer) {
    const auto& style = layer.style;
    const auto node = xml::child(layers, "maplayer");
    xml::set(node, "type", "vector");
    xml::set(node, "geometry", geometry_name(style.geometry));
    xml::set(node, "labelsEnabled", style.label ? "1" : "0");
    xml::set(node, "readOnly", style.read_only ? "1" : "0");
    if (layer.extent) {
        write_box(node, *layer.extent);
    }
    xml::text_child(node, "id", layer_id(style.table));
    xml::text_child(node, "datasource", source_of(project, style.table));
    xml::text_child(node, "layername", style.title);
    if (style.geometry != book::GeometryKind::none) {
        write_crs(node, "srs", project);
    }
    const auto provider = xml::child(node, "provider");
    xml::set(provider, "encoding", "UTF-8");
    provider.text().set("ogr");
    const auto styles = xml::child(node, "map-layer-style-manager");
    xml::set(styles, "current", "default");
    xml::set(xml::child(styles, "map-layer-style"), "name", "default");
    detail::write_layer_parts(node, style, surroundings_of(project, style.table));
}

void write_canvas(pugi::xml_node root, const ProjectStyle& project) {
    const auto canvas = xml::child(root, "mapcanvas");
    xml::set(canvas, "name", "theMapCanvas");
    xml::text_child(canvas, "units", project.geographic ? "degrees" : "meters");
    if (project.extent) {
        write_box(canvas, with_margin(*project.extent));
    }
    xml::text_child(canvas, "rotation", "0");
    write_crs(canvas, "destinationsrs", project);
}

void write_properties(pugi::xml_node root) {
    const auto properties = xml::child(root, "properties");
    const auto typed = [](pugi::xml_node parent, const char* name, const char* type, const char* value) {
        const auto node = xml::child(parent, name);
        xml::set(node, "type", type);
        node.text().set(value);
    };
    typed(xml::child(properties, "SpatialRefSys"), "ProjectionsEnabled", "int", "1");
    typed(xml::child(properties, "Paths"), "Absolute", "bool", "false");
    // Left out, the desktop takes white, which nobody sees on white.
    const auto interface = xml::child(properties, "Gui");
    typed(interface, "SelectionColorRedPart", "int", "255");
    typed(interface, "SelectionColorGreenPart", "int", "221");
    typed(interface, "SelectionColorBluePart", "int", "0");
    typed(interface, "SelectionColorAlphaPart", "int", "255");
}

// From first bloom to the end of bloom, a day a step.
void write_time(pugi::xml_node root, const ProjectStyle& project) {
    const auto time = xml::child(root, "ProjectTimeSettings");
    xml::set(time, "timeStepUnit", "d");
    xml::set(time, "timeStep", "1");
    xml::set(time, "frameRate", "2");
    xml::set(time, "cumulativeTemporalRange", "0");
    if (project.bloom) {
        const auto range = xml::child(time, "TemporalRange");
        xml::text_child(range, "start", to_iso(project.bloom->first_bloom) + "T00:00:00Z");
        xml::text_child(range, "end", to_iso(project.bloom->end_of_bloom) + "T00:00:00Z");
    }
}

}  // namespace

std::string project_text(const ProjectStyle& project) {
    pugi::xml_document document;
    document.append_child(pugi::node_doctype).set_value(detail::host_doctype);
    const auto root = document.append_child("qgis");
    xml::set(root, "version", detail::host_version);
    xml::set(root, "projectname", project.title);
    xml::text_child(root, "title", project.title);
    write_crs(root, "projectCrs", project);
    write_layer_tree(root, project);
    write_relations(root, project);
    write_canvas(root, project);
    const auto layers = xml::child(root, "projectlayers");
    for (const auto& group : project.groups) {
        for (const auto& layer : group.layers) {
            write_layer(layers, project, layer);
        }
    }
    write_properties(root);
    write_time(root, project);
    return xml::text_of(document);
}

}  // namespace pipward::style
