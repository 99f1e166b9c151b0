// SPDX-License-Identifier: MIT
#include "pipward/paper/gps_files.h"

#include <fmt/format.h>

#include <algorithm>
#include <pugixml.hpp>
#include <sstream>

#include "pipward/paper/detail/map_marks.h"
#include "pipward/paper/text.h"
#include "pipward/record/words.h"

namespace pipward::paper {
namespace {

// Seven decimals of a degree are about a centimetre.
std::string degrees(double angle) {
    return fmt::format("{:.7f}", angle);
}

// GPX has no 180 degrees east: it is 180 west.
double half_open(double lon) {
    return lon >= 180 ? lon - 360 : lon;
}

void put(pugi::xml_node parent, const char* name, const std::string& text) {
    if (!text.empty()) {
        parent.append_child(name).text().set(clean_text(text).c_str());
    }
}

std::string written(const pugi::xml_document& document) {
    std::ostringstream text;
    document.save(text, "  ", pugi::format_default, pugi::encoding_utf8);
    return text.str();
}

pugi::xml_node begun(pugi::xml_document& document, const char* root, const char* space) {
    auto declaration = document.append_child(pugi::node_declaration);
    declaration.append_attribute("version") = "1.0";
    declaration.append_attribute("encoding") = "UTF-8";
    auto node = document.append_child(root);
    node.append_attribute("xmlns") = space;
    return node;
}

// The children stand in the order of the schema.
void put_gpx_point(pugi::xml_node parent, const char* name, const Waypoint& point) {
    auto node = parent.append_child(name);
    node.append_attribute("lat") = degrees(point.lat).c_str();
    node.append_attribute("lon") = degrees(half_open(point.lon)).c_str();
    if (point.elevation) {
        put(node, "ele", fmt::format("{:.2f}", point.elevation->value));
    }
    put(node, "name", point.name);
    put(node, "desc", point.description);
    put(node, "type", std::string(to_word(point.purpose)));
}

std::string place_text(const Waypoint& point) {
    return degrees(point.lon) + "," + degrees(point.lat);
}

// KML writes colours from the back: opacity, blue, green, red.
std::string kml_colour(const Paint& paint) {
    return fmt::format("ff{:02x}{:02x}{:02x}", paint.blue, paint.green, paint.red);
}

void put_style(pugi::xml_node document, TreePurpose purpose) {
    auto style = document.append_child("Style");
    style.append_attribute("id") = std::string(to_word(purpose)).c_str();
    put(style.append_child("IconStyle"), "color", kml_colour(detail::fill_of(purpose)));
}

void put_placemark(pugi::xml_node parent, const Waypoint& point) {
    auto mark = parent.append_child("Placemark");
    put(mark, "name", point.name);
    // Readers of KML take a description for HTML (OGC 07-147r2, 9.1.3.10).
    put(mark, "description", escape_markup(point.description));
    put(mark, "styleUrl", fmt::format("#{}", to_word(point.purpose)));
    put(mark.append_child("Point"), "coordinates", place_text(point));
}

void put_route(pugi::xml_node document, const GpsFile& file) {
    auto mark = document.append_child("Placemark");
    put(mark, "name", file.name);
    std::string line;
    for (const auto& point : file.route) {
        line += (line.empty() ? "" : " ") + place_text(point);
    }
    auto way = mark.append_child("LineString");
    put(way, "tessellate", "1");
    put(way, "coordinates", line);
}

std::vector<std::string> folders_of(const std::vector<Waypoint>& points) {
    std::vector<std::string> folders;
    for (const auto& point : points) {
        if (std::ranges::find(folders, point.folder) == folders.end()) {
            folders.push_back(point.folder);
        }
    }
    return folders;
}

}  // namespace

std::string gpx_text(const GpsFile& file) {
    pugi::xml_document document;
    auto gpx = begun(document, "gpx", "http://www.topografix.com/GPX/1/1");
    gpx.append_attribute("version") = "1.1";
    gpx.append_attribute("creator") = "Pipward";
    put(gpx.append_child("metadata"), "name", file.name);
    for (const auto& point : file.waypoints) {
        put_gpx_point(gpx, "wpt", point);
    }
    if (!file.route.empty()) {
        auto route = gpx.append_child("rte");
        put(route, "name", file.name);
        for (const auto& point : file.route) {
            put_gpx_point(route, "rtept", point);
        }
    }
    return written(document);
}

std::string kml_text(const GpsFile& file) {
    pugi::xml_document document;
    auto kml = begun(document, "kml", "http://www.opengis.net/kml/2.2").append_child("Document");
    put(kml, "name", file.name);
    for (const auto& word : words(TreePurpose{})) {
        put_style(kml, word.value);
    }
    for (const auto& name : folders_of(file.waypoints)) {
        auto folder = name.empty() ? kml : kml.append_child("Folder");
        if (!name.empty()) {
            put(folder, "name", name);
        }
        for (const auto& point : file.waypoints) {
            if (point.folder == name) {
                put_placemark(folder, point);
            }
        }
    }
    if (!file.route.empty()) {
        put_route(kml, file);
    }
    return written(document);
}

}  // namespace pipward::paper
