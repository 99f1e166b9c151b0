// SPDX-License-Identifier: MIT
#include <ogrsf_frmts.h>

#include "pipward/book/detail/results.h"
#include "pipward/book/detail/style_stamps.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/map_style.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

std::optional<MapBox> extent_of(OGRLayer& layer) {
    OGREnvelope box;
    if (layer.GetGeomType() == wkbNone || layer.GetFeatureCount() == 0 ||
        layer.GetExtent(&box, TRUE) != OGRERR_NONE) {
        return std::nullopt;
    }
    return MapBox{box.MinX, box.MinY, box.MaxX, box.MaxY};
}

void look_at_layer(detail::Session& session, std::string_view name, BookLook& look) {
    if (OGRLayer* layer = session.dataset->GetLayerByName(std::string(name).c_str())) {
        look.layers.push_back({std::string(name), layer->GetGeometryColumn(), extent_of(*layer)});
    }
}

std::string wkt_of(const OGRSpatialReference& crs) {
    char* text = nullptr;
    const char* const options[] = {"FORMAT=WKT2_2019", nullptr};
    const bool well = crs.exportToWkt(&text, options) == OGRERR_NONE;
    const std::string wkt = well && text != nullptr ? text : "";
    CPLFree(text);
    return wkt;
}

void look_at_crs(detail::Session& session, BookLook& look) {
    OGRLayer* trees = session.dataset->GetLayerByName("tree");
    const auto* crs = trees == nullptr ? nullptr : trees->GetSpatialRef();
    if (crs == nullptr) {
        return;
    }
    look.crs_wkt = wkt_of(*crs);
    look.geographic = crs->IsGeographic() != 0;
    const char* authority = crs->GetAuthorityName(nullptr);
    const char* code = crs->GetAuthorityCode(nullptr);
    if (authority != nullptr && code != nullptr) {
        look.crs_code = std::string(authority) + ":" + code;
    }
}

}  // namespace

BookLook look_at_book(const BookAt& book) {
    BookLook look;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        look = {};
        for (const auto& table : book_tables()) {
            look_at_layer(session, table.name, look);
        }
        for (const auto name : result_table_names()) {
            if (detail::is_result(session, std::string(name))) {
                look_at_layer(session, name, look);
            }
        }
        look_at_crs(session, look);
        look.styled = detail::carries_our_style(session);
    });
    return look;
}

}  // namespace pipward::book
