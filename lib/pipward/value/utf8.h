// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "pipward/value/spoken.h"

namespace pipward::value {

inline constexpr char32_t replacement_character = 0xFFFD;  ///< for what is no character

/// The code points of UTF-8 text; every byte that belongs to none gives one replacement character.
std::u32string code_points_of(std::string_view text);
/// The code points as UTF-8. They must be scalar values (Unicode Standard, D76), as code_points_of() gives
/// them.
std::string to_utf8(std::u32string_view code_points);

/// Whether the code point turns the direction of what follows it, text of others included (Unicode Standard
/// Annex 9: embeddings, overrides and isolates).
bool turns_direction(char32_t c);

/// Whether anything in the text would not be seen, or would upset what stands beside it: control characters,
/// line ends, turns of direction, broken bytes.
bool has_unseen_characters(std::string_view text);

/// Text fit to stand in a line among others: line ends and tabs become blanks; control characters, turns of
/// direction and broken bytes U+FFFD; longer than `most` characters it ends in "…". `most` is at least 1.
std::string one_line(std::string_view text, std::size_t most);

}  // namespace pipward::value
