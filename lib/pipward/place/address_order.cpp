// SPDX-License-Identifier: MIT
#include "pipward/place/address_order.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <string>

#include "pipward/value/plain_text.h"

namespace pipward::place {
namespace {

std::string_view take_figures(std::string_view& text) {
    const auto end = std::ranges::find_if_not(text, is_digit);
    const auto count = static_cast<std::size_t>(end - text.begin());
    auto figures = text.substr(0, count);
    text.remove_prefix(count);
    figures.remove_prefix(std::min(figures.find_first_not_of('0'), figures.size()));
    return figures;
}

// By number, however long; -1, 0 or 1.
int compared(std::string_view a, std::string_view b) {
    if (a.size() != b.size()) {
        return a.size() < b.size() ? -1 : 1;
    }
    const int order = a.compare(b);
    return order < 0 ? -1 : order > 0 ? 1 : 0;
}

int counted(std::string_view a, std::string_view b) {
    while (!a.empty() && !b.empty()) {
        if (is_digit(a.front()) && is_digit(b.front())) {
            if (const int order = compared(take_figures(a), take_figures(b)); order != 0) {
                return order;
            }
        } else if (a.front() != b.front()) {
            return static_cast<unsigned char>(a.front()) < static_cast<unsigned char>(b.front()) ? -1 : 1;
        } else {
            a.remove_prefix(1);
            b.remove_prefix(1);
        }
    }
    return a.empty() ? (b.empty() ? 0 : -1) : 1;
}

// Those that are not told come last.
int counted(const std::optional<std::string>& a, const std::optional<std::string>& b) {
    if (!a || !b) {
        return a.has_value() == b.has_value() ? 0 : a ? -1 : 1;
    }
    return counted(std::string_view(*a), std::string_view(*b));
}

int counted(const std::optional<int>& a, const std::optional<int>& b) {
    if (!a || !b) {
        return a.has_value() == b.has_value() ? 0 : a ? -1 : 1;
    }
    return *a < *b ? -1 : *a > *b ? 1 : 0;
}

int row_order(const Tree& a, const Tree& b) {
    const int block = counted(a.block, b.block);
    return block != 0 ? block : counted(a.row, b.row);
}

bool stands_before(const Tree& a, const Tree& b) {
    if (const int row = row_order(a, b); row != 0) {
        return row < 0;
    }
    const int position = counted(a.position, b.position);
    return position != 0 ? position < 0 : counts_before(a.label, b.label);
}

// Every second row of a block from its far end.
void turn_second_rows(const Orchard& orchard, std::vector<std::uint32_t>& trees) {
    bool back = false;
    for (auto first = trees.begin(); first != trees.end();) {
        const auto& tree = orchard.trees[*first];
        const auto last = std::find_if(first, trees.end(), [&](std::uint32_t other) {
            return row_order(orchard.trees[other], tree) != 0;
        });
        if (back && tree.row) {
            std::reverse(first, last);
        }
        const bool same_block = last != trees.end() && counted(orchard.trees[*last].block, tree.block) == 0;
        back = same_block && !back;
        first = last;
    }
}

}  // namespace

std::span<const Word<LabelOrder>> words(LabelOrder) {
    static constexpr std::array<Word<LabelOrder>, 4> all{
        {{LabelOrder::address, "address", "by block, row and position"},
         {LabelOrder::to_and_fro, "to-and-fro",
          "the same, every second row from its far end, as in walking order"},
         {LabelOrder::label, "label", "by label"},
         {LabelOrder::book, "book", "as in the book"}}};
    return all;
}

bool counts_before(std::string_view a, std::string_view b) {
    const int order = counted(a, b);
    return order != 0 ? order < 0 : a < b;
}

std::vector<std::uint32_t> in_order(const Orchard& orchard, std::vector<std::uint32_t> trees,
                                    LabelOrder order) {
    const auto by_address = [&](std::uint32_t a, std::uint32_t b) {
        return stands_before(orchard.trees[a], orchard.trees[b]);
    };
    const auto by_label = [&](std::uint32_t a, std::uint32_t b) {
        return counts_before(orchard.trees[a].label, orchard.trees[b].label);
    };
    if (order == LabelOrder::label) {
        std::ranges::stable_sort(trees, by_label);
    } else if (order != LabelOrder::book) {
        std::ranges::stable_sort(trees, by_address);
    }
    if (order == LabelOrder::to_and_fro) {
        turn_second_rows(orchard, trees);
    }
    return trees;
}

}  // namespace pipward::place
