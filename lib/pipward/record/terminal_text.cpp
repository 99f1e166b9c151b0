// SPDX-License-Identifier: MIT
#include "pipward/record/terminal_text.h"

#include <glib.h>

#include <algorithm>

#include "pipward/value/utf8.h"

namespace pipward::record {
namespace {

int width_of(char32_t character) {
    if (g_unichar_iszerowidth(character) != 0) {
        return 0;
    }
    return g_unichar_iswide(character) != 0 ? 2 : 1;
}

int width_of(std::u32string_view characters) {
    int width = 0;
    for (const char32_t character : characters) {
        width += width_of(character);
    }
    return width;
}

std::vector<std::u32string> words_of(std::string_view utf8) {
    std::vector<std::u32string> words;
    bool inside = false;
    for (const char32_t character : code_points_of(utf8)) {
        if (character == U' ') {
            inside = false;
            continue;
        }
        if (!inside) {
            words.emplace_back();
        }
        inside = true;
        words.back() += character;
    }
    return words;
}

/// What of the word fits, marks that sit on its last character included; the rest stays in the word.
std::u32string take_head(std::u32string& word, int width) {
    std::size_t end = 0;
    for (int used = 0; end < word.size() && used + width_of(word[end]) <= width; ++end) {
        used += width_of(word[end]);
    }
    auto head = word.substr(0, end);
    word.erase(0, end);
    return head;
}

}  // namespace

int terminal_width(std::string_view utf8) {
    return width_of(code_points_of(utf8));
}

std::vector<std::string> broken_into_lines(std::string_view utf8, int width) {
    std::vector<std::string> lines;
    std::u32string line;
    const auto end_line = [&] {
        lines.push_back(to_utf8(line));
        line.clear();
    };
    for (auto& word : words_of(utf8)) {
        if (!line.empty() && width_of(line) + 1 + width_of(word) > width) {
            end_line();
        }
        while (width_of(word) > width) {
            line = take_head(word, width);
            end_line();
        }
        line += (line.empty() || word.empty() ? U"" : U" ") + word;
    }
    if (!line.empty() || lines.empty()) {
        end_line();
    }
    return lines;
}

int longest_word(std::string_view utf8) {
    int longest = 0;
    for (const auto& word : words_of(utf8)) {
        longest = std::max(longest, width_of(word));
    }
    return longest;
}

}  // namespace pipward::record
