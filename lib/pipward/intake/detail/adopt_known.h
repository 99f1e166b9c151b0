// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/intake/detail/adopting.h"

/// What the book has already of the kind that a layer brings.
namespace pipward::intake::detail {

struct KnownThing {
    std::map<std::string, Cell> cells{};
    std::optional<MapPoint> at{};  ///< of a row, where it begins
};

/// By name; tree rows by block, line end and name.
std::map<std::string, KnownThing> known_things(const std::string& table, const Orchard& orchard);

struct Difference {
    std::string column;
    std::string of_layer;
    std::string of_book;
};

/// Columns in which both say something, and not the same. A purpose of "other" says nothing.
std::vector<Difference> differences(const AdoptRow& row, const KnownThing& known);

}  // namespace pipward::intake::detail
