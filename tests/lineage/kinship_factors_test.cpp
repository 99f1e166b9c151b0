// SPDX-License-Identifier: MIT
#include "pipward/lineage/kinship_factors.h"

#include <gtest/gtest.h>

#include <numeric>

#include "lineage/pedigree_maker.h"
#include "pipward/lineage/kinship.h"

namespace pipward::lineage {
namespace {

using testing::blends_in;
using testing::child_of;
using testing::pedigree_in;

struct Calculated {
    PedigreeOrder order;
    KinshipFactors factors;

    int number(const std::string& name) const { return order.number.at(name); }
    double inbreeding(const std::string& name) const { return factors.inbreeding.at(number(name)); }
    double sampling(const std::string& name) const { return factors.sampling.at(number(name)); }
    double twice(const std::string& a, const std::string& b) const {
        const std::vector row{number(a)};
        const std::vector column{number(b)};
        return 2 * kinship_block(factors, row, column).at(0);
    }
};

Calculated calculated(const std::vector<Accession>& accessions, const std::vector<BlendMember>& blends = {}) {
    auto order = pedigree_order(accessions, blends);
    EXPECT_TRUE(order.loops.empty());
    auto factors = kinship_factors(order.members);
    return {std::move(order), std::move(factors)};
}

using Matrix = std::vector<std::vector<double>>;

Matrix full(const std::vector<MatrixEntry>& entries, std::size_t members) {
    Matrix matrix(members, std::vector<double>(members));
    for (const auto& entry : entries) {
        EXPECT_LE(entry.row, entry.column);
        matrix[entry.row][entry.column] = entry.value;
        matrix[entry.column][entry.row] = entry.value;
    }
    return matrix;
}

std::vector<double> whole_block(const Calculated& of) {
    std::vector<int> all(of.order.members.size());
    std::iota(all.begin(), all.end(), 0);
    return kinship_block(of.factors, all, all);
}

void expect_rows(const testing::Rows& rows, double tolerance, int checks, bool swapped = false) {
    const auto got = calculated(pedigree_in(rows, swapped), blends_in(rows));
    const auto inverse = full(relationship_inverse(got.factors), got.order.members.size());
    int checked = 0;
    for (const auto& row : rows) {
        if (row.at(0) == "twice") {
            EXPECT_NEAR(got.twice(row.at(1), row.at(2)), std::stod(row.at(3)), tolerance) << row[1] << row[2];
            EXPECT_EQ(got.twice(row[1], row[2]), got.twice(row[2], row[1]));
        } else if (row.at(0) == "sampling") {
            EXPECT_NEAR(got.sampling(row.at(1)), std::stod(row.at(2)), 0.0005) << row[1];
        } else if (row.at(0) == "inverse") {
            const auto one = got.number(row.at(1));
            const auto other = got.number(row.at(2));
            EXPECT_NEAR(inverse[one][other], std::stod(row.at(3)), 5.1e-5) << row[1] << row[2];
        } else {
            continue;
        }
        ++checked;
    }
    EXPECT_EQ(checked, checks);
}

TEST(KinshipFactors, AgreeWithMrodesTableItsSamplingAndItsInverse) {
    expect_rows(testing::all_rows("lineage-mrode-table-2-1.txt"), 1e-15, 21 + 6 + 16);
}

TEST(KinshipFactors, AgreeWithTheCopenhagenPedigreeWhicheverParentIsNamedFirst) {
    expect_rows(testing::regression_rows("lineage-kvl-seven.txt"), 1e-15, 20);
    expect_rows(testing::regression_rows("lineage-kvl-seven.txt"), 1e-15, 20, true);
}

TEST(KinshipFactors, FollowSelfingAndBackcross) {
    expect_rows(testing::regression_rows("lineage-selfing.txt"), 1e-15, 5 + 8 + 7);
}

TEST(KinshipFactors, TakeABlendAsAMixtureOfItsMembers) {
    expect_rows(testing::regression_rows("lineage-blend.txt"), 1e-12, 7 + 3 + 10);
}

TEST(KinshipFactors, OfChildrenOfABlendLeaveMoreToChanceTheMoreMembersItHas) {
    int checked = 0;
    for (const auto& row : testing::regression_rows("lineage-blend.txt")) {
        if (row.at(0) != "equal_sampling") {
            continue;
        }
        std::vector<BlendMember> blend;
        for (int i = 0; i < std::stoi(row.at(1)); ++i) {
            blend.push_back({0, "Mix", "donor" + std::to_string(i), std::nullopt});
        }
        EXPECT_NEAR(calculated({child_of("one", "mother", "Mix")}, blend).sampling("one"),
                    std::stod(row.at(2)), 1e-12);
        ++checked;
    }
    EXPECT_EQ(checked, 6);
}

TEST(KinshipFactors, FollowGenesAsMrodePrintsThem) {
    const auto rows = testing::oracle_rows("lineage-mrode-table-2-1.txt");
    const auto got = calculated(pedigree_in(rows));
    int checked = 0;
    for (const auto& row : rows) {
        if (row.at(0) != "flow") {
            continue;
        }
        // One founder marked, nothing left to chance elsewhere: its column then is that of T.
        auto alone = got.factors;
        std::fill(alone.sampling.begin(), alone.sampling.end(), 0);
        alone.sampling[got.number(row.at(2))] = 1;
        const std::vector child{got.number(row.at(1))};
        const std::vector ancestor{got.number(row.at(2))};
        EXPECT_EQ(2 * kinship_block(alone, child, ancestor).at(0), std::stod(row.at(3)));
        ++checked;
    }
    EXPECT_EQ(checked, 9);
}

TEST(RelationshipInverse, WithoutInbreedingIsHendersonsExampleByHand) {
    const auto rows = testing::oracle_rows("lineage-mrode-table-2-1.txt");
    auto got = calculated(pedigree_in(rows));
    got.factors.sampling.at(got.number("6")) = 0.5;
    const auto inverse = full(relationship_inverse(got.factors), 6);
    Matrix expected(6, std::vector<double>(6));
    for (const auto& row : rows) {
        if (row.at(0) == "simple_inverse") {
            const auto one = got.number(row.at(1));
            const auto other = got.number(row.at(2));
            expected[one][other] = expected[other][one] = std::stod(row.at(3));
        }
    }
    for (std::size_t i = 0; i < 6; ++i) {
        for (std::size_t j = 0; j < 6; ++j) {
            EXPECT_NEAR(inverse[i][j], expected[i][j], 5.1e-5) << i << " " << j;
        }
    }
}

class MadePedigrees : public ::testing::TestWithParam<unsigned> {};

TEST_P(MadePedigrees, AgreeWithTheTabularMethodAndWithSingleQuestions) {
    const auto made = testing::made_pedigree(GetParam(), 60);
    const auto got = calculated(made.accessions, made.blends);
    const auto expected = testing::tabular(got.order.members);
    const auto block = whole_block(got);
    const Kinship kinship(made.accessions, made.blends);
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(got.factors.inbreeding[i], expected[i][i] - 1, 1e-12);
        for (std::size_t j = 0; j < expected.size(); ++j) {
            EXPECT_NEAR(2 * block[i * expected.size() + j], expected[i][j], 1e-12);
            const auto asked = kinship.between(got.order.members[i].name, got.order.members[j].name);
            EXPECT_NEAR(asked.value_or(0), block[i * expected.size() + j], 1e-12);
        }
    }
}

TEST_P(MadePedigrees, TimesTheirInverseAreOne) {
    const auto made = testing::made_pedigree(GetParam(), 60);
    const auto got = calculated(made.accessions, made.blends);
    const auto a = testing::tabular(got.order.members);
    const auto inverse = full(relationship_inverse(got.factors), a.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t j = 0; j < a.size(); ++j) {
            double product = 0;
            for (std::size_t k = 0; k < a.size(); ++k) {
                product += a[i][k] * inverse[k][j];
            }
            EXPECT_NEAR(product, i == j ? 1 : 0, 1e-9);
        }
    }
}

TEST_P(MadePedigrees, AreTheSameWhicheverParentIsNamedFirst) {
    auto made = testing::made_pedigree(GetParam(), 60);
    const auto got = calculated(made.accessions, made.blends);
    for (auto& accession : made.accessions) {
        std::swap(accession.seed_parent, accession.pollen_parent);
    }
    const auto swapped = calculated(made.accessions, made.blends);
    for (const auto& [name, number] : got.order.number) {
        EXPECT_NEAR(got.inbreeding(name), swapped.inbreeding(name), 1e-12);
        EXPECT_NEAR(got.sampling(name), swapped.sampling(name), 1e-12);
    }
}

TEST_P(MadePedigrees, LeaveNoNegativeVariance) {
    const auto made = testing::made_pedigree(GetParam(), 60);
    const auto got = calculated(made.accessions, made.blends);
    const auto block = whole_block(got);
    const auto members = got.order.members.size();
    std::mt19937 draw(GetParam());
    for (int trial = 0; trial < 20; ++trial) {
        std::vector<double> weights(members);
        for (auto& weight : weights) {
            weight = static_cast<double>(draw() % 2001) / 1000 - 1;
        }
        double variance = 0;
        for (std::size_t i = 0; i < members; ++i) {
            for (std::size_t j = 0; j < members; ++j) {
                variance += weights[i] * weights[j] * block[i * members + j];
            }
        }
        EXPECT_GE(variance, -1e-9);
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, MadePedigrees, ::testing::Range(1U, 9U));

TEST(KinshipFactors, OfALineGrowUnderSelfing) {
    std::vector<Accession> accessions{child_of("0", "-", "-")};
    for (int i = 1; i <= 60; ++i) {
        accessions.push_back(child_of(std::to_string(i), std::to_string(i - 1), std::to_string(i - 1)));
    }
    const auto got = calculated(accessions);
    for (int i = 1; i <= 50; ++i) {
        EXPECT_NEAR(got.inbreeding(std::to_string(i)), 1 - std::pow(0.5, i), 1e-12);
        EXPECT_GT(got.inbreeding(std::to_string(i)), got.inbreeding(std::to_string(i - 1)));
    }
    for (const auto& entry : relationship_inverse(got.factors)) {
        EXPECT_TRUE(std::isfinite(entry.value));
    }
}

TEST(KinshipFactors, OfATriploidAndWhatCameOfItAreNotCalculated) {
    auto triploid = child_of("Big", "a", "b");
    triploid.ploidy = 3;
    const std::vector accessions{triploid, child_of("of Big", "a", "Big"), child_of("of that", "of Big", "b"),
                                 child_of("Small", "a", "b")};
    const auto got = calculated(accessions);
    for (const auto* name : {"Big", "of Big", "of that"}) {
        EXPECT_FALSE(got.order.members.at(got.number(name)).calculated) << name;
        EXPECT_EQ(got.sampling(name), 1) << name;
    }
    EXPECT_TRUE(got.order.members.at(got.number("Small")).calculated);
    const Kinship kinship(accessions, {});
    EXPECT_EQ(kinship.between("of that", "a"), std::nullopt);
    EXPECT_EQ(kinship.between("Small", "a"), 0.25);
}

TEST(PedigreeOrder, SaysWhereABlendStandsInTheLine) {
    const std::vector<BlendMember> blends{{0, "Mix", "x", {}}, {0, "Mix", "y", {}}, {0, "Only", "x", {}}};
    const std::vector accessions{child_of("a", "m", "Mix"), child_of("b", "a", "c"),
                                 child_of("c", "m", "Only")};
    const auto order = pedigree_order(accessions, blends);
    const auto expected = [&](const std::string& name) {
        return order.members.at(order.number.at(name)).expected;
    };
    EXPECT_TRUE(expected("a"));
    EXPECT_TRUE(expected("b"));
    EXPECT_FALSE(expected("c"));
    EXPECT_FALSE(expected("x"));
}

TEST(PedigreeOrder, TakesASportForItsOriginal) {
    const std::vector accessions{child_of("Gable", "Kettle", "Gilt"), testing::sport_of("Rigel", "Gable"),
                                 testing::sport_of("Ivory", "Rigel"), child_of("one", "Rigel", "x"),
                                 child_of("two", "Gable", "y")};
    const Kinship kinship(accessions, {});
    EXPECT_EQ(kinship.between("Rigel", "Gable"), 0.5);
    EXPECT_EQ(kinship.between("Ivory", "Rigel"), 0.5);
    EXPECT_EQ(kinship.between("Ivory", "Gilt"), 0.25);
    EXPECT_EQ(kinship.between("one", "two"), 0.125);
}

TEST(PedigreeOrder, GivesASportOfAnInbredItsOriginalsInbreeding) {
    const std::vector accessions{child_of("self", "a", "a"), testing::sport_of("red self", "self")};
    EXPECT_EQ(Kinship(accessions, {}).between("self", "red self"), 0.75);
}

TEST(PedigreeOrder, TakesASportsParentsWhereTheOriginalHasNone) {
    auto sport = child_of("Rigel", "Kettle", "Gilt");
    sport.sport_of = "Gable";
    const std::vector accessions{sport, child_of("other", "Gilt", "-")};
    EXPECT_EQ(Kinship(accessions, {}).between("Gable", "other"), 0.125);
}

TEST(PedigreeOrder, TakesATetraploidSportForItself) {
    auto sport = testing::sport_of("Giant", "Gable");
    sport.ploidy = 4;
    const std::vector accessions{child_of("Gable", "Kettle", "Gilt"), sport, child_of("one", "Gable", "x")};
    const Kinship kinship(accessions, {});
    EXPECT_EQ(kinship.between("Giant", "Gable"), std::nullopt);
    EXPECT_EQ(kinship.between("one", "Gable"), 0.25);
}

TEST(PedigreeOrder, FindsCirclesOfSportsEachOnce) {
    const std::vector accessions{testing::sport_of("a", "b"), testing::sport_of("b", "c"),
                                 testing::sport_of("c", "a"), testing::sport_of("d", "d"),
                                 testing::sport_of("e", "a")};
    const auto order = pedigree_order(accessions, {});
    ASSERT_EQ(order.loops.size(), 2U);
    EXPECT_EQ(order.loops[0].value, "a -> b -> c -> a");
    EXPECT_EQ(order.loops[0].field, "sport_of");
    EXPECT_EQ(order.loops[1].value, "d -> d");
}

TEST(PedigreeOrder, FindsAnAccessionThatIsTheChildOfItsOwnSport) {
    const std::vector accessions{child_of("Gable", "Rigel", "x"), testing::sport_of("Rigel", "Gable")};
    EXPECT_EQ(pedigree_order(accessions, {}).loops.size(), 1U);
}

}  // namespace
}  // namespace pipward::lineage
