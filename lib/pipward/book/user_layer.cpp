// SPDX-License-Identifier: MIT
#include "pipward/book/user_layer.h"

#include <cpl_string.h>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/location.h"
#include "pipward/book/detail/no_network.h"
#include "pipward/value/plain_text.h"
#include "pipward/value/sentence.h"

namespace pipward::book {
namespace {

/// What is wanted of a layer: places alone, or all that its rows hold.
enum class Wanted { places, rows };

Finding left_out(const UserLayer& layer, const std::string& feature, Sentence message) {
    return {Level::warning, layer.name, feature, {}, {}, std::move(message), say("It was left out.")};
}

void add_area(const OGRPolygon& polygon, UserFeature feature, UserLayer& layer) {
    feature.is_area = true;
    feature.has_holes = polygon.getNumInteriorRings() > 0;
    feature.points = detail::to_map_line(polygon.getExteriorRing());
    if (feature.points.empty()) {
        layer.findings.push_back(
            left_out(layer, feature.name, say("It has a coordinate that is no finite number.")));
    } else {
        layer.features.push_back(std::move(feature));
    }
}

void add_geometry(const OGRGeometry* geometry, UserFeature feature, UserLayer& layer,
                  Wanted wanted = Wanted::places) {
    const auto kind = geometry == nullptr ? wkbNone : wkbFlatten(geometry->getGeometryType());
    const bool no_place = geometry == nullptr || geometry->IsEmpty() != 0;
    if (no_place && wanted == Wanted::rows) {
        layer.features.push_back(std::move(feature));
    } else if (kind == wkbPolygon && wanted == Wanted::rows) {
        add_area(*geometry->toPolygon(), std::move(feature), layer);
    } else if (no_place) {
        layer.findings.push_back(left_out(layer, feature.name, say("It has no location on the map.")));
    } else if (kind == wkbPoint) {
        if (const auto point = detail::to_map_point(geometry)) {
            feature.points = {*point};
            layer.features.push_back(std::move(feature));
        } else {
            layer.findings.push_back(
                left_out(layer, feature.name, say("It has a coordinate that is no finite number.")));
        }
    } else if (kind == wkbLineString) {
        feature.is_line = true;
        feature.points = detail::to_map_line(geometry);
        if (feature.points.empty()) {
            layer.findings.push_back(
                left_out(layer, feature.name, say("It has a coordinate that is no finite number.")));
        } else {
            layer.features.push_back(std::move(feature));
        }
    } else if (kind == wkbMultiPoint || kind == wkbMultiLineString || kind == wkbGeometryCollection ||
               (kind == wkbMultiPolygon && wanted == Wanted::rows)) {
        for (const auto* part : *geometry->toGeometryCollection()) {
            add_geometry(part, feature, layer, wanted);
        }
    } else {
        layer.findings.push_back(
            left_out(layer, feature.name,
                     say("It is neither a point nor a line but {}.", geometry->getGeometryName())));
    }
}

std::string crs_of(const OGRLayer& layer) {
    const auto* crs = const_cast<OGRLayer&>(layer).GetSpatialRef();
    if (crs == nullptr) {
        return {};
    }
    const char* authority = crs->GetAuthorityName(nullptr);
    const char* code = crs->GetAuthorityCode(nullptr);
    if (authority != nullptr && code != nullptr) {
        return fmt::format("{}:{}", authority, code);
    }
    char* text = nullptr;
    crs->exportToWkt(&text);
    const std::string wkt = text == nullptr ? "" : text;
    CPLFree(text);
    return wkt;
}

// Without these OGR takes a CSV's coordinates for mere numbers.
CPLStringList open_options(Wanted wanted) {
    CPLStringList options;
    options.SetNameValue("GEOM_POSSIBLE_NAMES", "wkt,geom*,the_geom");
    if (wanted == Wanted::rows) {
        return options;
    }
    options.SetNameValue("X_POSSIBLE_NAMES", "x,lon,long,longitude,easting,east,e");
    options.SetNameValue("Y_POSSIBLE_NAMES", "y,lat,latitude,northing,north,n");
    options.SetNameValue("Z_POSSIBLE_NAMES", "z,height,elevation,height_m,elevation_m");
    return options;
}

// Formats that hold a layer themselves. Others, such as virtual layers and descriptions of services, send the
// library on to other files and to the network, or run what stands in them.
constexpr std::array<const char*, 18> layer_drivers{
    "GPKG", "ESRI Shapefile", "GeoJSON", "GeoJSONSeq",   "TopoJSON",   "CSV",
    "KML",  "LIBKML",         "GPX",     "GML",          "FlatGeobuf", "SQLite",
    "DXF",  "XLSX",           "ODS",     "MapInfo File", "PostgreSQL", nullptr};

bool is_csv(GDALDataset& dataset) {
    return dataset.GetDriver() != nullptr && EQUAL(dataset.GetDriver()->GetDescription(), "CSV");
}

detail::DatasetHandle opened(const std::string& file, Wanted wanted, const detail::OgrMessages& messages) {
    GDALAllRegister();
    detail::refuse_what_is_not_at_hand(file);
    const auto location = detail::as_opened(file);
    detail::DatasetHandle dataset(GDALDataset::Open(location.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY,
                                                    layer_drivers.data(), nullptr, nullptr));
    if (dataset != nullptr && is_csv(*dataset)) {
        const auto options = open_options(wanted);
        dataset.reset(GDALDataset::Open(file.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, nullptr,
                                        options.List(), nullptr));
    }
    if (dataset == nullptr) {
        const auto said = detail::without_secrets(messages.failures_since(0), file);
        throw detail::access_error(
            shown_location(file),
            said.empty() ? say("The file cannot be opened as a layer.")
                         : say("The file cannot be opened as a layer: {}.", said),
            say("Name a GeoPackage, a Shapefile, a GeoJSON or a CSV file with coordinates."));
    }
    return dataset;
}

// The one layer that has features; null where none or several have.
OGRLayer* only_filled(GDALDataset& dataset) {
    OGRLayer* filled = nullptr;
    for (auto* layer : dataset.GetLayers()) {
        if (layer->GetFeatureCount() > 0) {
            if (filled != nullptr) {
                return nullptr;
            }
            filled = layer;
        }
    }
    return filled;
}

OGRLayer& chosen_layer(GDALDataset& dataset, const std::string& file, const std::string& wanted) {
    std::vector<std::string> names;
    for (auto* layer : dataset.GetLayers()) {
        names.emplace_back(layer->GetName());
    }
    if (!wanted.empty()) {
        if (OGRLayer* layer = dataset.GetLayerByName(wanted.c_str())) {
            return *layer;
        }
        throw detail::access_error(shown_location(file), say("The file has no layer {}.", wanted),
                                   say("It has: {}.", fmt::format("{}", fmt::join(names, ", "))));
    }
    // A receiver's file has five layers, most of them empty.
    if (OGRLayer* filled = only_filled(dataset); names.size() > 1 && filled != nullptr) {
        return *filled;
    }
    if (names.size() != 1) {
        throw Error(
            Trouble::usage,
            Finding{Level::error,
                    shown_location(file),
                    {},
                    "layer",
                    {},
                    names.empty() ? say("The file has no layer.") : say("The file has several layers."),
                    say("Name one of: {}.", fmt::format("{}", fmt::join(names, ", ")))});
    }
    return *dataset.GetLayer(0);
}

bool is_utf8(const std::string& text) {
    return CPLIsUTF8(text.c_str(), static_cast<int>(text.size())) != 0;
}

// A text that nobody can read would be lost without a word.
void add_texts(const OGRFeature& source, UserFeature& feature, UserLayer& layer, Wanted wanted) {
    for (int field = 0; field < source.GetFieldCount(); ++field) {
        const auto text = to_text(detail::get_field(source, field));
        const std::string name = source.GetFieldDefnRef(field)->GetNameRef();
        if (!text.empty() && is_utf8(text)) {
            feature.texts[name] = text;
        } else if (!text.empty() && wanted == Wanted::rows) {
            layer.findings.push_back({Level::error,
                                      layer.name,
                                      feature.name,
                                      name,
                                      {},
                                      say("The text has letters that are not UTF-8."),
                                      say("Save the layer again with the encoding UTF-8.")});
        }
    }
}

// Of two fields of one name only one could be told from the other by its place.
void read_columns(const OGRFeatureDefn& definition, UserLayer& layer, Wanted wanted) {
    for (int field = 0; field < definition.GetFieldCount(); ++field) {
        const std::string name = definition.GetFieldDefn(field)->GetNameRef();
        if (wanted == Wanted::rows && std::ranges::find(layer.columns, name) != layer.columns.end()) {
            layer.findings.push_back({Level::error,
                                      layer.name,
                                      {},
                                      name,
                                      {},
                                      say("The layer has two fields of this name."),
                                      say("Give each a name of its own.")});
        }
        layer.columns.push_back(name);
    }
}

UserLayer read(const std::string& file, const std::string& layer, Wanted wanted) {
    const detail::OgrMessages messages;
    const detail::NoNetwork alone;
    const auto dataset = opened(file, wanted, messages);
    auto& source = chosen_layer(*dataset, file, layer);
    UserLayer result{.name = source.GetName(), .crs = crs_of(source)};
    read_columns(*source.GetLayerDefn(), result, wanted);
    const auto before = messages.failures();
    int number = 0;
    for (const auto& feature : source) {
        UserFeature made{.name = fmt::format("feature {}", ++number)};
        add_texts(*feature, made, result, wanted);
        add_geometry(feature->GetGeometryRef(), std::move(made), result, wanted);
    }
    if (messages.failures() > before) {
        throw detail::access_error(
            shown_location(file),
            say("The layer could be read only in part: {}", messages.failures_since(before)),
            say("The file is damaged: get it again."));
    }
    return result;
}

Error no_points(const std::string& text, const std::string& parameter) {
    return {Trouble::usage,
            Finding{Level::error,
                    {},
                    {},
                    parameter,
                    text,
                    say("This is no line and no list of points."),
                    say("Write the points as in \"522400 5331200, 522440 5331210\", or well-known text.")}};
}

std::string as_wkt(std::string text) {
    if (!text.empty() &&
        (std::isdigit(static_cast<unsigned char>(text[0])) != 0 || text[0] == '-' || text[0] == '+')) {
        std::ranges::replace(text, ';', ',');
        const auto numbers = CPLStringList(CSLTokenizeString2(text.c_str(), ",", 0));
        const auto first =
            numbers.Count() > 0 ? CPLStringList(CSLTokenizeString2(numbers[0], " \t", 0)) : CPLStringList();
        return fmt::format("LINESTRING {}({})", first.Count() == 3 ? "Z " : "", text);
    }
    return text;
}

}  // namespace

UserLayer read_user_layer(const std::string& file, const std::string& layer) {
    return read(file, layer, Wanted::places);
}

UserLayer read_user_rows(const std::string& file, const std::string& layer) {
    return read(file, layer, Wanted::rows);
}

void add_row(UserLayer& layer, UserFeature feature, const std::string& wkt) {
    const detail::OgrMessages quiet;
    OGRGeometry* geometry = nullptr;
    const char* rest = wkt.c_str();
    const auto trouble =
        wkt.empty() ? OGRERR_NONE : OGRGeometryFactory::createFromWkt(&rest, nullptr, &geometry);
    const std::unique_ptr<OGRGeometry> owned(geometry);
    if (trouble != OGRERR_NONE) {
        layer.findings.push_back({Level::error,
                                  layer.name,
                                  feature.name,
                                  {},
                                  wkt,
                                  say("This is no well-known text of a location."),
                                  say("Correct it, or remove the column.")});
    }
    add_geometry(owned.get(), std::move(feature), layer, Wanted::rows);
}

UserLayer user_layer_of(const std::string& text, const std::string& parameter) {
    const detail::OgrMessages quiet;
    const auto wkt = as_wkt(std::string(trimmed(text)));
    OGRGeometry* geometry = nullptr;
    const char* rest = wkt.c_str();
    const auto trouble = OGRGeometryFactory::createFromWkt(&rest, nullptr, &geometry);
    const std::unique_ptr<OGRGeometry> owned(geometry);
    if (trouble != OGRERR_NONE || owned == nullptr || !trimmed(rest).empty()) {
        throw no_points(text, parameter);
    }
    UserLayer layer;
    add_geometry(owned.get(), {.name = {}}, layer);
    if (layer.features.empty()) {
        throw no_points(text, parameter);
    }
    return layer;
}

}  // namespace pipward::book
