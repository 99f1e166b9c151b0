// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "pipward/value/sentence.h"

/// How a scrap led to a tree.
namespace pipward::place {

enum class MatchKind : std::uint8_t {
    label,
    accession,
    tag,           ///< of a pollination on the tree
    cross_child,   ///< a seedling of the cross of this code
    cross_worked,  ///< its flowers were worked for the cross of this code
    cross_parent,  ///< of the seed parent of the cross of this code, which nobody has worked yet
    parents,       ///< a seedling of these parents: "A × B no. 17"
    address,       ///< block, row, position
    note,          ///< words of a note
    nearness,      ///< nothing but where it stands
};

enum class Extent : std::uint8_t { whole, part, like };

struct Match {
    MatchKind kind = MatchKind::label;
    Extent extent = Extent::whole;
    int slips = 0;  ///< letters off, where the name is only like the scrap
    Sentence what;  ///< the name, address or note that matched, as the book has it
};

/// "label", "part of accession Larkfold Red", "accession Wrenlea, 1 letter off".
Sentence to_text(const Match& match);

}  // namespace pipward::place
