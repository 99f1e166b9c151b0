// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <utility>

namespace pipward::place {

/// Weighted least squares with a mild pull of each coefficient towards zero, so that few points cannot bend a
/// line. Terms are added one equation at a time.
template <std::size_t N>
class LeastSquares {
  public:
    using Terms = std::array<double, N>;

    /// `spread` is how far each coefficient may well be from zero, in units of an equation's own error.
    explicit LeastSquares(const Terms& spread) {
        for (std::size_t i = 0; i < N; ++i) {
            matrix_[i][i] = 1 / (spread[i] * spread[i]);
        }
    }

    void add(const Terms& terms, double value, double weight) {
        for (std::size_t i = 0; i < N; ++i) {
            for (std::size_t j = 0; j < N; ++j) {
                matrix_[i][j] += weight * terms[i] * terms[j];
            }
            right_[i] += weight * terms[i] * value;
        }
    }

    /// By elimination; the pull keeps the matrix positive definite.
    Terms solve() const {
        auto m = matrix_;
        auto x = right_;
        for (std::size_t i = 0; i < N; ++i) {
            for (std::size_t r = i + 1; r < N; ++r) {
                const double factor = m[r][i] / m[i][i];
                for (std::size_t c = i; c < N; ++c) {
                    m[r][c] -= factor * m[i][c];
                }
                x[r] -= factor * x[i];
            }
        }
        for (std::size_t i = N; i-- > 0;) {
            for (std::size_t c = i + 1; c < N; ++c) {
                x[i] -= m[i][c] * x[c];
            }
            x[i] /= m[i][i];
        }
        return x;
    }

  private:
    std::array<Terms, N> matrix_{};
    Terms right_{};
};

/// Huber's weight: far points count, but not more than near ones.
inline double huber(double off, double scale) {
    const double bound = 1.5 * scale;
    return std::abs(off) <= bound ? 1.0 : bound / std::abs(off);
}

}  // namespace pipward::place
