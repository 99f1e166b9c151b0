// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/lineage/pedigree_order.h"
#include "pipward/lineage/s_inference.h"
#include "pipward/lineage/s_parentage.h"
#include "pipward/seed/field_counts.h"

/// What alleles and worked crosses tell, gathered once and told row by row.
namespace pipward::seed {

/// All that is known of the alleles and of the crosses that were worked.
struct Evidence {
    const Orchard& orchard;
    lineage::PedigreeOrder order;
    std::vector<std::optional<lineage::SAlleles>> recorded;
    std::vector<lineage::SKnowledge> knowledge;
    std::map<PairOfParents, lineage::CrossCount> counts;
    lineage::SetChances chances;

    lineage::SKnowledge of(const std::string& name) const {
        const auto member = order.number.find(name);
        return member == order.number.end() ? lineage::SKnowledge{} : knowledge[member->second];
    }
    std::optional<lineage::SAlleles> recorded_of(const std::string& name) const {
        const auto member = order.number.find(name);
        return member == order.number.end() ? std::nullopt : recorded[member->second];
    }
};

/// Throws Error (input) where accessions are their own ancestors or sports. The orchard must outlive it.
Evidence gathered_evidence(const Orchard& orchard, Day as_of);

/// What one accession's pollen does at another's style.
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

/// A genotype that an accession may have, and what tells so.
struct GenotypeRow {
    std::string accession;
    std::optional<lineage::SAlleles> alleles;
    lineage::SSource source = lineage::SSource::nothing;
    std::optional<double> chance;        ///< by the parents
    std::optional<double> field_chance;  ///< with the field's counts; nothing where it has none
    Sentence from_alleles;
    Sentence from_field;
};

/// Recorded alleles that cannot have come from the recorded parents.
struct ContradictionRow {
    std::string accession;
    std::string alleles;
    std::string seed_parent;
    std::string seed_alleles;
    std::string pollen_parent;
    std::string pollen_alleles;
    lineage::SContradiction verdict = lineage::SContradiction::no_pair;
};

/// "5 of 60 flowers set."
Sentence count_words(const lineage::CrossCount& count);
/// Of a cross that set nothing, with how rarely chance would do that.
Sentence none_words(const lineage::CrossCount& count, const lineage::SetChances& chances);

MatchRow match_row(const Evidence& evidence, const std::string& seed, const std::string& pollen);
/// A row for every genotype that the accession may have; one without alleles where nothing is known.
std::vector<GenotypeRow> genotype_rows(const Evidence& evidence, const std::string& name);
/// Nothing where its recorded alleles fit its parents', or too little is recorded.
std::optional<ContradictionRow> contradiction_of(const Evidence& evidence, const Accession& accession);

}  // namespace pipward::seed
