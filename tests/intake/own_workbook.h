// SPDX-License-Identifier: MIT
#pragma once

#include <ogrsf_frmts.h>

#include <string>
#include <vector>

/// Workbooks as spreadsheets save them.
namespace pipward::testing {

/// The bytes of a workbook ("XLSX" or "ODS") of sheets Sheet1, Sheet2 ... that all hold these lines.
inline std::string workbook(const std::string& driver, const std::vector<std::vector<std::string>>& lines,
                            int sheets = 1) {
    GDALAllRegister();
    std::size_t width = 0;
    for (const auto& line : lines) {
        width = std::max(width, line.size());
    }
    const std::string path = driver == "XLSX" ? "/vsimem/own_workbook.xlsx" : "/vsimem/own_workbook.ods";
    auto* dataset = GetGDALDriverManager()
                        ->GetDriverByName(driver.c_str())
                        ->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr);
    for (int sheet = 1; sheet <= sheets; ++sheet) {
        auto* layer =
            dataset->CreateLayer(("Sheet" + std::to_string(sheet)).c_str(), nullptr, wkbNone, nullptr);
        for (std::size_t i = 0; i < width; ++i) {
            // The writer makes a first line of the fields' names.
            OGRFieldDefn field(i < lines.front().size() ? lines.front()[i].c_str() : "", OFTString);
            layer->CreateField(&field);
        }
        for (std::size_t line = 1; line < lines.size(); ++line) {
            OGRFeature feature(layer->GetLayerDefn());
            for (std::size_t i = 0; i < lines[line].size(); ++i) {
                feature.SetField(static_cast<int>(i), lines[line][i].c_str());
            }
            if (layer->CreateFeature(&feature) != OGRERR_NONE) {
                return {};
            }
        }
    }
    GDALClose(dataset);
    vsi_l_offset size = 0;
    auto* bytes = VSIGetMemFileBuffer(path.c_str(), &size, FALSE);
    std::string result(reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(size));
    VSIUnlink(path.c_str());
    return result;
}

}  // namespace pipward::testing
