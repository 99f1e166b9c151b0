// SPDX-License-Identifier: MIT
#include "pipward/value/listed_names.h"

namespace pipward::value {

std::vector<std::string> listed_names(std::string_view text) {
    constexpr std::string_view blank = " \t\r\n";
    std::vector<std::string> names;
    while (true) {
        const auto end = text.find_first_of(",;\n");
        const auto part = text.substr(0, end);
        const auto first = part.find_first_not_of(blank);
        if (first != std::string_view::npos) {
            names.emplace_back(part.substr(first, part.find_last_not_of(blank) - first + 1));
        }
        if (end == std::string_view::npos) {
            return names;
        }
        text.remove_prefix(end + 1);
    }
}

}  // namespace pipward::value
