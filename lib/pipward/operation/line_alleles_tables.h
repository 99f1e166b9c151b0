// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/lineage/s_inference.h"
#include "pipward/lineage/s_parentage.h"
#include "pipward/record/table.h"

/// The tables of line-alleles: what one row holds.
namespace pipward::operation {

struct MatchRow {
    std::string seed_parent;
    std::string pollen_parent;
    lineage::SMatch match = lineage::SMatch::unknown;
    std::optional<double> share;
    Sentence from_alleles;
    std::optional<int> flowers;
    std::optional<int> set;
    Sentence from_field;
};

struct GenotypeRow {
    std::string accession;
    std::optional<lineage::SAlleles> alleles;
    lineage::SSource source = lineage::SSource::nothing;
    std::optional<double> chance;        ///< by the parents
    std::optional<double> field_chance;  ///< with the field's counts; nothing where it has none
    Sentence from_alleles;
    Sentence from_field;
};

struct ContradictionRow {
    std::string accession;
    std::string alleles;
    std::string seed_parent;
    std::string seed_alleles;
    std::string pollen_parent;
    std::string pollen_alleles;
    lineage::SContradiction verdict = lineage::SContradiction::no_pair;
};

TableShape match_shape();
TableShape genotype_shape();
TableShape contradiction_shape();
Table match_table(const std::vector<MatchRow>& rows);
Table genotype_table(const std::vector<GenotypeRow>& rows);
Table contradiction_table(const std::vector<ContradictionRow>& rows);

}  // namespace pipward::operation
