// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string_view>
#include <type_traits>
#include <vector>

#include "pipward/operation/declare/detail/declare.h"

/// Parameters that many operations have: made once, so the same word means the same everywhere.
namespace pipward::operation::detail {

template <class Request>
Bound<Request> book_parameter(BookName Request::*field) {
    return parameter(field, "book", "Book",
                     "The orchard book: the path of a GeoPackage, or PG:... for a PostGIS database.")
        .required();
}

template <class Request>
Bound<Request> as_of_parameter(Day Request::*field) {
    return parameter(field, "as-of", "As of",
                     "Reference date: nothing observed later is used, so any past date can be repeated.")
        .today_if_absent();
}

template <class Request>
Bound<Request> station_parameter(std::string Request::*field) {
    return parameter(field, "station", "Station",
                     "The weather station to use; the one with the most days where it is not named.");
}

/// Of operations that replace our own result tables: they do so unless told otherwise.
template <class Request>
Bound<Request> keep_parameter(bool Request::*field) {
    return parameter(field, "keep", "Keep the results",
                     "Whether the result tables of the book are replaced; no only shows the results.");
}

/// Of operations that change what the user entered: they show first and write only when told so.
template <class Request>
Bound<Request> write_parameter(bool Request::*field) {
    return parameter(field, "write", "Write to the book",
                     "Whether the result is written to the book; without it the book stays as it is.");
}

template <class Request, RequestField File>
BoundField<Request, File> layer_file_parameter(File Request::*field) {
    return parameter(field, "layer-file", "Layer file",
                     "A layer in any usual format: GeoPackage, Shapefile, GeoJSON, CSV with coordinates; or "
                     "PG:... for a PostGIS database.")
        .named("*");
}

template <class Request>
BoundField<Request, std::string> layer_parameter(std::string Request::*field) {
    return parameter(field, "layer", "Layer", "The layer to import, where the file has several.");
}

/// The parameters of a struct that the request extends, then those of its own; shared ones whose keys stand
/// in `without` are left out.
template <class Request, class Base>
std::vector<Bound<Request>> extended(const std::vector<Bound<Base>>& shared,
                                     const std::vector<Bound<std::type_identity_t<Request>>>& own,
                                     std::initializer_list<std::string_view> without = {}) {
    std::vector<Bound<Request>> all;
    for (const auto& one : shared) {
        if (std::ranges::find(without, one.words.key) == without.end()) {
            all.emplace_back(one);
        }
    }
    all.insert(all.end(), own.begin(), own.end());
    return all;
}

}  // namespace pipward::operation::detail
