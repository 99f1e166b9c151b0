// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/schema.h"

/// Where the fields of a user's own layer may go.
namespace pipward::intake {

/// A column of the book, or a coordinate of a layer that has no geometry: table "place", x and y, or at for both in
/// one.
struct LayerColumn {
    std::string code;                         ///< "tree.planted_on"
    std::string_view table;                   ///< as the book stores its name; place_table for a coordinate
    std::string_view name;                    ///< as the book stores it; "x", "y" or "at" for coordinates
    std::string_view label;                   ///< for people: "Planted on"
    const book::BookColumn* bound = nullptr;  ///< null for a coordinate
    std::vector<std::string_view> words{};    ///< folded as book::field_word() folds; the likelier first
};

inline constexpr std::string_view place_table = "place";  ///< of the coordinates: no table of the book

/// The tables that layers can be adopted into.
std::span<const std::string_view> imported_tables();

/// Every column of those tables and the coordinates, with the words that people use for them.
std::span<const LayerColumn> layer_columns();
/// The one of that code, or null.
const LayerColumn* find_layer_column(std::string_view code);

/// Whether it is the name of such a column, or a word for one.
bool heads_a_layer(std::string_view heading);

}  // namespace pipward::intake
