// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/declare.h"

/// Parameters that many operations have: made once, so the same word means the same everywhere.
namespace pipward {

template <class Request>
Bound<Request> book_parameter(BookName Request::*field) {
    return parameter(field, "book", "Book",
                     "The orchard book: the path of a GeoPackage, or PG:... for a PostGIS database.")
        .required();
}

template <class Request>
Bound<Request> as_of_parameter(Day Request::*field) {
    return parameter(field, "as-of", "As of",
                     "The day to look from: nothing observed later is used, so any past day can be repeated.")
        .today_if_absent();
}

template <class Request>
Bound<Request> station_parameter(std::string Request::*field) {
    return parameter(field, "station", "Station",
                     "The weather station to use; the one with the most days where it is not named.");
}

template <class Request>
Bound<Request> write_parameter(bool Request::*field) {
    return parameter(field, "write", "Write to the book",
                     "Whether the results replace the book's result tables; no leaves the book untouched.");
}

}  // namespace pipward
