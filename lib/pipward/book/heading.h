// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// The words by which people call what the book calls otherwise. They are declared with the columns and the
/// choices of the schema; what is here is how they are written down and compared.
namespace pipward::book {

/// A language in which words are known.
enum class Language {
    english,  ///< "planting date"
    german,   ///< "Pflanzdatum"
    french    ///< "planté le"
};

/// One word of people's for a column or a choice.
struct KnownWord {
    Language language = Language::english;  ///< in which the word is said
    std::string_view word;                  ///< as people write it: "planting date"
    std::string folded;                     ///< the same as field_word() leaves it: "plantingdate"
};

/// In the order of likelihood: of two that fit two fields of a layer, the earlier one wins.
using KnownWords = std::vector<KnownWord>;

/// A heading or a word without what people write in many ways: capitals, blanks, underscores, dashes, dots
/// and the like are gone; accents of the Latin letters too. "Tree_No." is "treeno", "Höhe (m)" is "hohem".
std::string field_word(std::string_view name);

/// A heading without the unit that may stand in brackets behind it, as field_word() leaves it: "Cold at
/// (°C)" is "coldat".
std::string heading_word(std::string_view heading);

/// Adds words of one language behind those that are there.
void add_words(KnownWords& words, Language language, const std::vector<std::string_view>& more);

/// Whether one of the words is the same when both are folded. `folded` has been through field_word().
bool is_called(const KnownWords& words, std::string_view folded);

}  // namespace pipward::book
