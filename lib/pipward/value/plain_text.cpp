// SPDX-License-Identifier: MIT
#include "pipward/value/plain_text.h"

#include <algorithm>

namespace pipward::value {
namespace {

constexpr std::string_view blanks = " \t\r\n";

}  // namespace

bool is_blank(std::string_view text) {
    return text.find_first_not_of(blanks) == text.npos;
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(blanks);
    return first == text.npos ? std::string_view{}
                              : text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::vector<std::string> words_in(std::string_view text) {
    std::vector<std::string> words;
    for (auto rest = trimmed(text); !rest.empty();) {
        const auto end = std::min(rest.find_first_of(blanks), rest.size());
        words.emplace_back(rest.substr(0, end));
        rest = trimmed(rest.substr(end));
    }
    return words;
}

}  // namespace pipward::value
