// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

namespace pipward::lineage::detail {

/// A unit lower triangular matrix by columns, its ones left out: the rows of column j, rising, and their
/// values stand from first[j] to first[j + 1].
struct LowerColumns {
    std::vector<std::size_t> first;
    std::vector<int> row;
    std::vector<double> value;
};

/// The diagonal of (L D L')^-1, exact, without the rest of the inverse: only entries where L has one are
/// worked out (Takahashi, Fagan & Chin 1973; Erisman & Tinney 1975, Commun. ACM 18:177). Time and room grow
/// with the filling of L, not with its size squared. The pattern of L must be that of a factorisation.
std::vector<double> inverse_diagonal(const LowerColumns& lower, std::span<const double> diagonal);

}  // namespace pipward::lineage::detail
