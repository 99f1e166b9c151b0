// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/lineage/ancestor_shares.h"
#include "pipward/record/table.h"

/// The tables of a line.
namespace pipward::operation::detail {

TableShape ancestor_share_shape();
TableShape descendant_shape();
TableShape line_text_shape();

Table ancestor_share_table(const lineage::LineGraph& graph,
                           const std::vector<lineage::AncestorShare>& shares);
/// Everybody who descends from the subject, blends left out, nearest generations first.
Table descendant_table(const lineage::LineGraph& graph, int subject);
/// The line in one string, in each notation, as far back as `generations`.
Table line_text_table(const lineage::LineGraph& graph, int subject, int generations, const Wording& wording);

}  // namespace pipward::operation::detail
