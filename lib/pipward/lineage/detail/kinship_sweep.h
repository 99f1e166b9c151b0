// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <span>
#include <vector>

#include "pipward/lineage/kinship_factors.h"

/// The walk up and down a pedigree that gives columns of A, eight at a time.
namespace pipward::lineage::detail {

inline constexpr std::size_t sweep_lanes = 8;
using Lanes = std::array<double, sweep_lanes>;

/// Its room to work in is kept from one run to the next.
class KinshipSweep {
  public:
    /// The pedigree must outlive this.
    explicit KinshipSweep(const GeneFlow& flow);

    /// A x for up to eight mixtures x of members, at the wanted members and their ancestors. Of `sampling`
    /// only the values of the mixtures' members and their ancestors are read.
    void run(std::span<const double> sampling, std::span<const std::vector<ParentShare>> mixtures,
             std::span<const int> wanted);

    /// Of the last run: at a member, one value a mixture.
    const Lanes& at(int member) const { return values_[member]; }

  private:
    void mark(std::span<const std::vector<ParentShare>> mixtures, std::span<const int> wanted);
    void walk_up(std::span<const double> sampling);
    void walk_down();

    const GeneFlow& flow_;
    std::vector<Lanes> values_;
    std::vector<unsigned char> marks_;
    std::vector<int> on_way_up_;    // falling
    std::vector<int> on_way_down_;  // rising
};

/// The same pedigree with the marked members only, whose parents are all marked. `place` gets the new number
/// of each, -1 for the others.
GeneFlow marked_part(const GeneFlow& flow, const std::vector<bool>& marked, std::vector<int>& place);

}  // namespace pipward::lineage::detail
