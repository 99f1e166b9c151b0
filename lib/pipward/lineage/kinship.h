// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>

#include "pipward/record/orchard.h"

namespace pipward::lineage {

/// Malecot's coefficient of kinship of accessions by their recorded parents: the chance that one allele drawn
/// from each is the same by descent. Unknown parents are unrelated founders, and so is a parent that has a
/// name but no record of its own; a blend as pollen parent is a mixture of its members by their shares, so
/// what rests on a blend is an expectation. A child of the cross would have this inbreeding, and an accession
/// with itself has (1 + its inbreeding) / 2. Textbook: Lynch & Walsh 1998, Genetics and Analysis of
/// Quantitative Traits, ch. 7; blends: average relationship, Henderson 1988, J. Anim. Sci. 66:1614.
/// A sport has its original's genes. May be asked from several threads at once; of many pairs at once
/// lineage/kinship_factors.h.
class Kinship {
  public:
    /// Throws Error (input) where accessions are their own ancestors or sports: one finding a loop.
    /// A second record of a name is passed over. Shares of a blend that are missing divide what the others
    /// leave; shares that fall short of 1 leave the rest to unknown pollen, shares above 1 are scaled down.
    Kinship(std::span<const Accession> accessions, std::span<const BlendMember> blends);

    /// Range 0..1. Nothing where either name is unknown, where either or an ancestor of it is known not to be
    /// diploid, nor where no parent of either of two accessions is recorded: that they are unrelated would be
    /// a guess.
    std::optional<double> between(const std::string& a, const std::string& b) const;

  private:
    struct Pedigree;
    std::shared_ptr<const Pedigree> pedigree_;
};

}  // namespace pipward::lineage
