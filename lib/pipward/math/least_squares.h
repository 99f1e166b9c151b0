// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <initializer_list>
#include <span>
#include <vector>

namespace pipward::math {

/// Weighted least squares with a mild pull of each coefficient towards zero (ridge regression: Hoerl &
/// Kennard 1970, Technometrics 12:55), so that few points cannot bend a line. Equations are added one at a
/// time; solved by Eigen.
class LeastSquares {
  public:
    /// One coefficient each: how far it may well be from zero, in units of an equation's own error; above 0.
    explicit LeastSquares(std::span<const double> spread);
    explicit LeastSquares(std::initializer_list<double> spread);

    /// `value` is the sum of the coefficients times `terms`, as many as there are coefficients. The weight is
    /// not negative.
    void add(std::span<const double> terms, double value, double weight);
    /// The same, written out.
    void add(std::initializer_list<double> terms, double value, double weight);

    /// The coefficients; 0 for each where there is no equation.
    std::vector<double> solve() const;

  private:
    std::size_t count_;
    std::vector<double> matrix_;  // of the normal equations, row by row
    std::vector<double> right_;
};

}  // namespace pipward::math
