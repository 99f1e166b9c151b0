// SPDX-License-Identifier: MIT
#include "pipward/paper/code_points.h"

#include <algorithm>
#include <array>
#include <optional>

namespace pipward {
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

struct Range {
    char32_t first;
    char32_t last;
};

template <std::size_t size>
bool in_any(const std::array<Range, size>& ranges, char32_t c) {
    return std::ranges::any_of(ranges, [c](Range r) { return c >= r.first && c <= r.last; });
}

constexpr char32_t zero_width_joiner = 0x200D;

// Marks, variation selectors, skin tones and tags: they draw on the character before them.
bool joins_backward(char32_t c) {
    static constexpr std::array ranges{Range{0x0300, 0x036F},  Range{0x1AB0, 0x1AFF}, Range{0x20D0, 0x20FF},
                                       Range{0x200B, 0x200F},  Range{0x202A, 0x202E}, Range{0x2060, 0x2069},
                                       Range{0xFE00, 0xFE0F},  Range{0xFE20, 0xFE2F}, Range{0x1F3FB, 0x1F3FF},
                                       Range{0xE0020, 0xE007F}};
    return in_any(ranges, c);
}

double ascii_em(char32_t c) {
    static constexpr std::u32string_view slim = U" !'(),./:;I[]`fijlrt|";
    static constexpr std::u32string_view broad = U"%@MWmw";
    if (slim.find(c) != slim.npos) {
        return 0.40;
    }
    if (broad.find(c) != broad.npos) {
        return 0.98;
    }
    return c >= 'A' && c <= 'Z' ? 0.76 : 0.62;
}

double em_of(char32_t c) {
    if (c < 0x80) {
        return ascii_em(c);
    }
    if (c < 0x1100) {
        return 0.80;
    }
    return c < 0x1F000 ? 1.05 : 1.40;
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

bool is_markup_character(char32_t c) {
    static constexpr std::array refused{Range{0x0000, 0x001F}, Range{0x007F, 0x009F}, Range{0xFDD0, 0xFDEF}};
    return is_scalar(c) && (c & 0xFFFE) != 0xFFFE && !in_any(refused, c);
}

std::vector<Cluster> clusters_of(std::string_view text) {
    std::vector<Cluster> clusters;
    bool joined = false;
    for (const char32_t c : code_points_of(text)) {
        if (clusters.empty() || !(joined || joins_backward(c))) {
            clusters.push_back({{}, em_of(c)});
        }
        clusters.back().code_points += c;
        joined = c == zero_width_joiner;
    }
    return clusters;
}

}  // namespace pipward
