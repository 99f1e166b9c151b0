// SPDX-License-Identifier: MIT
#include "pipward/intake/entry_place.h"

#include <cmath>
#include <optional>
#include <span>

#include "pipward/intake/record_kind.h"
#include "pipward/place/transformation.h"

namespace pipward::intake {
namespace {

constexpr const char* degrees_system = "EPSG:4326";

std::optional<double> taken_out(book::Entry& entry, std::string_view column) {
    const auto node = entry.values.extract(std::string(column));
    if (node.empty()) {
        return std::nullopt;
    }
    const auto& cell = node.mapped();
    const auto* number = std::get_if<double>(&cell);
    const auto* whole = std::get_if<std::int64_t>(&cell);
    return number != nullptr  ? std::optional{*number}
           : whole != nullptr ? std::optional{static_cast<double>(*whole)}
                              : std::nullopt;
}

Finding wrong(const book::Entry& entry, std::string_view column, Sentence message, Sentence remedy) {
    return {Level::error, entry.table, {}, std::string(column), {}, std::move(message), std::move(remedy)};
}

}  // namespace

Findings place_entry(book::Entry& entry, const std::string& crs) {
    const auto latitude = taken_out(entry, latitude_column);
    const auto longitude = taken_out(entry, longitude_column);
    if (!latitude && !longitude) {
        return {};
    }
    if (!latitude || !longitude) {
        return {wrong(entry, latitude ? longitude_column : latitude_column,
                      say("Latitude and longitude go together."), say("Give both."))};
    }
    if (std::abs(*latitude) > 90 || std::abs(*longitude) > 180) {
        return {wrong(entry, latitude_column, say("There is no such place on earth."),
                      say("Give degrees with decimals: latitude -90 to 90, longitude -180 to 180."))};
    }
    const MapPoint point{*longitude, *latitude, std::nullopt};
    entry.at = place::Transformation(degrees_system, crs, std::span(&point, 1))(point);
    return entry.at ? Findings{}
                    : Findings{wrong(entry, latitude_column,
                                     say("The place cannot be carried into the book's coordinate system."),
                                     say("Check the numbers, or place the row in a GIS."))};
}

}  // namespace pipward::intake
