// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "pipward/lineage/pedigree_order.h"

/// Relationships of whole orchards at once. The matrix A of relationships (twice the kinships) is never
/// written down: A = T D T', where a row of T follows the genes from every ancestor and D is what chance adds
/// in each member (Henderson 1976, Biometrics 32:69). Columns of A come from one walk up and one walk down
/// the pedigree (Colleau 2002, Genet. Sel. Evol. 34:409). A blend is a mixture of gametes: row of a child =
/// half the mean row of its seed parents + half the mean row of its pollen parents (average relationship,
/// Henderson 1988, J. Anim. Sci. 66:1614).
namespace pipward::lineage {

/// What a member has of each parent's genes: the entries `first[i]` to `first[i + 1]` of `parents`, each
/// parent once. Selfed: one entry of share 1.
struct GeneFlow {
    std::vector<std::size_t> first;    ///< one more than members, rising from 0
    std::vector<ParentShare> parents;  ///< shares of the child's genes, 0..1: half the gamete's

    /// 0 or more, of a flow that kinship_factors() made.
    int members() const { return static_cast<int>(first.size()) - 1; }
    /// None for a founder; shares sum to 1 where no parent is unknown. Needs 0 <= member < members().
    std::span<const ParentShare> parents_of(int member) const {
        const auto at = static_cast<std::size_t>(member);
        return std::span(parents).subspan(first[at], first[at + 1] - first[at]);
    }
};

/// By member, as in the order that they were made of.
struct KinshipFactors {
    GeneFlow flow;                   ///< who has its genes from whom
    std::vector<double> inbreeding;  ///< F, 0..1; 0 for members that are not calculated
    std::vector<double> sampling;    ///< the diagonal of D, 0..1
};

/// Of an order without loops, parents before children. Members that are not calculated stand alone, without
/// parents: leave them out of what is shown. Unknown parents are unrelated founders.
KinshipFactors kinship_factors(std::span<const PedigreeMember> members);

/// Kinships of every one of `rows` with every one of `columns`, row by row; of a member with itself
/// (1 + F) / 2. Members that are not calculated give values without a meaning.
std::vector<double> kinship_block(const KinshipFactors& factors, std::span<const int> rows,
                                  std::span<const int> columns);

/// An entry of a symmetric matrix, row <= column.
struct MatrixEntry {
    int row = 0;       ///< member
    int column = 0;    ///< member
    double value = 0;  ///< without a unit
};

/// The inverse of A, its entries that are not zero, by row and column: Henderson's rules with Quaas's
/// inbreeding (1976, Biometrics 32:949), and for blends the same product (I - W)' D^-1 (I - W). Of lines
/// selfed so long that nothing is left to chance, D is taken as `least_sampling`.
std::vector<MatrixEntry> relationship_inverse(const KinshipFactors& factors);
/// Keeps 1 / D finite; D is 0.5 for a child of two founders, 1 for a founder.
inline constexpr double least_sampling = 1e-9;

}  // namespace pipward::lineage
