// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Encodings of text, by the tables of the GIS library.
namespace pipward::book {

/// How a file's letters are written as bytes.
enum class TextEncoding {
    utf8,          ///< with a byte-order mark or without
    utf16_little,  ///< two bytes, the less significant first
    utf16_big,     ///< two bytes, the more significant first
    windows_1252   ///< western Europe; five bytes stand for no letter
};

/// The bytes as UTF-8, a byte-order mark left out. Nothing where some of them stand for no letter, or a zero
/// is among the letters.
std::optional<std::string> as_utf8(std::string_view bytes, TextEncoding encoding);

/// The same for bytes that are UTF-8 already: what stands behind their mark, without a copy.
std::optional<std::string_view> utf8_in(std::string_view bytes);

}  // namespace pipward::book
