// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/calendar_uid.h"

#include <fmt/format.h>

#include <charconv>

namespace pipward::paper::detail {
namespace {

constexpr std::string_view ours = "pipward-";

bool is_plain(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
}

}  // namespace

std::string uid_of(std::string_view key) {
    std::string uid(ours);
    for (const char c : key) {
        uid += is_plain(c) ? std::string(1, c) : fmt::format("_{:02x}", static_cast<unsigned char>(c));
    }
    return uid;
}

std::optional<std::string> key_of_uid(std::string_view uid) {
    if (!uid.starts_with(ours)) {
        return std::nullopt;
    }
    uid.remove_prefix(ours.size());
    std::string key;
    while (!uid.empty()) {
        if (is_plain(uid.front())) {
            key += uid.front();
            uid.remove_prefix(1);
            continue;
        }
        unsigned char code = 0;
        const auto digits = uid.substr(1, 2);
        const auto [end, trouble] = std::from_chars(digits.data(), digits.data() + digits.size(), code, 16);
        if (uid.front() != '_' || trouble != std::errc{} || end != digits.data() + 2) {
            return std::nullopt;
        }
        key += static_cast<char>(code);
        uid.remove_prefix(3);
    }
    return key;
}

}  // namespace pipward::paper::detail
