// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "pipward/book/dressing.h"
#include "pipward/dress/layer_dress.h"
#include "pipward/dress/orchard_dress.h"

/// How a book is dressed for the desktop: every operation and host that does it, does it through these.
namespace pipward::operation {

/// Whether books of this kind keep styles and projects: files do, database servers do not.
bool can_be_dressed(const std::string& location);

/// In the words of a host: writes the styles of every layer that the book has, and the season map of them.
/// Throws Error (access).
book::DressReport dress_book(const std::string& location, const Wording& wording = in_english);

/// Dresses a book anew that carries our dress; leaves others as they are. Never throws for trouble with the
/// book: a warning tells it.
Findings refresh_dress(const std::string& location, const Wording& wording = in_english);

/// The dress of a table of the schema or of a result table; nothing for other names.
std::optional<dress::LayerDress> find_dress(std::string_view table,
                                            const std::optional<dress::BloomSpan>& bloom,
                                            const Wording& wording = in_english);

}  // namespace pipward::operation
