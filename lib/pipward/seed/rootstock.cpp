// SPDX-License-Identifier: MIT
#include "pipward/seed/detail/rootstock.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>
#include <utility>
#include <vector>

namespace pipward::seed::detail {
namespace {

enum class Letters { other, alphabetic, digit };

Letters kind_of(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return std::isalpha(byte) != 0   ? Letters::alphabetic
           : std::isdigit(byte) != 0 ? Letters::digit
                                     : Letters::other;
}

/// "M.9 T337" is m, 9, t, 337.
std::vector<std::string> parts_of(std::string_view text) {
    std::vector<std::string> parts;
    auto last = Letters::other;
    for (const char c : text) {
        const auto kind = kind_of(c);
        if (kind != Letters::other) {
            if (kind != last) {
                parts.emplace_back();
            }
            parts.back() += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        }
        last = kind;
    }
    return parts;
}

constexpr std::array<std::pair<std::string_view, std::string_view>, 13> dwarfing_names{{{"m", "9"},
                                                                                        {"m", "26"},
                                                                                        {"m", "27"},
                                                                                        {"b", "9"},
                                                                                        {"bud", "9"},
                                                                                        {"budagovsky", "9"},
                                                                                        {"g", "11"},
                                                                                        {"g", "16"},
                                                                                        {"g", "41"},
                                                                                        {"p", "16"},
                                                                                        {"p", "22"},
                                                                                        {"j", "9"},
                                                                                        {"p", "2"}}};
constexpr std::array<std::string_view, 5> dwarfing_words{"dwarf", "dwarfing", "dwarfed", "quince", "quitte"};
constexpr std::array<std::string_view, 3> taking_back{"non", "not", "no"};

template <class Words>
bool is_one_of(const Words& words, const std::string& word) {
    return std::ranges::find(words, std::string_view(word)) != words.end();
}

bool is_name(const std::string& letters, const std::string& number) {
    return std::ranges::any_of(
        dwarfing_names, [&](const auto& name) { return name.first == letters && name.second == number; });
}

}  // namespace

bool is_dwarfing(std::string_view rootstock) {
    const auto parts = parts_of(rootstock);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const bool taken_back = i > 0 && is_one_of(taking_back, parts[i - 1]);
        if ((is_one_of(dwarfing_words, parts[i]) && !taken_back) ||
            (i + 1 < parts.size() && is_name(parts[i], parts[i + 1]))) {
            return true;
        }
    }
    return false;
}

}  // namespace pipward::seed::detail
