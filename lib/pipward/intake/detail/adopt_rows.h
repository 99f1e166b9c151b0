// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "pipward/intake/detail/adopting.h"

/// Blocks and rows that trees name and the book lacks.
namespace pipward::intake::detail {

/// A name without its blanks and capitals.
std::string loose(std::string_view name);

/// A rectangle around the rows or trees that are in the block, some metres wider.
MadeRow made_block(const std::string& name, const std::vector<AdoptRow*>& rows, const std::string& crs);

/// Rows that trees name: told, or drawn through their trees in the order of their positions.
void judge_tree_rows(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard);

}  // namespace pipward::intake::detail
