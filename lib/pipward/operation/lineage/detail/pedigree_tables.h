// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/lineage/ancestor_shares.h"
#include "pipward/operation/operation.h"

/// The tables of a line.
namespace pipward::operation::detail {

ResultShape ancestor_share_shape();
ResultShape descendant_shape();
ResultShape pedigree_notation_shape();

Table ancestor_share_table(const lineage::PedigreeGraph& graph,
                           const std::vector<lineage::AncestorShare>& shares);
/// Everybody who descends from the subject, blends left out, nearest generations first.
Table descendant_table(const lineage::PedigreeGraph& graph, int subject);
/// The line in one string, in each notation, as far back as `generations`.
Table pedigree_notation_table(const lineage::PedigreeGraph& graph, int subject, int generations,
                              const Wording& wording);

}  // namespace pipward::operation::detail
