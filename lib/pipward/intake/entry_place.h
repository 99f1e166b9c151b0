// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/entry.h"

namespace pipward::intake {

/// Turns the cells latitude_column and longitude_column of an entry into its place in the book's coordinate
/// system `crs`. Errors where one is missing or wrong, or where the system is not known; the cells are then
/// taken out all the same. An entry without them stays as it is.
Findings place_entry(book::Entry& entry, const std::string& crs);

}  // namespace pipward::intake
