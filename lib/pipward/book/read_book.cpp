// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <memory>

#include "pipward/book/detail/book_crs.h"
#include "pipward/book/detail/read_table.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/detail/with_schema.h"
#include "pipward/book/records.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

Finding about_layer(std::string table, Level level, std::string row, Sentence message, Sentence remedy) {
    return {.level = level,
            .table = std::move(table),
            .row = std::move(row),
            .field = "geom",
            .value = {},
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

const OGRSpatialReference* crs_of(detail::Session& session, const char* table) {
    OGRLayer* layer = session.dataset->GetLayerByName(table);
    return layer == nullptr ? nullptr : layer->GetSpatialRef();
}

// "EPSG:32632"; a system that no authority names is given in full, which OGR reads as well.
std::string name_of_crs(const OGRSpatialReference& crs) {
    const char* authority = crs.GetAuthorityName(nullptr);
    const char* code = crs.GetAuthorityCode(nullptr);
    if (authority != nullptr && code != nullptr) {
        return fmt::format("{}:{}", authority, code);
    }
    char* text = nullptr;
    crs.exportToWkt(&text);
    std::string wkt = text == nullptr ? "" : text;
    CPLFree(text);
    return wkt;
}

using Transformation = std::unique_ptr<OGRCoordinateTransformation>;

Transformation to_latitudes(const OGRSpatialReference* crs) {
    if (crs == nullptr || (crs->IsProjected() == 0 && crs->IsGeographic() == 0)) {
        return nullptr;
    }
    auto from = *crs;
    from.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    OGRSpatialReference earth;
    earth.SetWellKnownGeogCS("WGS84");
    earth.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    return Transformation(OGRCreateCoordinateTransformation(&from, &earth));
}

std::optional<Latitude> latitude_of(OGRCoordinateTransformation* transformation, const MapPoint& point) {
    double x = point.x;
    double y = point.y;
    const bool done = transformation != nullptr && transformation->Transform(1, &x, &y) != 0;
    return done && std::isfinite(y) && std::abs(y) <= 90.0 ? std::optional{Latitude{y}} : std::nullopt;
}

void find_latitudes(detail::Session& session, BookReading& reading) {
    const auto transformation = to_latitudes(crs_of(session, "station"));
    for (auto& station : reading.orchard.stations) {
        if (!station.at) {
            continue;
        }
        station.latitude = latitude_of(transformation.get(), *station.at);
        if (!station.latitude) {
            reading.findings.push_back(about_layer(
                "station", Level::error, station.name,
                transformation == nullptr
                    ? say("The latitude of the station is unknown because the layer has no "
                          "coordinate system of the earth.")
                    : say("The latitude of the station cannot be computed from its point."),
                say("Give the layer its coordinate system and put the station where it stands.")));
        }
    }
}

bool has_any_table(detail::Session& session, Schema schema) {
    return std::ranges::any_of(schema, [&](const BookTable& table) {
        return session.dataset->GetLayerByName(std::string(table.name).c_str()) != nullptr;
    });
}

Sentence layers_of(detail::Session& session) {
    std::string names;
    for (auto* layer : session.dataset->GetLayers()) {
        names += (names.empty() ? "" : ", ") + std::string(layer->GetName());
    }
    return names.empty() ? say("nothing") : verbatim(names.substr(0, 200));
}

/// Which tables are read.
struct WantedTables {
    Schema schema;
    std::function<bool(const std::string& table)> table;
};

BookReading read_wanted(detail::Session& session, const std::string& location, const WantedTables& wanted) {
    if (!has_any_table(session, wanted.schema)) {
        throw detail::access_error(
            location,
            say("This is no orchard book: it has none of its tables. It holds {}.", layers_of(session)),
            say("Make a book with book-new and copy these layers into its tables."));
    }
    BookReading reading;
    for (const auto& table : wanted.schema) {
        if (wanted.table(std::string(table.name))) {
            detail::read_table(session, table, reading.findings,
                               [&](const BookRow& row) { add_record(reading.orchard, table, row); });
        }
    }
    detail::find_crs(session, wanted.schema, reading);
    find_latitudes(session, reading);
    std::erase_if(reading.findings, [&](const Finding& finding) { return !wanted.table(finding.table); });
    return reading;
}

BookReading read_wanted(const BookAt& book, const WantedTables& wanted) {
    BookReading reading;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        reading = read_wanted(session, book.location, wanted);
    });
    return reading;
}

}  // namespace

void detail::find_crs(detail::Session& session, Schema schema, BookReading& reading) {
    const auto* crs = crs_of(session, "tree");
    if (crs == nullptr) {
        if (session.dataset->GetLayerByName("tree") != nullptr) {
            reading.findings.push_back(about_layer("tree", Level::error, {},
                                                   say("The layer has no known coordinate system."),
                                                   say("Give it one, for instance EPSG:32632.")));
        }
        return;
    }
    reading.orchard.crs = name_of_crs(*crs);
    for (const auto& table : schema) {
        const auto* other =
            table.geometry == GeometryKind::none ? nullptr : crs_of(session, std::string(table.name).c_str());
        if (other != nullptr && other->IsSame(crs) == 0) {
            reading.findings.push_back(
                about_layer(std::string(table.name), Level::error, {},
                            say("The layer has another coordinate system than the trees."),
                            say("Reproject it to that of the trees.")));
        }
    }
}

BookReading read_tables(const BookAt& book, const std::set<std::string>& tables) {
    return read_wanted(book,
                       {book_tables(), [&](const std::string& table) { return tables.contains(table); }});
}

BookReading read_book(const BookAt& book) {
    return detail::read_book(book, book_tables());
}

BookReading detail::read_book(const BookAt& book, Schema schema) {
    return read_wanted(book, {schema, [](const std::string&) { return true; }});
}

}  // namespace pipward::book
