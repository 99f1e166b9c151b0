// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/season/pipeline.h"

/// What every operation on the season asks for, and the way from its book to the season's pipeline.
namespace pipward::operation::detail {

/// Requests extend it.
struct SeasonRequest {
    BookName book;
    Day as_of;
    std::string station;
};

/// The book, read and checked, and the weather station that stands for the orchard.
season::Place read_place(const SeasonRequest& request, const Run& lent);

/// The parameters of a SeasonRequest, then those of one's own.
template <class Request>
std::vector<Bound<Request>> season_parameters(std::vector<Bound<Request>> more) {
    std::vector<Bound<Request>> all{book_parameter(&SeasonRequest::book),
                                    as_of_parameter(&SeasonRequest::as_of),
                                    station_parameter(&SeasonRequest::station)};
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

template <class Request>
Bound<Request> method_parameter(season::MethodChoice Request::*field) {
    return parameter(field, "method", "Method", "The forecast method for full bloom.").advanced();
}

}  // namespace pipward::operation::detail
