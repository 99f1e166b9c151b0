// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

/// A made-up language that shows what was not put in a host's words: it stands outside of its brackets.
namespace pipward::testing {

inline std::string bracketed(std::string_view form) {
    return "⟦" + std::string(form) + "⟧";
}

/// The text without brackets and what stands in them.
inline std::string outside_brackets(std::string_view text) {
    constexpr std::string_view open = "⟦";
    constexpr std::string_view close = "⟧";
    std::string outside;
    int depth = 0;
    while (!text.empty()) {
        const bool opens = text.starts_with(open);
        const bool closes = text.starts_with(close);
        depth += static_cast<int>(opens) - static_cast<int>(closes);
        if (!opens && !closes && depth == 0) {
            outside += text.front();
        }
        text.remove_prefix(opens ? open.size() : closes ? close.size() : 1);
    }
    return outside;
}

/// The text as it would be in English.
inline std::string without_brackets(std::string text) {
    for (const std::string_view bracket : {"⟦", "⟧"}) {
        for (auto at = text.find(bracket); at != text.npos; at = text.find(bracket)) {
            text.erase(at, bracket.size());
        }
    }
    return text;
}

inline bool has_letters(std::string_view text) {
    return std::ranges::any_of(text, [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); });
}

}  // namespace pipward::testing
