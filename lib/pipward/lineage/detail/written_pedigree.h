// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <vector>

#include "pipward/lineage/pedigree_order.h"

namespace pipward::lineage::detail {

/// The pedigree as the records have it: numbered in their order, then names without a record.
struct WrittenPedigree {
    std::vector<PedigreeMember> members;
    std::map<std::string, int> number;  ///< by name; a sport has the number of its original
    Findings circles;                   ///< an error for each circle of sports
};

/// A sport has its original's genes, so it is its original here: it brings no member of its own, unless it is
/// recorded with another number of chromosome sets than two. Where no parent of the original is recorded,
/// those of its first sport with parents are taken.
WrittenPedigree written_pedigree(std::span<const Accession> accessions, std::span<const BlendMember> blends);

}  // namespace pipward::lineage::detail
