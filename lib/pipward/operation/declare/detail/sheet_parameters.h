// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "pipward/operation/declare/detail/common_parameters.h"

namespace pipward::operation::detail {

/// What a sheet or a calendar calls the orchard: the given name, else the name of the book's file. Empty for
/// a database without a given name: its location may hold a password.
std::string orchard_name(const std::string& given, const BookName& book);

/// The run as a walk is told of its progress, at the end of the whole work. The run must outlive it.
std::function<void(double)> walking(const Run& lent);

template <class Request>
Bound<Request> walk_start_parameter(std::string Request::*field) {
    return parameter(field, "at", "Start",
                     "Start of the walk: latitude and longitude, as in 48.1340,9.3010, or a tree's label; "
                     "wherever is best where left out.");
}

template <class Request>
Bound<Request> orchard_parameter(std::string Request::*field) {
    return parameter(field, "orchard", "Orchard",
                     "The orchard's name on the sheet; the book's file name where not given.");
}

template <class Request>
Bound<Request> subtitle_parameter(std::string Request::*field) {
    return parameter(field, "subtitle", "Subtitle", "A subtitle for the sheet.");
}

template <class Request>
Bound<Request> work_days_parameter(int Request::*field) {
    return parameter(field, "days", "Days", "Number of days, from the reference date on.")
        .in("d")
        .between(1, 60);
}

/// What every sheet to take along asks for.
template <class Request>
void add_sheet_parameters(std::vector<Bound<Request>>& all) {
    all.push_back(work_days_parameter(&Request::days));
    all.push_back(walk_start_parameter(&Request::start));
    all.push_back(orchard_parameter(&Request::orchard));
    all.push_back(subtitle_parameter(&Request::subtitle));
}

}  // namespace pipward::operation::detail
