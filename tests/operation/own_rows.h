// SPDX-License-Identifier: MIT
#pragma once

#include <ogrsf_frmts.h>

#include <stdexcept>
#include <string>
#include <vector>

namespace pipward::testing {

/// Changes rows of a book as a desktop would, behind the tool's back.
inline void change_rows(const std::string& book, const std::vector<std::string>& statements) {
    GDALAllRegister();
    auto* dataset =
        GDALDataset::Open(book.c_str(), GDAL_OF_VECTOR | GDAL_OF_UPDATE, nullptr, nullptr, nullptr);
    for (const auto& sql : statements) {
        CPLErrorReset();
        dataset->ReleaseResultSet(dataset->ExecuteSQL(sql.c_str(), nullptr, "SQLITE"));
        if (CPLGetLastErrorType() >= CE_Failure) {
            throw std::runtime_error(sql + ": " + CPLGetLastErrorMsg());
        }
    }
    GDALClose(dataset);
}

}  // namespace pipward::testing
