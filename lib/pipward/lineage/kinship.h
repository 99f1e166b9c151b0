// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>

#include "pipward/record/orchard.h"

namespace pipward {

/// Malecot's coefficient of kinship of accessions by their recorded parents: the chance that one allele drawn
/// from each is the same by descent. Unknown parents are unrelated founders; a blend as pollen parent is a
/// mixture of its members by their shares. A child of the cross would have this inbreeding. Textbook: Lynch &
/// Walsh 1998, Genetics and Analysis of Quantitative Traits, ch. 7.
class Kinship {
  public:
    /// Throws Error (input) where an accession is its own ancestor.
    Kinship(std::span<const Accession> accessions, std::span<const BlendMember> blends);

    /// Nothing where either name is unknown or either is known not to be diploid.
    std::optional<double> between(const std::string& a, const std::string& b) const;

  private:
    struct Pedigree;
    std::shared_ptr<const Pedigree> pedigree_;
};

}  // namespace pipward
