// SPDX-License-Identifier: MIT
#include "pipward/value/utf8.h"

#include <algorithm>
#include <array>
#include <optional>

namespace pipward::value {
namespace {

struct Lead {
    unsigned char mask;
    unsigned char pattern;
    std::size_t length;
    char32_t smallest;  // below it the form is overlong
};
constexpr std::array leads{Lead{0x80, 0x00, 1, 0}, Lead{0xE0, 0xC0, 2, 0x80}, Lead{0xF0, 0xE0, 3, 0x800},
                           Lead{0xF8, 0xF0, 4, 0x10000}};

bool is_scalar(char32_t c) {
    return c <= 0x10FFFF && (c < 0xD800 || c > 0xDFFF);
}

std::optional<char32_t> decoded(std::string_view bytes, const Lead& lead) {
    char32_t value = static_cast<unsigned char>(bytes.front()) & static_cast<unsigned char>(~lead.mask);
    for (const char next : bytes.substr(1)) {
        const auto byte = static_cast<unsigned char>(next);
        if ((byte & 0xC0) != 0x80) {
            return std::nullopt;
        }
        value = (value << 6) | (byte & 0x3F);
    }
    return value >= lead.smallest && is_scalar(value) ? std::optional{value} : std::nullopt;
}

char32_t take_code_point(std::string_view& rest) {
    const auto first = static_cast<unsigned char>(rest.front());
    for (const auto& lead : leads) {
        if ((first & lead.mask) == lead.pattern && rest.size() >= lead.length) {
            if (const auto value = decoded(rest.substr(0, lead.length), lead)) {
                rest.remove_prefix(lead.length);
                return *value;
            }
        }
    }
    rest.remove_prefix(1);
    return replacement_character;
}

void append_utf8(std::string& text, char32_t c) {
    if (c < 0x80) {
        text += static_cast<char>(c);
        return;
    }
    const std::size_t length = c < 0x800 ? 2 : c < 0x10000 ? 3 : 4;
    int shift = static_cast<int>(length - 1) * 6;
    text += static_cast<char>(leads[length - 1].pattern | (c >> shift));
    while (shift > 0) {
        shift -= 6;
        text += static_cast<char>(0x80 | ((c >> shift) & 0x3F));
    }
}

bool is_line_end_or_tab(char32_t c) {
    return (c >= 0x09 && c <= 0x0D) || c == 0x85 || c == 0x2028 || c == 0x2029;
}

bool is_control(char32_t c) {
    return c < 0x20 || (c >= 0x7F && c <= 0x9F);
}

char32_t shown(char32_t c) {
    if (is_line_end_or_tab(c)) {
        return ' ';
    }
    return is_control(c) || turns_direction(c) ? replacement_character : c;
}

}  // namespace

std::u32string code_points_of(std::string_view text) {
    std::u32string code_points;
    while (!text.empty()) {
        code_points += take_code_point(text);
    }
    return code_points;
}

std::string to_utf8(std::u32string_view code_points) {
    std::string text;
    for (const char32_t c : code_points) {
        append_utf8(text, c);
    }
    return text;
}

bool turns_direction(char32_t c) {
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
}

bool has_unseen_characters(std::string_view text) {
    return std::ranges::any_of(code_points_of(text), [](char32_t c) {
        return is_control(c) || is_line_end_or_tab(c) || turns_direction(c) || c == replacement_character;
    });
}

std::string one_line(std::string_view text, std::size_t most) {
    auto code_points = code_points_of(text);
    if (code_points.size() > most) {
        code_points.resize(most);
        code_points.back() = U'\u2026';
    }
    std::ranges::transform(code_points, code_points.begin(), shown);
    return to_utf8(code_points);
}

}  // namespace pipward::value
