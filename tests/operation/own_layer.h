// SPDX-License-Identifier: MIT
#pragma once

#include <ogrsf_frmts.h>

#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace pipward::testing {

/// A feature of a breeder's own layer: its place as well-known text (empty for none) and its texts.
struct OwnFeature {
    std::string wkt;
    std::vector<std::string> texts;
};

/// Writes a layer as other programs would, by OGR itself. `epsg` 0 for no coordinate system.
inline void make_layer(const std::string& driver, const std::string& path, int epsg,
                       const std::vector<std::string>& fields, const std::vector<OwnFeature>& features,
                       const std::string& name = "own") {
    GDALAllRegister();
    auto* made = GetGDALDriverManager()->GetDriverByName(driver.c_str());
    GDALDataset* dataset =
        driver == "PostgreSQL"
            ? GDALDataset::Open(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_UPDATE, nullptr, nullptr, nullptr)
            : made->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr);
    OGRSpatialReference crs;
    if (epsg != 0) {
        crs.importFromEPSG(epsg);
        crs.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    }
    const auto kind =
        driver == "PostgreSQL" ? wkbPoint25D : wkbUnknown;  // a server keeps heights only of such
    auto* layer = dataset->CreateLayer(name.c_str(), epsg == 0 ? nullptr : &crs, kind, nullptr);
    for (const auto& field : fields) {
        OGRFieldDefn definition(field.c_str(), OFTString);
        layer->CreateField(&definition);
    }
    for (const auto& own : features) {
        OGRFeature feature(layer->GetLayerDefn());
        for (std::size_t i = 0; i < own.texts.size(); ++i) {
            if (!own.texts[i].empty()) {
                feature.SetField(static_cast<int>(i), own.texts[i].c_str());
            }
        }
        if (!own.wkt.empty()) {
            OGRGeometry* geometry = nullptr;
            OGRGeometryFactory::createFromWkt(own.wkt.c_str(), nullptr, &geometry);
            feature.SetGeometryDirectly(geometry);
        }
        if (layer->CreateFeature(&feature) != OGRERR_NONE) {
            throw std::runtime_error("the test's own layer could not be written");
        }
    }
    GDALClose(dataset);
}

inline void drop_layer(const std::string& server, const std::string& name) {
    auto* dataset =
        GDALDataset::Open(server.c_str(), GDAL_OF_VECTOR | GDAL_OF_UPDATE, nullptr, nullptr, nullptr);
    dataset->ExecuteSQL(("DROP TABLE " + name).c_str(), nullptr, nullptr);
    GDALClose(dataset);
}

}  // namespace pipward::testing
