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

/// What alleles and worked crosses tell, collected once and told row by row.
namespace pipward::seed {

/// A sum of shares or chances (0..1) from here on is the whole but for rounding.
constexpr double certain = 1 - 1e-9;

/// All that is known of the alleles and of the crosses that were worked.
struct Evidence {
    const Orchard& orchard;        ///< lent; it must outlive the evidence
    lineage::PedigreeOrder order;  ///< of the pedigree; it tells each accession's number
    /// By number; empty where the book has none that can be read.
    std::vector<std::optional<lineage::SAlleles>> recorded;
    /// By number: the genotypes that each may have, by its own record or its parents'.
    std::vector<lineage::SKnowledge> knowledge;
    std::map<PairOfParents, lineage::CrossCount> counts;  ///< of worked crosses, by their parents
    /// What the counts are held against; the set is the orchard's own as learn() has it.
    lineage::SetChances chances;

    /// What is known of an accession; nothing for a name that the book does not have.
    lineage::SKnowledge of(const std::string& name) const {
        const auto member = order.number.find(name);
        return member == order.number.end() ? lineage::SKnowledge{} : knowledge[member->second];
    }
    /// The alleles that the book has of it; empty where it has none, or no such accession.
    std::optional<lineage::SAlleles> recorded_of(const std::string& name) const {
        const auto member = order.number.find(name);
        return member == order.number.end() ? std::nullopt : recorded[member->second];
    }
};

/// Throws Error (input) where accessions are their own ancestors or sports. The orchard must outlive it.
Evidence collected_evidence(const Orchard& orchard, Day as_of);

/// What one accession's pollen does at another's style.
struct MatchRow {
    std::string seed_parent;                           ///< whose style it is
    std::string pollen_parent;                         ///< whose pollen it is, an accession
    lineage::SMatch match = lineage::SMatch::unknown;  ///< unknown where the alleles do not settle it
    /// Of the pollen that can grow, 0..1, expected over what the alleles may be; empty where some are not
    /// known.
    std::optional<double> share;
    Sentence from_alleles;  ///< why, by the alleles
    /// Worked in all crosses of these parents with every fruit counted; empty without such a cross.
    std::optional<int> flowers;
    std::optional<int> set;  ///< of them with a fruit; empty likewise
    Sentence from_field;     ///< what the counts say to it; empty without any
};

/// A genotype that an accession may have, and what tells so.
struct GenotypeRow {
    std::string accession;                                ///< its name
    std::optional<lineage::SAlleles> alleles;             ///< empty where nothing is known
    lineage::SSource source = lineage::SSource::nothing;  ///< whence the genotype is known
    std::optional<double> chance;        ///< by the parents, 0..1; empty where it is recorded
    std::optional<double> field_chance;  ///< the same with the field's counts; empty where it has none
    Sentence from_alleles;               ///< why, by its own record or its parents'
    Sentence from_field;  ///< what the counts of its crosses say to it; empty where they say nothing
};

/// Recorded alleles that cannot have come from the recorded parents.
struct ContradictionRow {
    std::string accession;       ///< the child
    std::string alleles;         ///< of the child, as read: "S2 S3"; below likewise, empty where not recorded
    std::string seed_parent;     ///< empty where the book has none
    std::string seed_alleles;    ///< of the seed parent
    std::string pollen_parent;   ///< an accession or a blend; empty where the book has none
    std::string pollen_alleles;  ///< of the pollen parent; of a blend those of all its members
    lineage::SContradiction verdict = lineage::SContradiction::no_pair;  ///< what does not fit
};

/// "5 of 60 flowers set."
Sentence count_words(const lineage::CrossCount& count);
/// Of a cross that set nothing, with how rarely chance would do that.
Sentence none_words(const lineage::CrossCount& count, const lineage::SetChances& chances);

/// Any two names; of one that the book does not have nothing is known.
MatchRow match_row(const Evidence& evidence, const std::string& seed, const std::string& pollen);
/// A row for every genotype that the accession may have; one without alleles where nothing is known.
std::vector<GenotypeRow> genotype_rows(const Evidence& evidence, const std::string& name);
/// Nothing where its recorded alleles fit its parents', or too little is recorded.
/// The accession is one of the evidence's orchard.
std::optional<ContradictionRow> contradiction_of(const Evidence& evidence, const Accession& accession);

}  // namespace pipward::seed
