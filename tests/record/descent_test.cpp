// SPDX-License-Identifier: MIT
#include "pipward/record/descent.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

Accession accession(const std::string& name, const std::optional<std::string>& seed_parent = {},
                    const std::optional<std::string>& pollen_parent = {}) {
    Accession made;
    made.name = name;
    made.seed_parent = seed_parent;
    made.pollen_parent = pollen_parent;
    return made;
}

CrossGoal goal(const std::string& code, const std::string& seed_parent, const std::string& pollen_parent) {
    return {0, code, {2016}, seed_parent, pollen_parent, 100, {}, {}};
}

struct SpeciesOf : ::testing::Test {
    SpeciesOf() {
        orchard.accessions = {accession("Grandmother"), accession("Mother", "Grandmother"),
                              accession("Child", "Mother", "Stranger")};
    }
    std::optional<std::string> species(const std::string& name) const {
        return species_of(OrchardIndex(orchard), name);
    }
    Orchard orchard;
};

TEST_F(SpeciesOf, AnAccessionIsItsOwnFirst) {
    orchard.accessions[1].species = "Malus floribunda";
    orchard.accessions[0].species = "Malus domestica";
    EXPECT_EQ(species("Mother"), "Malus floribunda");
    EXPECT_EQ(species("Child"), "Malus floribunda");
    EXPECT_EQ(species("Grandmother"), "Malus domestica");
}

TEST_F(SpeciesOf, NobodyKnowsWhereNoAncestorByTheSeedSideHasOne) {
    orchard.accessions.push_back(accession("Stranger"));
    orchard.accessions.back().species = "Pyrus communis";
    EXPECT_EQ(species("Child"), std::nullopt);
    EXPECT_EQ(species("Nobody"), std::nullopt);
    EXPECT_EQ(genus_of(OrchardIndex(orchard), "Child"), "");
}

TEST_F(SpeciesOf, ASportHasItsOriginals) {
    orchard.accessions.push_back(accession("Red Child"));
    orchard.accessions.back().sport_of = "Child";
    orchard.accessions[0].species = "Malus domestica";
    EXPECT_EQ(species("Red Child"), "Malus domestica");
    EXPECT_EQ(genus_of(OrchardIndex(orchard), "Red Child"), "Malus");
}

TEST_F(SpeciesOf, ASportOfAnUnknownOneMayStillHaveAMother) {
    orchard.accessions[0].species = "Malus domestica";
    orchard.accessions[2].sport_of = "Lost";
    EXPECT_EQ(species("Child"), "Malus domestica");
}

TEST_F(SpeciesOf, ACircleOfAncestorsComesToAnEnd) {
    orchard.accessions[0].seed_parent = "Child";
    EXPECT_EQ(species("Child"), std::nullopt);
}

struct CrossOfSeedling : ::testing::Test {
    CrossOfSeedling() {
        orchard.goals = {goal("16-01", "A", "B"), goal("16-02", "A", "C"), goal("16-01-04", "A", "B")};
    }
    std::string cross(const Accession& seedling) const {
        const OrchardIndex index(orchard);
        const auto* found = cross_of_seedling(index, seedling);
        return found == nullptr ? "" : found->code;
    }
    Orchard orchard;
};

TEST_F(CrossOfSeedling, ByItsNameAndItsParents) {
    EXPECT_EQ(cross(accession("16-02-07", "A", "C")), "16-02");
    EXPECT_EQ(cross(accession("16-02-07", "A", "B")), "");
    EXPECT_EQ(cross(accession("16-027", "A", "C")), "");
    EXPECT_EQ(cross(accession("16-02", "A", "C")), "");
    EXPECT_EQ(cross(accession("Larkfold Red", "A", "B")), "");
}

TEST_F(CrossOfSeedling, TheFirstOfTheBookWhereTwoCodesFit) {
    EXPECT_EQ(cross(accession("16-01-04-2", "A", "B")), "16-01");
    std::swap(orchard.goals[0], orchard.goals[2]);
    EXPECT_EQ(cross(accession("16-01-04-2", "A", "B")), "16-01-04");
}

// Source: as in the header, from yvapplebreeders.com, looked up.
TEST(FirstFlower, IsNotBeforeTheThirdYearFromSowing) {
    EXPECT_FALSE(old_enough_to_flower(2020, 2022));
    EXPECT_TRUE(old_enough_to_flower(2020, 2023));
    EXPECT_EQ(first_flower_of_cross({2016}), 2020);
}

}  // namespace
}  // namespace pipward
