// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/code_points.h"

#include <algorithm>
#include <array>

namespace pipward::paper::detail {
namespace {

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

bool is_markup_character(char32_t c) {
    static constexpr std::array refused{Range{0x0000, 0x001F}, Range{0x007F, 0x009F}, Range{0xD800, 0xDFFF},
                                        Range{0xFDD0, 0xFDEF}};
    return (c & 0xFFFE) != 0xFFFE && !in_any(refused, c);
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

}  // namespace pipward::paper::detail
