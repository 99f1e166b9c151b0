// SPDX-License-Identifier: MIT
#pragma once

#include <charconv>
#include <optional>
#include <string_view>

namespace pipward::intake::detail {

/// A number with a decimal point and nothing else around it.
inline std::optional<double> plain_number(std::string_view text) {
    double value = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    return trouble == std::errc{} && end == text.data() + text.size() ? std::optional{value} : std::nullopt;
}

}  // namespace pipward::intake::detail
