// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/place/detail/place_words.h"

/// Inside of the room: a search text taken for several fields of one tree's record, in any order: "row 3 tree
/// 12 Upper", "Wrenlea on M9, planted 2019".
namespace pipward::place::detail {

/// A field of a tree's record that search texts name.
enum class Facet { label, accession, position, row, block, rootstock, year };
inline constexpr std::size_t facet_count = 7;

/// A value that a field may have, and how like it the words are, 0 to 1. Positions and years are numbers as
/// they are.
struct Value {
    std::uint32_t id = 0;
    float likeness = 1;
};
using Values = std::vector<Value>;

/// How far words are stretched for a name.
enum class Effort {
    whole,        ///< it is there as the book has it
    abbreviated,  ///< its beginning, the beginnings of its words in any order, its initials
    misspelt      ///< with slips
};

/// What words may be the names of; answered by the book's own names.
class Vocabulary {
  public:
    virtual ~Vocabulary() = default;
    /// Values of the field whose name the tokens are. Not asked for positions and years.
    virtual Values called(Facet facet, std::span<const Token> tokens, Effort effort) const = 0;
};

/// One way to understand the whole of a search text: every field that it names has one of some values.
struct Reading {
    std::array<Values, facet_count> of{};  ///< by Facet; empty where not named
    bool row_said = false;                 ///< with the word for it
    int passed_over = 0;                   ///< words for a row or a position that no number was found for

    int fillers = 0;  ///< words such as "of" or "la", which might be more than that

    const Values& at(Facet facet) const { return of[static_cast<std::size_t>(facet)]; }
    bool has(Facet facet) const { return !at(facet).empty(); }
    int fields() const;
};

/// All of them that leave no word over; those with the fewest words passed over. At most twelve tokens are
/// looked at, longer texts have none.
std::vector<Reading> readings_of(std::span<const Token> tokens, const Vocabulary& vocabulary, Effort effort);

}  // namespace pipward::place::detail
