// SPDX-License-Identifier: MIT
#pragma once

#include <ogrsf_frmts.h>

#include <string>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/schema.h"

/// Inside of the room: layers and features of OGR in terms of our tables and cells.
namespace pipward::book::detail {

struct LayerForm {
    std::string name;
    std::string title;
    std::string description;
    GeometryKind geometry = GeometryKind::none;
    bool indexed = true;  ///< with a spatial index from the start
};

/// Makes a layer with its words, without fields. Throws OgrTrouble.
OGRLayer* create_layer(Session& session, const LayerForm& form, const OGRSpatialReference& crs);

/// Declares that points of the layer may have a height; OGR writes them without saying so.
void allow_heights(Session& session, const std::string& table);

/// How a cell type is stored; `whole` says which integer.
OGRFieldType field_type(CellType type, OGRFieldType whole);
/// The cell type that a stored field gives back.
CellType cell_type(const OGRFieldDefn& field);

/// Puts a cell into a feature; unknown becomes NULL.
void set_field(OGRFeature& feature, int field, const Cell& value);
/// The field as a cell of the type it is stored in; NULL and unset are unknown. A date that the calendar
/// does not have is unknown.
Cell get_field(const OGRFeature& feature, int field);

/// Adds the row and gives its number. Throws OgrTrouble.
std::int64_t create_feature(Session& session, OGRLayer& layer, OGRFeature& feature);
/// Whether a row was refused because another one has its name already.
bool is_taken(const OgrTrouble& trouble);

/// What the rows of a table are drawn as, without height.
OGRwkbGeometryType wanted_type(GeometryKind kind);

OGRPoint to_ogr(const MapPoint& point);
/// The point, or nothing where the geometry is none, empty, not finite or not a point.
std::optional<MapPoint> to_map_point(const OGRGeometry* geometry);
/// The points of a line, or nothing where the geometry is no line or has a point that is not finite.
std::vector<MapPoint> to_map_line(const OGRGeometry* geometry);

}  // namespace pipward::book::detail
