// SPDX-License-Identifier: MIT
#include "pipward/operation/season/detail/season_request.h"

namespace pipward::operation::detail {
season::Place read_place(const SeasonRequest& request, const Run& lent) {
    auto reading = read_checked(request.book, request.as_of, lent);
    return season::place_of(std::move(reading.orchard), {request.as_of, request.station},
                            std::move(reading.findings));
}

}  // namespace pipward::operation::detail
