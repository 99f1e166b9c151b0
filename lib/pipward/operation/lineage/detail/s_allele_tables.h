// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/operation/declare/column_of.h"
#include "pipward/seed/allele_evidence.h"

/// The tables of s-alleles.
namespace pipward::operation::detail {

extern const TableOf<seed::MatchRow> match_table;
extern const TableOf<seed::GenotypeRow> genotype_table;
extern const TableOf<seed::ContradictionRow> contradiction_table;

}  // namespace pipward::operation::detail
