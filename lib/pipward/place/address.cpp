// SPDX-License-Identifier: MIT
#include "pipward/place/address.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/place/scrap_text.h"

namespace pipward {
namespace {

// "row 3", but "Row 3" where the name says so itself.
std::string named(const std::string& word, const std::string& name) {
    const auto words = folded_words(name);
    return !words.empty() && words.front() == word ? name : fmt::format("{} {}", word, name);
}

std::string position_text(const Tree& tree, std::span<const TreeRow> rows) {
    const auto text = fmt::format("position {}", *tree.position);
    const auto row = std::ranges::find_if(
        rows, [&](const TreeRow& r) { return tree.row == r.name && tree.block.value_or("") == r.block; });
    const bool tells_more = row != rows.end() && row->first_position != 1;
    const int place = tells_more ? *tree.position - row->first_position + 1 : 0;
    return place > 0 ? fmt::format("{} ({} of the row)", text, ordinal(place)) : text;
}

}  // namespace

std::string ordinal(int number) {
    const int last_two = number % 100;
    const bool teens = last_two >= 11 && last_two <= 13;
    const int last = teens ? 0 : number % 10;
    return fmt::format("{}{}", number, last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
}

std::string address_of(const Tree& tree, std::span<const TreeRow> rows) {
    std::vector<std::string> parts;
    if (tree.block) {
        parts.push_back(named("block", *tree.block));
    }
    if (tree.row) {
        parts.push_back(named("row", *tree.row));
    }
    if (tree.position) {
        parts.push_back(position_text(tree, rows));
    }
    return fmt::format("{}", fmt::join(parts, ", "));
}

}  // namespace pipward
