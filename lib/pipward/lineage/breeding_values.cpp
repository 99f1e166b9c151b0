// SPDX-License-Identifier: MIT
// Notation: y = X b + Z a + W p + e, var a = A s_a, var p = I s_p, var e = I s_e; the equations are divided
// by 1 / s_e, so A^-1 comes in with s_e / s_a and I with s_e / s_p. Unknowns in the order b, a, p.
#include "pipward/lineage/breeding_values.h"

#include <Eigen/SparseCholesky>
#include <algorithm>
#include <map>

#include "pipward/lineage/detail/selected_inverse.h"

namespace pipward::lineage {
namespace {

using Sparse = Eigen::SparseMatrix<double>;
using Entries = std::vector<Eigen::Triplet<double>>;
using Factor = Eigen::SimplicialLDLT<Sparse>;

// Where each unknown stands among all.
struct Places {
    int groups = 0;
    int members = 0;
    std::map<int, int> permanent;  // by member, of those with scores; empty where nothing is permanent

    int count() const { return groups + members + static_cast<int>(permanent.size()); }
    std::vector<int> of(const ScoreRecord& score) const {
        std::vector<int> places{score.group, groups + score.member};
        if (const auto found = permanent.find(score.member); found != permanent.end()) {
            places.push_back(found->second);
        }
        return places;
    }
};

Places places_of(const KinshipFactors& factors, std::span<const ScoreRecord> scores, bool permanent) {
    Places places;
    places.members = factors.flow.members();
    for (const auto& score : scores) {
        places.groups = std::max(places.groups, score.group + 1);
    }
    for (const auto& score : scores) {
        if (permanent) {
            const int next = places.count();
            places.permanent.try_emplace(score.member, next);
        }
    }
    return places;
}

Sparse equations(const KinshipFactors& factors, std::span<const ScoreRecord> scores, const Places& places,
                 const ScoreVariance& variance) {
    const double residual = 1 - variance.repeatability;
    Entries entries;
    const auto add = [&](int a, int b, double value) {
        entries.emplace_back(std::max(a, b), std::min(a, b), value);
    };
    for (const auto& score : scores) {
        const auto of_score = places.of(score);
        for (std::size_t i = 0; i < of_score.size(); ++i) {
            for (std::size_t j = 0; j <= i; ++j) {
                add(of_score[i], of_score[j], 1);
            }
        }
    }
    for (const auto& entry : relationship_inverse(factors)) {
        add(places.groups + entry.row, places.groups + entry.column,
            entry.value * residual / variance.heritability);
    }
    for (const auto& [member, place] : places.permanent) {
        add(place, place, residual / (variance.repeatability - variance.heritability));
    }
    Sparse matrix(places.count(), places.count());
    matrix.setFromTriplets(entries.begin(), entries.end());
    return matrix;
}

Eigen::VectorXd right_side(std::span<const ScoreRecord> scores, const Places& places) {
    Eigen::VectorXd sums = Eigen::VectorXd::Zero(places.count());
    for (const auto& score : scores) {
        for (const int place : places.of(score)) {
            sums[place] += score.score;
        }
    }
    return sums;
}

// In the order of the unknowns, undoing the order that the factor chose.
std::vector<double> diagonal_of_inverse(const Factor& factor) {
    const Sparse lower = Sparse(factor.matrixL());
    detail::LowerColumns columns;
    for (int j = 0; j < lower.outerSize(); ++j) {
        columns.first.push_back(columns.row.size());
        for (Sparse::InnerIterator entry(lower, j); entry; ++entry) {
            if (entry.row() > j) {
                columns.row.push_back(static_cast<int>(entry.row()));
                columns.value.push_back(entry.value());
            }
        }
    }
    columns.first.push_back(columns.row.size());
    const Eigen::VectorXd d = factor.vectorD();
    const auto in_factor_order =
        detail::inverse_diagonal(columns, {d.data(), static_cast<std::size_t>(d.size())});
    const auto& place = factor.permutationP().indices();
    std::vector<double> diagonal;
    for (Eigen::Index i = 0; i < place.size(); ++i) {
        diagonal.push_back(in_factor_order[place[i]]);
    }
    return diagonal;
}

}  // namespace

std::optional<BreedingValues> breeding_values(const KinshipFactors& factors,
                                              std::span<const ScoreRecord> scores, ScoreVariance variance) {
    const bool permanent = variance.repeatability > variance.heritability;
    const auto places = places_of(factors, scores, permanent);
    const Factor factor(equations(factors, scores, places, variance));
    if (factor.info() != Eigen::Success) {
        return std::nullopt;
    }
    const Eigen::VectorXd solution = factor.solve(right_side(scores, places));
    const auto diagonal = diagonal_of_inverse(factor);
    const double ratio = (1 - variance.repeatability) / variance.heritability;
    BreedingValues result;
    result.groups.assign(solution.begin(), solution.begin() + places.groups);
    for (int member = 0; member < places.members; ++member) {
        const int place = places.groups + member;
        const double left_open = diagonal[place] * ratio / (1 + factors.inbreeding[member]);
        result.values.push_back({solution[place], std::clamp(1 - left_open, 0.0, 1.0)});
    }
    return result;
}

}  // namespace pipward::lineage
