// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/lineage/pedigree_order.h"
#include "pipward/record/words.h"

namespace pipward::lineage {

/// What one accession is to another by the recorded parents, the closest that holds. How much kinship they
/// share is the kinship: inbred sibs share more than others.
enum class Relation {
    same,             ///< the same accession, or a sport or clone of it
    parent,           ///< one is a parent of the other
    child,            ///< one is a child of the other
    selfed,           ///< one came of the other selfed
    selfed_to,        ///< the other came of one selfed
    full_sibs,        ///< both parents are the same
    blend_sibs,       ///< the same seed parent and the same pollen blend
    half_sibs,        ///< one parent is the same
    possible_parent,  ///< one is a member of the blend that the other came of
    possible_child,   ///< the other is a member of the blend that this one came of
    grandparent,      ///< one is a parent of a parent of the other
    grandchild,       ///< one is a child of a child of the other
    related,          ///< in another way
    unrelated,        ///< no common ancestor is recorded
    unknown           ///< no parent of either is recorded, or the kinship cannot be calculated
};

/// What each is called in tables.
std::span<const Word<Relation>> words(Relation);

/// Of two members of an order without loops. Their kinship, nothing where it is not calculated, tells the
/// last cases apart.
Relation relation_of(const PedigreeOrder& order, int one, int other, std::optional<double> kinship);

}  // namespace pipward::lineage
