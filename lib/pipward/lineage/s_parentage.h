// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "pipward/lineage/s_alleles.h"
#include "pipward/record/words.h"

namespace pipward::lineage {

/// What speaks against recorded parents.
enum class SContradiction {
    no_seed_allele,    ///< the child has no allele of its seed parent
    no_pollen_allele,  ///< the child has no allele of its pollen parent
    no_pair,           ///< it cannot have one allele of each
    rejected_pollen    ///< only by pollen that the style should have turned away; styles leak
};

/// What each is called in tables.
std::span<const Word<SContradiction>> words(SContradiction);

/// Holds a child's two alleles against those of its recorded parents; of a blend, the alleles of all its
/// members together. Nothing where all is well, where neither parent's alleles are known, or where the
/// child's are not two.
std::optional<SContradiction> s_contradiction(const SAlleles& child, const std::optional<SAlleles>& seed,
                                              const std::optional<SAlleles>& pollen);

}  // namespace pipward::lineage
