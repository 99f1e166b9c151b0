// SPDX-License-Identifier: MIT
#include "pipward/place/address.h"

#include <algorithm>

#include "pipward/place/detail/query_text.h"

namespace pipward::place {
namespace {

bool begins_with(const std::string& name, std::string_view word) {
    const auto words = detail::folded_words(name);
    return !words.empty() && words.front() == word;
}

// "row 3", but "Row 3" where the name says so itself.
Sentence block_text(const std::string& block) {
    return begins_with(block, "block") ? verbatim(block) : say("block {}", block);
}

Sentence row_text(const std::string& row) {
    return begins_with(row, "row") ? verbatim(row) : say("row {}", row);
}

Sentence position_text(const Tree& tree, std::span<const TreeRow> rows) {
    const auto row = std::ranges::find_if(
        rows, [&](const TreeRow& r) { return tree.row == r.name && tree.block.value_or("") == r.block; });
    const bool tells_more = row != rows.end() && row->first_position != 1;
    const int place = tells_more ? *tree.position - row->first_position + 1 : 0;
    return place > 0 ? say("position {} ({} of the row)", *tree.position, ordinal(place))
                     : say("position {}", *tree.position);
}

}  // namespace

Sentence ordinal(int number) {
    const int last_two = number % 100;
    const bool teens = last_two >= 11 && last_two <= 13;
    const int last = teens ? 0 : number % 10;
    switch (last) {
        case 1:
            return say("{}st", number);
        case 2:
            return say("{}nd", number);
        case 3:
            return say("{}rd", number);
        default:
            return say("{}th", number);
    }
}

Sentence address_of(const Tree& tree, std::span<const TreeRow> rows) {
    std::vector<Sentence> parts;
    if (tree.block) {
        parts.push_back(block_text(*tree.block));
    }
    if (tree.row) {
        parts.push_back(row_text(*tree.row));
    }
    if (tree.position) {
        parts.push_back(position_text(tree, rows));
    }
    return joined(parts, verbatim(", "));
}

}  // namespace pipward::place
