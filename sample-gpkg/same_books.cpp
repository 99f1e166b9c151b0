// SPDX-License-Identifier: MIT
// Tells whether two books hold the same: same_books A B. Layers, fields and rows are compared as OGR reads
// them; bytes are not, for the database library writes its own version into the file.
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <cstdio>
#include <set>
#include <string>

namespace {

int differences = 0;

void differs(const std::string& where, const std::string& how) {
    if (++differences <= 20) {
        fmt::print(stderr, "{}: {}\n", where, how);
    }
}

std::set<std::string> layer_names(GDALDataset& book) {
    std::set<std::string> names;
    for (auto* layer : book.GetLayers()) {
        names.insert(layer->GetName());
    }
    return names;
}

std::string in_words(OGRFeature& feature) {
    std::string text = fmt::format("fid {}", feature.GetFID());
    for (int i = 0; i < feature.GetFieldCount(); ++i) {
        text += feature.IsFieldSetAndNotNull(i) ? fmt::format(", {}", feature.GetFieldAsString(i)) : ", -";
    }
    return text;
}

/// Two definitions are equal in what a field is called, holds and may hold.
bool same_fields(OGRFeatureDefn& a, OGRFeatureDefn& b) {
    return a.IsSame(&b) != 0;
}

bool same_rows(OGRFeature& a, OGRFeature& b) {
    OGRFeature as_a(a.GetDefnRef());
    as_a.SetFrom(&b, TRUE);
    as_a.SetFID(b.GetFID());
    return a.Equal(&as_a) != 0;
}

void compare_layers(OGRLayer& a, OGRLayer& b) {
    const std::string name = a.GetName();
    if (!same_fields(*a.GetLayerDefn(), *b.GetLayerDefn())) {
        differs(name, "other columns");
        return;
    }
    if (a.GetFeatureCount() != b.GetFeatureCount()) {
        differs(name, fmt::format("{} rows and {}", a.GetFeatureCount(), b.GetFeatureCount()));
        return;
    }
    a.ResetReading();
    b.ResetReading();
    while (auto* row = a.GetNextFeature()) {
        const OGRFeatureUniquePtr mine(row);
        const OGRFeatureUniquePtr yours(b.GetNextFeature());
        if (!yours || !same_rows(*mine, *yours)) {
            differs(name,
                    fmt::format("'{}' and '{}'", in_words(*mine), yours ? in_words(*yours) : "nothing"));
        }
    }
}

GDALDatasetUniquePtr opened(const char* path) {
    return GDALDatasetUniquePtr(GDALDataset::Open(path, GDAL_OF_VECTOR | GDAL_OF_READONLY));
}

}  // namespace

int main(int count, char** words) {
    if (count != 3) {
        fmt::print(stderr, "usage: same-books A.gpkg B.gpkg\n");
        return 2;
    }
    GDALAllRegister();
    const auto a = opened(words[1]);
    const auto b = opened(words[2]);
    if (!a || !b) {
        fmt::print(stderr, "could not open {}\n", a ? words[2] : words[1]);
        return 3;
    }
    if (layer_names(*a) != layer_names(*b)) {
        differs("layers", "other names");
    }
    for (const auto& name : layer_names(*a)) {
        auto* mine = a->GetLayerByName(name.c_str());
        if (auto* yours = b->GetLayerByName(name.c_str())) {
            compare_layers(*mine, *yours);
        }
    }
    fmt::print("{} layers, {} differences\n", a->GetLayerCount(), differences);
    return differences == 0 ? 0 : 1;
}
