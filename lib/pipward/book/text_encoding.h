// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Encodings of text, by the tables of the GIS library.
namespace pipward::book {

enum class TextEncoding { utf8, utf16_little, utf16_big, windows_1252 };

/// The bytes as UTF-8, a byte-order mark left out. Nothing where some of them stand for no letter, or a zero
/// is among the letters.
std::optional<std::string> as_utf8(std::string_view bytes, TextEncoding encoding);

}  // namespace pipward::book
