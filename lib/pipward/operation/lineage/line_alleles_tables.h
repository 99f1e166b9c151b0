// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/operation/operation.h"
#include "pipward/seed/allele_evidence.h"

/// The tables of line-alleles.
namespace pipward::operation {

ResultShape match_shape();
ResultShape genotype_shape();
ResultShape contradiction_shape();
Table match_table(const std::vector<seed::MatchRow>& rows);
Table genotype_table(const std::vector<seed::GenotypeRow>& rows);
Table contradiction_table(const std::vector<seed::ContradictionRow>& rows);

}  // namespace pipward::operation
