// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/lineage/pedigree_order.h"
#include "pipward/lineage/s_alleles.h"
#include "pipward/record/words.h"

/// S-genotypes that nobody has determined, from those of the parents.
namespace pipward::lineage {

/// Stands for an allele that is not known.
inline constexpr std::string_view unknown_allele = "?";

/// One of the genotypes that an accession may have.
struct SGenotype {
    SAlleles alleles;   ///< two; unknown_allele among them where one is not known
    double chance = 1;  ///< 0..1
};

/// Where knowledge of alleles comes from.
enum class SSource {
    recorded,  ///< the book has the accession's own entry
    parents,   ///< calculated from its parents
    nothing    ///< neither
};
std::span<const Word<SSource>> words(SSource);

/// What is known of one accession's alleles.
struct SKnowledge {
    SSource source = SSource::nothing;  ///< `nothing` exactly where `genotypes` is empty
    std::vector<SGenotype>
        genotypes;  ///< the likeliest first, chances of sum 1; empty where nothing is known
};

/// What the book records, by member of the order: an accession's own entry, else that of a sport of it.
/// Entries that cannot be read, or hold fewer than two alleles, count as unknown.
std::vector<std::optional<SAlleles>> recorded_s_alleles(std::span<const Accession> accessions,
                                                        const PedigreeOrder& order);

/// By member of an order without loops. A child has one allele of each parent: the seed parent's with equal
/// chances, the pollen parent's among those that the style lets through, so an allele that both parents have
/// never comes through the pollen. A blend is one pool of pollen by its shares. An unknown parent, or one
/// that is known not to be diploid, gives an unknown allele; of an accession that is not diploid only what is
/// recorded is known. An allele that is not known may be any, also one that the style would turn away.
std::vector<SKnowledge> s_knowledge(const PedigreeOrder& order,
                                    std::span<const std::optional<SAlleles>> recorded);

/// Chances of what a cross is; the first four sum to 1.
struct SMatchChances {
    double full = 0;     ///< of SMatch::full, 0..1
    double half = 0;     ///< of SMatch::half, 0..1
    double none = 0;     ///< of SMatch::none, 0..1
    double unknown = 0;  ///< an allele of either is not known, 0..1
    double share = 0;    ///< expected share of the pollen let through, where nothing is unknown
};
/// Over all pairs of the genotypes, taken as independent of one another. Where nothing is known of either,
/// `unknown` is 1 and `share` is 0.
SMatchChances s_match_chances(const SKnowledge& seed_parent, const SKnowledge& donor);

}  // namespace pipward::lineage
