// SPDX-License-Identifier: MIT
#include "pipward/book/detail/entry_row.h"

#include <fmt/format.h>

#include <cstdint>

#include "pipward/book/detail/layers.h"
#include "pipward/book/schema.h"

namespace pipward::book::detail {

std::string content_of(const OGRFeature& feature, const std::string& table) {
    std::string content;
    for (const auto& column : find_book_table(table)->columns) {
        const int field = feature.GetFieldIndex(std::string(column.name).c_str());
        const auto value = field < 0 ? Cell{} : get_field(feature, field);
        if (!std::holds_alternative<std::monostate>(value)) {
            content += fmt::format("{}: {}\n", column.name, to_text(value));
        }
    }
    if (const auto* geometry = feature.GetGeometryRef(); geometry != nullptr) {
        content += fmt::format("geom: {}\n", geometry->exportToWkt());
    }
    return content;
}

// FNV-1a, 64 bits (Fowler, Noll, Vo).
std::string summed(const std::string& content) {
    std::uint64_t sum = 14695981039346656037U;
    for (const char c : content) {
        sum = (sum ^ static_cast<unsigned char>(c)) * 1099511628211U;
    }
    return fmt::format("sum: {:016x}", sum);
}

bool is_as_remembered(const std::string& now, const std::string& remembered) {
    return now == remembered || summed(now) == remembered;
}

std::optional<std::string> content_of(OGRLayer& layer, const AddedRow& row) {
    const OGRFeatureUniquePtr feature(layer.GetFeature(row.fid));
    if (feature == nullptr || find_book_table(row.table) == nullptr) {
        return std::nullopt;
    }
    return content_of(*feature, row.table);
}

}  // namespace pipward::book::detail
