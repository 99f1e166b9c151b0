// SPDX-License-Identifier: MIT
#include "pipward/record/spreadsheet_text.h"

#include <algorithm>
#include <cstdlib>

#include "pipward/value/utf8.h"

namespace pipward::record {
namespace {

// The second four are the wide forms, U+FF1D, U+FF0B, U+FF0D and U+FF20.
constexpr std::u32string_view beginnings = U"=+-@\uFF1D\uFF0B\uFF0D\uFF20";

bool is_number(std::string_view text) {
    const std::string whole(text);
    const bool has_figures_only = whole.find_first_not_of("+-.,0123456789") == std::string::npos;
    return has_figures_only && whole.find_first_of("0123456789") != std::string::npos &&
           whole.find_first_of("+-", 1) == std::string::npos;
}

bool is_skipped(char32_t c) {
    return c <= U' ' || (c >= 0x7F && c <= 0xA0) || c == 0xFEFF;
}

bool breaks_terminals(char32_t c) {
    return (c < U' ' && c != U'\t' && c != U'\n' && c != U'\r') || (c >= 0x7F && c <= 0x9F);
}

}  // namespace

bool may_be_formula(std::string_view text) {
    const auto letters = code_points_of(text);
    const auto first = std::ranges::find_if_not(letters, is_skipped);
    return first != letters.end() && beginnings.find(*first) != std::u32string_view::npos && !is_number(text);
}

std::string harmless_in_spreadsheet(std::string_view text) {
    auto letters = code_points_of(text);
    std::ranges::replace_if(letters, breaks_terminals, replacement_character);
    const auto shown = to_utf8(letters);
    return may_be_formula(text) ? "'" + shown : shown;
}

std::string_view without_guard(std::string_view text) {
    return text.starts_with('\'') && may_be_formula(text.substr(1)) ? text.substr(1) : text;
}

}  // namespace pipward::record
