// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/model.h"

namespace pipward::bloom::detail {

/// What an accession without notes can lean on when its parents are no help: the mean of the orchard's
/// accessions of its kind.
struct OrchardMean {
    std::vector<double> amount;  ///< one a structure: the pooled centre
    double between_sd_days = 0;  ///< of accessions about the mean
    double luck_sd_days = 0;     ///< of the mean itself
};
/// The mean that an accession leans on.
using MeanOf = std::function<OrchardMean(const Accession&)>;

/// Adds a need for every accession that has none: the mid-parent of its parents' needs; with one parent known
/// the mean of that parent and the orchard; else the orchard's mean. Parents that borrow from theirs count as
/// known. A pedigree that runs in a circle ends at the orchard's mean. The order of `accessions` is of no
/// effect.
void borrow_needs(std::map<std::string, Need>& needs, std::span<const Accession> accessions,
                  const MeanOf& mean_of_kind);

}  // namespace pipward::bloom::detail
