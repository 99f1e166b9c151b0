// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "pipward/place/detail/hits.h"

namespace pipward::place::detail {

/// Inside of the room: trees at a place that the search text names: a geo: link, latitude and longitude, or x
/// and y of the book's own system. Nothing where the text is none of these, or no tree is near.
void find_near(std::string_view query, const Orchard& orchard, Hits& hits);

/// Whether the search text can be nothing else: a geo: or other link to a place, two decimals, degrees.
bool is_surely_place(std::string_view query);

}  // namespace pipward::place::detail
