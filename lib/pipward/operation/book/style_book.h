// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "pipward/book/map_style.h"
#include "pipward/style/layer_style.h"
#include "pipward/style/orchard_style.h"

/// How a book is styled for the desktop: every operation and host that does it, does it through these.
namespace pipward::operation {

/// Whether books of this kind keep styles and projects: files do, database servers do not.
bool can_be_styled(const std::string& location);

/// In the words of a host: writes the styles of every layer that the book has, and the season map of them.
/// Throws Error (access).
book::StyleReport style_book(const std::string& location, const Wording& wording = in_english);

/// Styles a book again that carries our style; leaves others as they are. Never throws for trouble with the
/// book: a warning tells it.
Findings refresh_style(const std::string& location, const Wording& wording = in_english);

/// The style of a table of the schema or of a result table; nothing for other names.
std::optional<style::LayerStyle> find_style(std::string_view table,
                                            const std::optional<style::BloomSpan>& bloom,
                                            const Wording& wording = in_english);

}  // namespace pipward::operation
