// SPDX-License-Identifier: MIT
#include "pipward/intake/user_places.h"

#include "pipward/place/row_layout.h"
#include "pipward/place/whereabouts_check.h"
#include "pipward/value/complaint.h"

namespace pipward::intake {
namespace {

book::UserLayer given_layer(const PlacesGiven& given) {
    if (given.file && !given.points.empty()) {
        throw Error(Trouble::usage,
                    about_parameter("points", given.points, say("Points and a file are given."),
                                    say("Give one of the two.")));
    }
    return given.file ? book::read_user_layer(*given.file, given.layer)
                      : book::user_layer_of(given.points, "points");
}

std::string where_told(const PlacesGiven& given) {
    return given.file ? "layer-file" : "points";
}

std::string crs_for(const PlacesGiven& given, const book::UserLayer& layer, const std::string& book_crs,
                    Findings& findings) {
    if (!given.crs.empty()) {
        if (!layer.crs.empty() && layer.crs != given.crs) {
            findings.push_back(about_parameter(
                "layer-crs", given.crs, say("By its own metadata the layer is in {}.", layer.crs),
                say("The one given was used; leave it out to use the layer's own.")));
            findings.back().level = Level::warning;
        }
        return given.crs;
    }
    if (given.file && layer.crs.empty()) {
        findings.push_back(
            about_parameter("layer-file", *given.file, say("The layer does not give its coordinate system."),
                            say("The book's, {}, was assumed; give layer-crs if it is another.", book_crs)));
        findings.back().level = Level::warning;
    }
    return layer.crs.empty() ? book_crs : layer.crs;
}

std::vector<MapPoint> all_points(const book::UserLayer& layer) {
    std::vector<MapPoint> points;
    for (const auto& feature : layer.features) {
        points.insert(points.end(), feature.points.begin(), feature.points.end());
    }
    return points;
}

void check_places(const book::UserLayer& layer, const std::string& crs, std::span<const place::LonLat> known,
                  const std::string& field, const std::string& book_crs, Findings& findings) {
    if (!place::ToEarth(crs).is_known()) {
        throw Error(Trouble::usage,
                    about_parameter("layer-crs", crs, say("This coordinate system is not known."),
                                    say("Give one by its EPSG number, as in EPSG:4326.")));
    }
    if (auto wrong = place::check_whereabouts(all_points(layer), crs, known, field, book_crs)) {
        if (wrong->level == Level::error) {
            throw Error(Trouble::input, std::move(*wrong));
        }
        findings.push_back(std::move(*wrong));
    }
}

}  // namespace

place::GroundLayer read_places(const PlacesGiven& given, const std::string& book_crs,
                               std::span<const place::LonLat> known, Findings& findings) {
    auto layer = given_layer(given);
    findings.insert(findings.end(), layer.findings.begin(), layer.findings.end());
    const auto crs = crs_for(given, layer, book_crs, findings);
    check_places(layer, crs, known, where_told(given), book_crs, findings);
    const place::ToEarth to_earth(crs);
    place::GroundLayer ground{{}, std::move(layer.columns)};
    for (auto& feature : layer.features) {
        ground.features.push_back({std::move(feature.name), feature.is_line,
                                   place::to_ground(feature.points, to_earth), std::move(feature.texts)});
    }
    return ground;
}

}  // namespace pipward::intake
