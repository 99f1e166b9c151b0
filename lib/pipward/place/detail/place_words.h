// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Inside of the room: the words around an address, in the languages that growers' books are written in, and
/// numbers in words. All folded (query_text.h). Common words of the trade, no source.
namespace pipward::place::detail {

/// What a word says of the name or number beside it.
enum class Mark { none, row, position, block, accession, rootstock, planted, filler };

/// A word with a single letter is a mark only beside a number: "r3", "p 12".
Mark mark_of(std::string_view word);

/// "three", "dritte", "III": 1 to 3999 in Roman numerals as they are written today, 1 to 20 in English and
/// German words. Nothing for figures.
std::optional<int> number_in_words(std::string_view word);
/// Only the Roman ones.
std::optional<int> roman_number(std::string_view word);

/// One piece of a search text: a run of letters, or of digits without leading zeros.
struct Token {
    std::string text;
    bool number = false;
    std::size_t word = 0;  ///< pieces of one word without a blank or sign between them have the same
};
std::vector<Token> tokens_of(std::string_view folded);

/// The folded text with those words that mix digits with letters that look like digits written in digits:
/// "upper 3 l2" is "upper 3 12".
std::string with_figures_read(std::string_view folded);

/// Without words such as "tree", "label:", "cross" or "lot" at its beginning, which say only what sort of
/// name follows.
std::string_view without_sort(std::string_view folded);

}  // namespace pipward::place::detail
