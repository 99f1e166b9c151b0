// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "pipward/value/spoken.h"

/// Closed lists of words. Each room gives its enums a table `words(Enum)` beside them: the word as it is
/// stored and typed, and its meaning for people. Domains, readers, parameters and the hosts' value lists all
/// come from it.
namespace pipward::value {

/// One value of an enum with its words.
template <class Enum>
struct Word {
    Enum value;                ///< each value of the enum once
    std::string_view word;     ///< as stored and typed: "deep_freezer"; the same in every language
    std::string_view meaning;  ///< for people, in English: a few words without a full stop
};

/// Empty for a value that its table lacks.
template <class Enum>
std::string_view to_word(Enum value) {
    for (const auto& entry : words(value)) {
        if (entry.value == value) {
            return entry.word;
        }
    }
    return {};
}

/// Nothing where the table has no such word.
template <class Enum>
std::optional<Enum> from_word(std::string_view word) {
    for (const auto& entry : words(Enum{})) {
        if (entry.word == word) {
            return entry.value;
        }
    }
    return std::nullopt;
}

}  // namespace pipward::value
