// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/operation/common_parameters.h"
#include "pipward/operation/place_reading.h"
#include "pipward/place/walk.h"

namespace pipward::operation {

/// Where a walk begins or ends: a tree's label, or latitude and longitude. Nothing where none was named; an
/// error finding where it cannot be found.
std::optional<place::WalkEnd> walk_end(const Orchard& orchard, const NamedPlace& named, Findings& findings);

template <class Request>
Bound<Request> walk_start_parameter(std::string Request::*field) {
    return parameter(
        field, "start", "Start",
        "Where the walk begins: a gate as latitude and longitude, as in 48.1340,9.3010, or a tree's "
        "label; wherever is best where left out.");
}

}  // namespace pipward::operation
