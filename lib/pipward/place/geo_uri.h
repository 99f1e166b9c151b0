// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/place/earth.h"

namespace pipward::place {

/// "geo:48.1327,11.2999;u=0.5": a place as telephones and map programs take it (RFC 5870; WGS 84, latitude
/// first). Seven decimals, about a centimetre, without zeros at the end. `accuracy` is the uncertainty in
/// metres where it is known. Heights are left out: a book's are above the sea, the URI's above the ellipsoid.
std::string geo_uri(const LonLat& place, const std::optional<Metres>& accuracy = {});

}  // namespace pipward::place
