// SPDX-License-Identifier: MIT
// Notation: Z = (L D L')^-1. Z = D^-1 L^-1 + (I - L') Z, so a column of Z below its diagonal follows from the
// columns behind it, and z_jj = 1 / d_j - sum over k > j of l_kj z_kj.
#include "pipward/lineage/detail/selected_inverse.h"

#include <algorithm>

namespace pipward::lineage::detail {
namespace {

class Selected {
  public:
    explicit Selected(const LowerColumns& lower)
        : lower_(lower), below_(lower.value.size()), diagonal_(lower.first.size() - 1) {}

    void work_out(int column, double d) {
        const auto begin = lower_.first[column];
        const auto end = lower_.first[column + 1];
        for (auto at = begin; at < end; ++at) {
            double sum = 0;
            for (auto k = begin; k < end; ++k) {
                sum -= lower_.value[k] * entry(lower_.row[k], lower_.row[at]);
            }
            below_[at] = sum;
        }
        double sum = 1 / d;
        for (auto k = begin; k < end; ++k) {
            sum -= lower_.value[k] * below_[k];
        }
        diagonal_[column] = sum;
    }

    std::vector<double> diagonal() && { return std::move(diagonal_); }

  private:
    // Two rows that stand in one column of L meet in an entry of L themselves: that is what filling means.
    double entry(int a, int b) const {
        if (a == b) {
            return diagonal_[a];
        }
        const int column = std::min(a, b);
        const auto rows = lower_.row.begin();
        const auto begin = rows + static_cast<std::ptrdiff_t>(lower_.first[column]);
        const auto end = rows + static_cast<std::ptrdiff_t>(lower_.first[column + 1]);
        return below_[std::lower_bound(begin, end, std::max(a, b)) - rows];
    }

    const LowerColumns& lower_;
    std::vector<double> below_;
    std::vector<double> diagonal_;
};

}  // namespace

std::vector<double> inverse_diagonal(const LowerColumns& lower, std::span<const double> diagonal) {
    Selected selected(lower);
    for (int column = static_cast<int>(diagonal.size()) - 1; column >= 0; --column) {
        selected.work_out(column, diagonal[column]);
    }
    return std::move(selected).diagonal();
}

}  // namespace pipward::lineage::detail
