// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/table.h"
#include "pipward/seed/allele_evidence.h"

/// The tables of line-alleles.
namespace pipward::operation::detail {

TableShape match_shape();
TableShape genotype_shape();
TableShape contradiction_shape();
Table match_table(const std::vector<seed::MatchRow>& rows);
Table genotype_table(const std::vector<seed::GenotypeRow>& rows);
Table contradiction_table(const std::vector<seed::ContradictionRow>& rows);

}  // namespace pipward::operation::detail
