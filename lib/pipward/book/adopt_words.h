// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/schema.h"

/// The words by which people call what the book calls otherwise, as plain data.
namespace pipward::book {

/// A column that a user's field may go to. The three of the table "place" are not the book's: they are the
/// coordinates of layers that have no geometry.
struct AdoptColumn {
    std::string_view table;
    std::string_view column;
    std::vector<std::string_view> words;  ///< folded as field_word() folds; the likelier first
};

inline constexpr std::string_view place_table = "place";

/// Every column that something can be adopted into, with its trade words.
std::span<const AdoptColumn> adopt_columns();

/// The tables that layers can be adopted into.
std::span<const std::string_view> adopted_tables();

/// What a closed list's word is also called, folded: "mother" for "parent". Of the list "species", which is
/// open, what botanists call an apple and a pear.
struct ChoiceWords {
    std::string_view domain;
    std::string_view word;
    std::vector<std::string_view> also;
};
std::span<const ChoiceWords> adopt_choices();

}  // namespace pipward::book
