// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "pipward/record/orchard.h"

/// The closed word lists of the book: each enum's word as stored, and its meaning for people.
/// The book's field domains, the readers and the hosts' pick lists all come from these tables.
namespace pipward::inline record {

template <class Enum>
struct Word {
    Enum value;
    std::string_view word;
    std::string_view meaning;
};

std::span<const Word<TreePurpose>> words(TreePurpose);
std::span<const Word<PlacedBy>> words(PlacedBy);
std::span<const Word<AccessionKind>> words(AccessionKind);
std::span<const Word<WeatherSource>> words(WeatherSource);
std::span<const Word<Store>> words(Store);

template <class Enum>
std::string_view to_word(Enum value) {
    for (const auto& entry : words(value)) {
        if (entry.value == value) {
            return entry.word;
        }
    }
    return {};
}

template <class Enum>
std::optional<Enum> from_word(std::string_view word) {
    for (const auto& entry : words(Enum{})) {
        if (entry.word == word) {
            return entry.value;
        }
    }
    return std::nullopt;
}

}  // namespace pipward::inline record
