// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// The recorded parents as numbers, parents before children.
namespace pipward::lineage {

/// A parent and how much of a gamete is expected to be its.
struct ParentShare {
    int parent = 0;    ///< into PedigreeOrder::members
    double share = 0;  ///< of the gamete, 0..1
};

/// What one side gave: of each possible parent its share. None: unknown; several: a blend.
using Gamete = std::vector<ParentShare>;

/// One accession, or one parent that has a name only.
struct PedigreeMember {
    std::string name;     ///< of a sport's original where both are recorded
    Gamete seed;          ///< of the seed parent's side
    Gamete pollen;        ///< of the pollen parent's side
    bool diploid = true;  ///< or of unknown ploidy
    /// Neither itself nor an ancestor is known to be anything but diploid. What comes of a triploid has no
    /// half of its genes to assume, nor has what comes of that.
    bool calculated = true;
    bool expected = false;  ///< a blend stands in its line: what is calculated of it is an expectation

    /// No parent of it is known.
    bool is_founder() const { return seed.empty() && pollen.empty(); }
};

/// Founders and names without a record are members as well.
struct PedigreeOrder {
    std::vector<PedigreeMember> members;  ///< every parent stands before its children
    std::map<std::string, int> number;    ///< by name; a sport has the number of its original
    Findings loops;  ///< an error for each accession that is its own ancestor, or the sport of itself
};

/// Every accession, and every parent or blend member that has a name only. The order of the records decides
/// nothing but the order of unrelated members.
PedigreeOrder pedigree_order(std::span<const Accession> accessions, std::span<const BlendMember> blends);

}  // namespace pipward::lineage
