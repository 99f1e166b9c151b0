// SPDX-License-Identifier: MIT
#include "pipward/book/heading.h"

#include <algorithm>
#include <cctype>

#include "pipward/value/utf8.h"

namespace pipward::book {
namespace {

// U+00C0 to U+00FF, a letter each; a blank for those without a plain one.
constexpr std::string_view plain_latin = "aaaaaaaceeeeiiii nooooo ouuuuy saaaaaaaceeeeiiii nooooo ouuuuy y";

char plain(char32_t c) {
    if (c < 0x80) {
        return static_cast<char>(std::tolower(static_cast<int>(c)));
    }
    return c >= 0xC0 && c <= 0xFF ? plain_latin[c - 0xC0] : ' ';
}

bool is_kept_letter(char32_t c) {
    return c >= 0x100 && c != replacement_character;
}

}  // namespace

std::string field_word(std::string_view name) {
    std::u32string kept;
    for (const char32_t c : code_points_of(name)) {
        const char letter = plain(c);
        if (std::isalnum(static_cast<unsigned char>(letter)) != 0) {
            kept += static_cast<char32_t>(letter);
        } else if (is_kept_letter(c)) {
            kept += c;
        }
    }
    return to_utf8(kept);
}

std::string heading_word(std::string_view heading) {
    return field_word(heading.substr(0, heading.find_first_of("([")));
}

void add_words(KnownWords& words, Language language, const std::vector<std::string_view>& more) {
    for (const auto word : more) {
        words.push_back({language, word, field_word(word)});
    }
}

bool is_called(const KnownWords& words, std::string_view folded) {
    return std::ranges::find(words, folded, &KnownWord::folded) != words.end();
}

}  // namespace pipward::book
