// SPDX-License-Identifier: MIT
#include "pipward/lineage/breeding_values.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <optional>

#include "lineage/pedigree_maker.h"
#include "pipward/lineage/detail/selected_inverse.h"

namespace pipward::lineage {
namespace {

using testing::child_of;

struct SolvedExample {
    std::map<std::string, int> groups;
    PedigreeOrder order;
    std::optional<BreedingValues> got;
};

SolvedExample solved(const testing::Rows& rows) {
    SolvedExample example{{{"male", 0}, {"female", 1}}, pedigree_order(testing::pedigree_in(rows), {}), {}};
    std::vector<ScoreRecord> scores;
    for (const auto& row : rows) {
        if (row.at(0) == "score") {
            scores.push_back(
                {example.order.number.at(row.at(1)), example.groups.at(row.at(2)), std::stod(row.at(3))});
        }
    }
    example.got = breeding_values(kinship_factors(example.order.members), scores, {1.0 / 3, 1.0 / 3});
    return example;
}

// How many rows told of a solution.
int expect_solutions(const SolvedExample& example, const testing::Rows& rows, double tolerance) {
    int checked = 0;
    for (const auto& row : rows) {
        if (row.at(0) == "group") {
            const double group = example.got->groups.at(example.groups.at(row.at(1)));
            EXPECT_NEAR(group, std::stod(row.at(2)), tolerance);
            ++checked;
        } else if (row.at(0) == "value") {
            const auto& value = example.got->values.at(example.order.number.at(row.at(1)));
            EXPECT_NEAR(value.value, std::stod(row.at(2)), tolerance) << row[1];
            if (row.size() > 3) {
                EXPECT_NEAR(value.reliability, std::stod(row[3]), 5.1e-4) << row[1];
            }
            ++checked;
        }
    }
    return checked;
}

TEST(BreedingValues, AgreeWithMrodesExample) {
    const auto printed = testing::oracle_rows("lineage-mrode-example-3-1.txt");
    const auto example = solved(printed);
    ASSERT_TRUE(example.got);
    EXPECT_EQ(expect_solutions(example, printed, 6e-4), 10);
    EXPECT_EQ(expect_solutions(example, testing::regression_rows("lineage-mrode-example-3-1.txt"), 5.1e-5),
              10);
}

// One accession alone in a wide group: the textbook's n h2 / (1 + (n - 1) r), for the group's mean is known.
TEST(BreedingValues, OfOneAccessionAmongManyFollowTheSelectionIndexOfRepeats) {
    std::vector<Accession> accessions;
    std::vector<ScoreRecord> scores;
    for (int i = 0; i < 4000; ++i) {
        accessions.push_back(child_of(std::to_string(i), "-", "-"));
    }
    const auto order = pedigree_order(accessions, {});
    for (int i = 1; i < 4000; ++i) {
        scores.push_back({order.number.at(std::to_string(i)), 0, i % 2 == 0 ? 1.0 : -1.0});
    }
    for (int repeat = 0; repeat < 3; ++repeat) {
        scores.push_back({order.number.at("0"), 0, 10});
    }
    const auto got = breeding_values(kinship_factors(order.members), scores, {0.3, 0.5});
    const auto& value = got.value().values.at(order.number.at("0"));
    const double weight = 3 * 0.3 / (1 + 2 * 0.5);
    EXPECT_NEAR(value.value, weight * 10, 0.02);
    EXPECT_NEAR(value.reliability, weight, 0.001);
}

TEST(BreedingValues, OfAChildWithoutScoresAreTheMeanOfItsParents) {
    const std::vector accessions{child_of("a", "-", "-"), child_of("b", "-", "-"), child_of("c", "a", "b"),
                                 child_of("d", "-", "-")};
    const auto order = pedigree_order(accessions, {});
    const auto at = [&](const std::string& name) { return order.number.at(name); };
    const std::vector<ScoreRecord> scores{{at("a"), 0, 5}, {at("b"), 0, 3}, {at("d"), 0, 1}};
    const auto got = breeding_values(kinship_factors(order.members), scores, {});
    ASSERT_TRUE(got);
    const auto& values = got->values;
    EXPECT_NEAR(values[at("c")].value, (values[at("a")].value + values[at("b")].value) / 2, 1e-12);
}

TEST(BreedingValues, OfAChildOfABlendLeanOnTheMembersByTheirShares) {
    const std::vector accessions{child_of("m", "-", "-"), child_of("x", "-", "-"), child_of("y", "-", "-"),
                                 child_of("c", "m", "Mix")};
    const std::vector<BlendMember> blend{{0, "Mix", "x", Share{0.8}}, {0, "Mix", "y", Share{0.2}}};
    const auto order = pedigree_order(accessions, blend);
    const auto at = [&](const std::string& name) { return order.number.at(name); };
    const std::vector<ScoreRecord> scores{{at("m"), 0, 1}, {at("x"), 0, 9}, {at("y"), 0, 2}};
    const auto values = breeding_values(kinship_factors(order.members), scores, {}).value().values;
    EXPECT_NEAR(values[at("c")].value,
                values[at("m")].value / 2 + 0.4 * values[at("x")].value + 0.1 * values[at("y")].value, 1e-12);
}

class MadeScores : public ::testing::TestWithParam<unsigned> {};

// A dense solution of the same model, V^-1 by elimination: BLUP = h2 A Z' V^-1 (y - X b).
using Matrix = std::vector<std::vector<double>>;

Matrix inverted(Matrix m) {
    const auto n = m.size();
    Matrix inverse(n, std::vector<double>(n));
    for (std::size_t i = 0; i < n; ++i) {
        inverse[i][i] = 1;
    }
    for (std::size_t c = 0; c < n; ++c) {
        const double pivot = m[c][c];
        for (std::size_t k = 0; k < n; ++k) {
            m[c][k] /= pivot;
            inverse[c][k] /= pivot;
        }
        for (std::size_t r = 0; r < n; ++r) {
            const double factor = r == c ? 0 : m[r][c];
            for (std::size_t k = 0; k < n; ++k) {
                m[r][k] -= factor * m[c][k];
                inverse[r][k] -= factor * inverse[c][k];
            }
        }
    }
    return inverse;
}

TEST_P(MadeScores, AgreeWithTheSameModelWrittenOutInFull) {
    const auto made = testing::made_pedigree(GetParam(), 25);
    const auto order = pedigree_order(made.accessions, made.blends);
    const auto a = testing::tabular(order.members);
    const double h2 = 0.3;
    const double r = 0.55;
    std::mt19937 draw(GetParam());
    std::vector<ScoreRecord> scores;
    for (int i = 0; i < 40; ++i) {
        scores.push_back({static_cast<int>(draw() % 25), 0, static_cast<double>(draw() % 100) / 10});
    }
    const auto n = scores.size();
    Matrix v(n, std::vector<double>(n));
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j) {
            v[i][j] = h2 * a[scores[i].member][scores[j].member] +
                      (scores[i].member == scores[j].member ? r - h2 : 0) + (i == j ? 1 - r : 0);
        }
    }
    const auto w = inverted(v);
    double one_w_one = 0;
    double one_w_y = 0;
    std::vector<double> w_one(n);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j) {
            one_w_one += w[i][j];
            one_w_y += w[i][j] * scores[j].score;
            w_one[i] += w[i][j];
        }
    }
    const double mean = one_w_y / one_w_one;
    const auto got = breeding_values(kinship_factors(order.members), scores, {h2, r}).value();
    EXPECT_NEAR(got.groups.at(0), mean, 1e-9);
    for (std::size_t m = 0; m < order.members.size(); ++m) {
        double value = 0;
        double c_w_c = 0;
        double c_w_one = 0;
        for (std::size_t i = 0; i < n; ++i) {
            const double c_i = h2 * a[m][scores[i].member];
            c_w_one += c_i * w_one[i];
            for (std::size_t j = 0; j < n; ++j) {
                value += c_i * w[i][j] * (scores[j].score - mean);
                c_w_c += c_i * w[i][j] * h2 * a[m][scores[j].member];
            }
        }
        const double explained = c_w_c - c_w_one * c_w_one / one_w_one;
        EXPECT_NEAR(got.values[m].value, value, 1e-8) << m;
        EXPECT_NEAR(got.values[m].reliability, explained / (h2 * a[m][m]), 1e-8) << m;
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, MadeScores, ::testing::Range(1U, 6U));

}  // namespace
}  // namespace pipward::lineage
