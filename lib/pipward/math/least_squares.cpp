// SPDX-License-Identifier: MIT
#include "pipward/math/least_squares.h"

#include <Eigen/Cholesky>

namespace pipward::math {

LeastSquares::LeastSquares(std::initializer_list<double> spread)
    : LeastSquares(std::span<const double>(spread.begin(), spread.size())) {}

LeastSquares::LeastSquares(std::span<const double> spread)
    : count_(spread.size()), matrix_(count_ * count_, 0.0), right_(count_, 0.0) {
    for (std::size_t i = 0; i < count_; ++i) {
        const double far = spread[i];
        matrix_[i * count_ + i] = 1 / (far * far);
    }
}

void LeastSquares::add(std::initializer_list<double> terms, double value, double weight) {
    add(std::span<const double>(terms.begin(), terms.size()), value, weight);
}

void LeastSquares::add(std::span<const double> term, double value, double weight) {
    for (std::size_t i = 0; i < count_; ++i) {
        for (std::size_t j = 0; j < count_; ++j) {
            matrix_[i * count_ + j] += weight * term[i] * term[j];
        }
        right_[i] += weight * term[i] * value;
    }
}

std::vector<double> LeastSquares::solve() const {
    const auto size = static_cast<Eigen::Index>(count_);
    const Eigen::Map<const Eigen::MatrixXd> matrix(matrix_.data(), size, size);
    const Eigen::Map<const Eigen::VectorXd> right(right_.data(), size);
    std::vector<double> coefficients(count_);
    // The pull keeps the matrix positive definite.
    Eigen::Map<Eigen::VectorXd>(coefficients.data(), size) = matrix.ldlt().solve(right);
    return coefficients;
}

}  // namespace pipward::math
