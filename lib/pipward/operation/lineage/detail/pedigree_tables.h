// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/lineage/ancestor_shares.h"
#include "pipward/operation/operation.h"

/// The tables of pedigrees, one accession after the other.
namespace pipward::operation::detail {

ResultShape ancestor_share_shape();
ResultShape descendant_shape();
ResultShape pedigree_notation_shape();

/// The ancestors of each accession; its own share comes first in its list.
Table ancestor_share_table(const lineage::PedigreeGraph& graph,
                           const std::vector<std::vector<lineage::AncestorShare>>& shares);
/// Everybody who descends from the subjects, blends left out, nearest generations first.
Table descendant_table(const lineage::PedigreeGraph& graph, const std::vector<int>& subjects);
/// Each pedigree in one string, in each notation, as far back as `generations`.
Table pedigree_notation_table(const lineage::PedigreeGraph& graph, const std::vector<int>& subjects,
                              int generations, const Wording& wording);

}  // namespace pipward::operation::detail
