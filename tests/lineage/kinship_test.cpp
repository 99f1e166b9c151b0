// SPDX-License-Identifier: MIT
#include "pipward/lineage/kinship.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "lineage/pedigree_maker.h"
#include "paths.h"
#include "pipward/value/finding.h"

namespace pipward::lineage {
namespace {

using testing::blends_in;
using testing::pedigree_in;

Accession child(const std::string& name, const std::string& seed, const std::string& pollen) {
    return testing::child_of(name, seed, pollen);
}

BlendMember in_blend(const std::string& name, const std::string& member, std::optional<Share> share = {}) {
    return {0, name, member, share};
}

// The textbooks take founders for unrelated; of two founders the class says that it does not know.
double or_founders(const std::optional<double>& kinship) {
    return kinship.value_or(0);
}

void expect_table(const testing::Rows& rows, int checks, double tolerance, bool swapped = false) {
    const Kinship kinship(pedigree_in(rows, swapped), blends_in(rows));
    int checked = 0;
    for (const auto& row : rows) {
        if (row.at(0) == "twice") {
            const double value = std::stod(row.at(3));
            EXPECT_NEAR(2 * or_founders(kinship.between(row.at(1), row.at(2))), value, tolerance)
                << row[1] << " " << row[2];
            EXPECT_EQ(kinship.between(row[1], row[2]), kinship.between(row[2], row[1]));
            ++checked;
        }
    }
    EXPECT_EQ(checked, checks);
}

TEST(Kinship, FollowsMrodesPedigree) {
    expect_table(testing::all_rows("lineage-mrode-table-2-1.txt"), 21, 0);
}

TEST(Kinship, LeavesMrodesMendelianSampling) {
    const auto rows = testing::all_rows("lineage-mrode-table-2-1.txt");
    const auto accessions = pedigree_in(rows);
    const Kinship kinship(accessions, {});
    const auto twice = [&](const std::string& a, const std::string& b) {
        return 2 * or_founders(kinship.between(a, b));
    };
    int checked = 0;
    for (const auto& row : rows) {
        if (row.at(0) != "sampling") {
            continue;
        }
        const auto& of = *std::ranges::find(accessions, row.at(1), &Accession::name);
        double left = twice(row[1], row[1]);
        for (const auto& p : {of.seed_parent, of.pollen_parent}) {
            for (const auto& q : {of.seed_parent, of.pollen_parent}) {
                left -= p && q ? twice(*p, *q) / 4 : 0;
            }
        }
        EXPECT_NEAR(left, std::stod(row.at(2)), 0.0005) << row[1];
        ++checked;
    }
    EXPECT_EQ(checked, 6);
}

TEST(Kinship, AgreesWithTheCopenhagenPedigreeWhicheverParentIsNamedFirst) {
    expect_table(testing::regression_rows("lineage-kvl-seven.txt"), 20, 0);
    expect_table(testing::regression_rows("lineage-kvl-seven.txt"), 20, 0, true);
}

TEST(Kinship, FollowsSelfingAndBackcross) {
    expect_table(testing::regression_rows("lineage-selfing.txt"), 5, 0);
}

TEST(Kinship, TakesABlendAsAMixtureOfItsMembers) {
    expect_table(testing::regression_rows("lineage-blend.txt"), 7, 1e-12);
}

TEST(Kinship, OfSibsFromABlendFallsWithTheNumberOfEqualMembers) {
    int checked = 0;
    for (const auto& row : testing::regression_rows("lineage-blend.txt")) {
        if (row.at(0) != "equal") {
            continue;
        }
        std::vector<BlendMember> blend;
        for (int i = 0; i < std::stoi(row.at(1)); ++i) {
            blend.push_back(in_blend("Mix", "donor" + std::to_string(i)));
        }
        const std::vector accessions{child("one", "mother", "Mix"), child("two", "mother", "Mix")};
        const Kinship kinship(accessions, blend);
        EXPECT_NEAR(2 * kinship.between("one", "two").value(), std::stod(row.at(2)), 1e-12) << row[1];
        ++checked;
    }
    EXPECT_EQ(checked, 6);
}

TEST(Kinship, OfTheParentsIsTheInbreedingOfTheChild) {
    const auto rows = testing::all_rows("lineage-standard-inbreeding.txt");
    auto accessions = pedigree_in(rows);
    for (const auto& row : rows) {
        if (row.at(0) == "inbreeding") {
            accessions.push_back(child(row.at(1) + " x " + row.at(2), row.at(1), row.at(2)));
        }
    }
    const Kinship kinship(accessions, {});
    int checked = 0;
    for (const auto& row : rows) {
        if (row.at(0) == "inbreeding") {
            const double expected = std::stod(row.at(3));
            const auto name = row[1] + " x " + row[2];
            EXPECT_EQ(or_founders(kinship.between(row[1], row[2])), expected) << name;
            EXPECT_EQ(2 * kinship.between(name, name).value() - 1, expected) << name;
            ++checked;
        }
    }
    EXPECT_EQ(checked, 7);
}

TEST(Kinship, AgreesWithAnInbredPedigreeOfFifteen) {
    const std::string folder = testing::shared_file("pedigree/dioecious-inbred-15");
    std::ifstream parents(folder + ".csv");
    std::ifstream values(folder + ".kinship.tsv");
    if (!parents || !values) {
        GTEST_SKIP() << "The shared pedigree of fifteen is not here.";
    }
    std::vector<Accession> accessions;
    std::string line;
    for (std::getline(parents, line); std::getline(parents, line);) {
        std::istringstream cells(line);
        std::string name;
        std::string sire;
        std::string dam;
        std::getline(cells, name, ',');
        std::getline(cells, sire, ',');
        std::getline(cells, dam, ',');
        accessions.push_back(child(name, dam, sire));
    }
    const Kinship kinship(accessions, {});
    int checked = 0;
    std::string a;
    std::string b;
    for (double value = 0; values >> a >> b >> value; ++checked) {
        EXPECT_NEAR(or_founders(kinship.between(a, b)), value, 5.1e-9) << a << " " << b;
    }
    EXPECT_EQ(checked, 105);
}

TEST(Kinship, OfHalfSibsThroughAParentWithoutARecordIsAnEighth) {
    const std::vector accessions{child("one", "Gilt", "-"), child("two", "Gilt", "-")};
    const Kinship kinship(accessions, {});
    EXPECT_EQ(kinship.between("one", "two"), 0.125);
    EXPECT_EQ(kinship.between("one", "Gilt"), 0.25);
}

TEST(Kinship, DoesNotDependOnTheOrderOfTheRecords) {
    auto accessions = pedigree_in(testing::regression_rows("lineage-kvl-seven.txt"));
    const Kinship forwards(accessions, {});
    std::ranges::reverse(accessions);
    const Kinship backwards(accessions, {});
    for (const auto& a : accessions) {
        for (const auto& b : accessions) {
            EXPECT_EQ(forwards.between(a.name, b.name), backwards.between(a.name, b.name));
        }
    }
}

TEST(Kinship, IsUnknownWhereNothingIsKnownOfTheParentsOfBoth) {
    const std::vector accessions{child("one", "-", "-"), child("two", "-", "-"), child("three", "one", "-")};
    const Kinship kinship(accessions, {});
    EXPECT_EQ(kinship.between("one", "two"), std::nullopt);
    EXPECT_EQ(kinship.between("two", "one"), std::nullopt);
    EXPECT_EQ(kinship.between("three", "two"), 0);
    EXPECT_EQ(kinship.between("three", "one"), 0.25);
    EXPECT_EQ(kinship.between("one", "one"), 0.5);
}

TEST(Kinship, IsNothingForStrangersAndForPolyploids) {
    auto triploid = child("Big", "a", "b");
    triploid.ploidy = 3;
    auto diploid = child("Small", "a", "b");
    diploid.ploidy = 2;
    const std::vector accessions{triploid, diploid, child("a", "-", "-")};
    const Kinship kinship(accessions, {});
    EXPECT_EQ(kinship.between("Small", "nobody"), std::nullopt);
    EXPECT_EQ(kinship.between("Small", "Big"), std::nullopt);
    EXPECT_EQ(kinship.between("Small", "a"), 0.25);
}

TEST(Kinship, SharesWhatTheOtherMembersOfABlendLeave) {
    const std::vector accessions{child("seedling", "mother", "Mix")};
    const auto with = [&](std::vector<BlendMember> blend, const std::string& donor) {
        return Kinship(accessions, blend).between("seedling", donor).value();
    };
    const std::vector part_told{in_blend("Mix", "x", Share{0.5}), in_blend("Mix", "y"), in_blend("Mix", "z")};
    EXPECT_DOUBLE_EQ(with(part_told, "x"), 0.125);
    EXPECT_DOUBLE_EQ(with(part_told, "y"), 0.0625);
    const std::vector short_of_one{in_blend("Mix", "x", Share{0.5}), in_blend("Mix", "y", Share{0.1})};
    EXPECT_DOUBLE_EQ(with(short_of_one, "x"), 0.125);
    const std::vector above_one{in_blend("Mix", "x", Share{1}), in_blend("Mix", "y", Share{1})};
    EXPECT_DOUBLE_EQ(with(above_one, "x"), 0.125);
}

TEST(Kinship, RefusesAnAccessionThatIsItsOwnAncestorAndNamesTheLoop) {
    const std::vector accessions{child("a", "b", "-"), child("b", "-", "c"), child("c", "a", "-"),
                                 child("d", "d", "-"), child("e", "a", "-")};
    try {
        const Kinship kinship(accessions, {});
        FAIL() << "a loop was taken";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        ASSERT_EQ(error.findings().size(), 2U);
        EXPECT_EQ(error.findings()[0].value, "a -> b -> c -> a");
        EXPECT_EQ(error.findings()[0].table, "accession");
        EXPECT_EQ(error.findings()[1].value, "d -> d");
    }
}

TEST(Kinship, FindsALoopThatRunsThroughABlend) {
    const std::vector accessions{child("a", "-", "Mix")};
    const std::vector blend{in_blend("Mix", "x"), in_blend("Mix", "a")};
    EXPECT_THROW(Kinship(accessions, blend), Error);
}

TEST(Kinship, TakesAPedigreeDeeperThanAnyStack) {
    std::vector<Accession> accessions;
    for (int i = 200'000; i > 0; --i) {
        accessions.push_back(child(std::to_string(i), std::to_string(i - 1), "-"));
    }
    accessions.push_back(child("selfed", "200000", "200000"));
    const Kinship kinship(accessions, {});
    EXPECT_EQ(kinship.between("200000", "199999"), 0.25);
    EXPECT_EQ(kinship.between("selfed", "selfed"), 0.75);
    EXPECT_NEAR(kinship.between("200000", "0").value(), 0, 1e-12);
}

TEST(Kinship, StaysBetweenZeroAndOneAndIsHighestWithItself) {
    const auto rows = testing::regression_rows("lineage-selfing.txt");
    const auto accessions = pedigree_in(rows);
    const Kinship kinship(accessions, {});
    for (const auto& a : accessions) {
        for (const auto& b : accessions) {
            const double value = or_founders(kinship.between(a.name, b.name));
            EXPECT_GE(value, 0);
            EXPECT_LE(value, 1);
        }
        EXPECT_GE(kinship.between(a.name, a.name).value(), 0.5);
    }
}

}  // namespace
}  // namespace pipward::lineage
