// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/operation/common_parameters.h"

namespace pipward {

/// What a sheet or a calendar calls the orchard: the given name, else the name of the book's file. Empty for
/// a database without a given name: its location may hold a password.
std::string orchard_name(const std::string& given, const BookName& book);

template <class Request>
Bound<Request> orchard_parameter(std::string Request::*field) {
    return parameter(field, "orchard", "Orchard",
                     "The orchard's name on the sheet; the book's file name where not given.");
}

template <class Request>
Bound<Request> sheet_note_parameter(std::string Request::*field) {
    return parameter(field, "note", "Note", "A line to print under the sheet's title.");
}

template <class Request>
Bound<Request> work_days_parameter(int Request::*field) {
    return parameter(field, "days", "Days", "Of how many days the work is wanted, from the as-of day on.")
        .in("days")
        .between(1, 60);
}

}  // namespace pipward
