// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/record/orchard.h"

/// Crosses that are asked for by a list of their codes.
namespace pipward::operation::detail {

/// The codes in the list, each a goal of the book; none where the list is blank. Throws Error (input) with a
/// finding for every name that is no cross of the book.
std::vector<std::string> named_crosses(const std::string& list, const Orchard& orchard);

/// Whether the cross is among them; every one is where none is named.
bool is_named(const std::vector<std::string>& named, const std::string& cross);

}  // namespace pipward::operation::detail
