// SPDX-License-Identifier: MIT
#include "pipward/place/detail/stand_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <span>

#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

using Parts = std::vector<std::string>;

constexpr std::array<std::string_view, 10> place_words{"block", "row", "position", "pos", "tree",
                                                       "place", "no",  "nr",       "in",  "number"};

bool is_place_word(std::string_view word) {
    return std::ranges::find(place_words, word) != place_words.end();
}

std::string joined(std::span<const std::string> parts, std::string_view between) {
    return fmt::format("{}", fmt::join(parts, between));
}

// "Row 3" and "3" are the same row.
std::string row_key(const std::string& row) {
    auto parts = name_parts(folded_text(row));
    if (parts.size() > 1) {
        std::erase_if(parts, is_place_word);
    }
    return joined(parts, " ");
}

std::string place_key(const std::string& row, const std::string& position) {
    return row + "|" + position;
}

}  // namespace

struct StandTable::Spot {
    std::string block;  // squeezed; empty where the search text names none
    std::string row;
    std::optional<std::string> position;
};

StandTable::StandTable(const std::vector<Tree>& trees) : trees_(trees) {
    for (std::uint32_t i = 0; i < trees.size(); ++i) {
        if (!trees[i].row) {
            continue;
        }
        const auto row = row_key(*trees[i].row);
        by_row_.add(row, i);
        if (trees[i].position) {
            by_place_.add(place_key(row, std::to_string(*trees[i].position)), i);
        }
    }
    by_place_.finish();
    by_row_.finish();
}

// 1 the whole name, less for its beginning, nothing for another block.
float StandTable::block_likeness(const Tree& tree, const Spot& spot) const {
    if (spot.block.empty()) {
        return 0.93F;
    }
    auto parts = name_parts(folded_text(tree.block.value_or("")));
    std::erase_if(parts, is_place_word);
    const auto block = joined(parts, "");
    return block == spot.block ? 1.0F : block.starts_with(spot.block) ? 0.97F : 0.0F;
}

void StandTable::find_spot(const Spot& spot, Hits& hits) const {
    const auto& table = spot.position ? by_place_ : by_row_;
    const float worth = spot.position ? 0.975F : 0.80F;
    table.each(spot.position ? place_key(spot.row, *spot.position) : spot.row, [&](std::uint32_t i) {
        const auto& tree = trees_[i];
        const bool there =
            row_key(*tree.row) == spot.row &&
            (!spot.position || (tree.position && std::to_string(*tree.position) == *spot.position));
        const float likeness = there ? block_likeness(tree, spot) : 0.0F;
        if (likeness > 0) {
            hits.add({.tree = i,
                      .score = worth * likeness,
                      .kind = MatchKind::address,
                      .extent = spot.position ? Extent::whole : Extent::part});
        }
    });
}

void StandTable::find(std::string_view query, Hits& hits) const {
    auto parts = name_parts(folded_text(query));
    const bool says_row = std::ranges::find(parts, "row") != parts.end();
    std::erase_if(parts, is_place_word);
    constexpr std::size_t longest_address = 12;  // block and row names of several words, and a position
    if (parts.empty() || parts.size() > longest_address) {
        return;
    }
    const std::span<const std::string> all(parts);
    for (std::size_t block = 0; block < all.size(); ++block) {
        const auto name = joined(all.first(block), "");
        if (block + 1 < all.size() && is_number(all.back())) {
            find_spot({name, joined(all.subspan(block, all.size() - block - 1), " "), all.back()}, hits);
        }
        if (says_row) {
            find_spot({name, joined(all.subspan(block), " "), {}}, hits);
        }
    }
}

}  // namespace pipward::place::detail
