// SPDX-License-Identifier: MIT
#include "pipward/book/detail/layers.h"

#include <cpl_string.h>

#include <cmath>

namespace pipward::book::detail {
namespace {

OGRwkbGeometryType geometry_type(GeometryKind kind) {
    switch (kind) {
        case GeometryKind::point:
            return wkbPoint;
        case GeometryKind::line:
            return wkbLineString;
        case GeometryKind::polygon:
            return wkbPolygon;
        case GeometryKind::none:
            break;
    }
    return wkbNone;
}

CPLStringList layer_options(const LayerForm& form, bool server) {
    CPLStringList options;
    options.SetNameValue("FID", "fid");
    options.SetNameValue("GEOMETRY_NAME", "geom");
    options.SetNameValue("DESCRIPTION", form.description.c_str());
    if (server) {
        options.SetNameValue("SPATIAL_INDEX", "GIST");
        return options;
    }
    options.SetNameValue("IDENTIFIER", form.title.c_str());
    // Newer OGR leaves tables without geometry out of gpkg_contents where the file has others that are not in
    // it.
    options.SetNameValue("ASPATIAL_VARIANT", "GPKG_ATTRIBUTES");
    options.SetNameValue("SPATIAL_INDEX", form.indexed ? "YES" : "NO");
    return options;
}

Cell day_field(const OGRFeature& feature, int field) {
    int year = 0;
    int month = 0;
    int day = 0;
    int hour = 0;
    int minute = 0;
    int second = 0;
    int zone = 0;
    feature.GetFieldAsDateTime(field, &year, &month, &day, &hour, &minute, &second, &zone);
    return cell(make_day({year, month, day}));
}

std::optional<MapPoint> finite_point(const OGRPoint& point) {
    if (!std::isfinite(point.getX()) || !std::isfinite(point.getY())) {
        return std::nullopt;
    }
    MapPoint place{point.getX(), point.getY(), std::nullopt};
    if (point.Is3D() != 0 && std::isfinite(point.getZ())) {
        place.height = Metres{point.getZ()};
    }
    return place;
}

}  // namespace

OGRLayer* create_layer(Session& session, const LayerForm& form, const OGRSpatialReference& crs) {
    const auto before = session.messages->failures();
    auto system = crs;
    const auto options = layer_options(form, session.server);
    OGRLayer* layer = session.dataset->CreateLayer(
        form.name.c_str(), form.geometry == GeometryKind::none ? nullptr : &system,
        geometry_type(form.geometry), const_cast<char**>(options.List()));
    expect_success(session, before, layer == nullptr, "CreateLayer " + form.name);
    return layer;
}

void allow_heights(Session& session, const std::string& table) {
    if (!session.server) {
        run_sql(session,
                "UPDATE gpkg_geometry_columns SET z = 2 WHERE z = 0 AND table_name = " + quoted_text(table));
    }
}

OGRFieldType field_type(CellType type, OGRFieldType whole) {
    switch (type) {
        case CellType::whole:
            return whole;
        case CellType::number:
            return OFTReal;
        case CellType::day:
            return OFTDate;
        case CellType::yes_no:
            return OFTInteger;
        case CellType::text:
            break;
    }
    return OFTString;
}

CellType cell_type(const OGRFieldDefn& field) {
    switch (field.GetType()) {
        case OFTInteger:
        case OFTInteger64:
            return field.GetSubType() == OFSTBoolean ? CellType::yes_no : CellType::whole;
        case OFTReal:
            return CellType::number;
        case OFTDate:
        case OFTDateTime:
            return CellType::day;
        default:
            return CellType::text;
    }
}

void set_field(OGRFeature& feature, int field, const Cell& value) {
    struct Setter {
        OGRFeature& feature;
        int field;
        void operator()(std::monostate) const { feature.SetFieldNull(field); }
        void operator()(const std::string& text) const { feature.SetField(field, text.c_str()); }
        void operator()(std::int64_t number) const { feature.SetField(field, static_cast<GIntBig>(number)); }
        void operator()(double number) const { feature.SetField(field, number); }
        void operator()(bool yes) const { feature.SetField(field, yes ? 1 : 0); }
        void operator()(const Sentence& sentence) const { (*this)(sentence.text()); }
        void operator()(Day day) const {
            const auto parts = parts_of(day);
            feature.SetField(field, parts.year, parts.month, parts.day);
        }
    };
    std::visit(Setter{feature, field}, value);
}

Cell get_field(const OGRFeature& feature, int field) {
    if (!feature.IsFieldSetAndNotNull(field)) {
        return {};
    }
    switch (cell_type(*feature.GetFieldDefnRef(field))) {
        case CellType::whole:
            return static_cast<std::int64_t>(feature.GetFieldAsInteger64(field));
        case CellType::number:
            return feature.GetFieldAsDouble(field);
        case CellType::day:
            return day_field(feature, field);
        case CellType::yes_no:
            return feature.GetFieldAsInteger(field) != 0;
        case CellType::text:
            break;
    }
    return std::string(feature.GetFieldAsString(field));
}

std::int64_t create_feature(Session& session, OGRLayer& layer, OGRFeature& feature) {
    const auto before = session.messages->failures();
    expect_success(session, before, layer.CreateFeature(&feature) != OGRERR_NONE, "CreateFeature");
    return feature.GetFID();
}

bool is_taken(const OgrTrouble& trouble) {
    const std::string_view said = trouble.what();
    return said.find("UNIQUE constraint") != std::string_view::npos ||
           said.find("duplicate key") != std::string_view::npos;
}

OGRwkbGeometryType wanted_type(GeometryKind kind) {
    return kind == GeometryKind::line ? wkbLineString : kind == GeometryKind::polygon ? wkbPolygon : wkbPoint;
}

OGRPoint to_ogr(const MapPoint& point) {
    return point.height ? OGRPoint(point.x, point.y, point.height->value) : OGRPoint(point.x, point.y);
}

std::optional<MapPoint> to_map_point(const OGRGeometry* geometry) {
    if (geometry == nullptr || geometry->IsEmpty() != 0 ||
        wkbFlatten(geometry->getGeometryType()) != wkbPoint) {
        return std::nullopt;
    }
    return finite_point(*geometry->toPoint());
}

std::vector<MapPoint> to_map_line(const OGRGeometry* geometry) {
    std::vector<MapPoint> line;
    if (geometry == nullptr || wkbFlatten(geometry->getGeometryType()) != wkbLineString) {
        return line;
    }
    for (const auto& point : *geometry->toLineString()) {
        const auto place = finite_point(point);
        if (!place) {
            return {};
        }
        line.push_back(*place);
    }
    return line;
}

}  // namespace pipward::book::detail
