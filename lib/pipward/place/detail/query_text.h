// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// Inside of the room: texts made alike, so that case, accents, blanks and dashes do not matter. Any bytes
/// are taken; what is no UTF-8 stays as it is.
namespace pipward::place::detail {

/// Small letters without accents, typographic signs made plain ("×" is "x", "–" is "-"), blanks at the ends
/// dropped and others single. Letters beyond Latin, Greek and Cyrillic stay as they are.
std::string folded_text(std::string_view text);

/// Of a folded text: letters and digits only ("up-03 12" is "up0312"). Bytes beyond ASCII stay.
std::string squeezed(std::string_view folded);

/// Of a folded text: runs of letters and runs of digits, leading zeros dropped ("up-03/12": up, 3, 12).
std::vector<std::string> name_parts(std::string_view folded);

/// The words of any text, folded.
std::vector<std::string> folded_words(std::string_view text);

bool is_number(std::string_view text);

}  // namespace pipward::place::detail
