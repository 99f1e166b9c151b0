// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "pipward/value/sentence.h"

/// How a search text led to a tree.
namespace pipward::place {

/// By what a tree was found.
enum class MatchKind : std::uint8_t {
    label,             ///< the tree's own
    accession,         ///< the accession that the tree is of
    tag,               ///< of a pollination on the tree
    cross_child,       ///< a seedling of the cross of this code
    cross_pollinated,  ///< its flowers were worked for the cross of this code
    cross_parent,      ///< of the seed parent of the cross of this code, which nobody has worked yet
    pollen_lot,        ///< its flowers gave, or were pollinated with, the pollen lot of this code
    seed_lot,          ///< a seedling of the seed lot of this code, or of its cross
    record,            ///< several fields of its record: accession, block, rootstock, year
    parents,           ///< a seedling of these parents: "A × B no. 17"
    address,           ///< block, row, position
    remark,            ///< words of a note
    nearness,          ///< where it stands: near the place that was given
};

/// How much of a name the search text is.
enum class Extent : std::uint8_t {
    whole,  ///< all of it, be it with other capitals or blanks
    part,   ///< a part of it
    like    ///< only like it, with slips
};

/// By what, and how nearly.
struct Match {
    MatchKind kind = MatchKind::label;  ///< what the search text named
    Extent extent = Extent::whole;      ///< how much of that name it is
    int slips = 0;                      ///< letters off, where the name is only like the search text
    Sentence what;                      ///< the name, address or note that matched, as the book has it
};

/// "label", "part of accession Larkfold Red", "accession Wrenlea, 1 letter off".
Sentence to_text(const Match& match);

}  // namespace pipward::place
