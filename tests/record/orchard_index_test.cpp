// SPDX-License-Identifier: MIT
#include "pipward/record/orchard_index.h"
#include "days.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

Tree tree(const std::string& label, const std::optional<std::string>& accession,
          const std::string& removed = "") {
    Tree made;
    made.label = label;
    made.accession = accession;
    made.removed_on = parse_iso_day(removed);
    return made;
}

Accession named(const std::string& name) {
    Accession made;
    made.name = name;
    return made;
}

Pollination work(const std::string& tag, const std::string& on) {
    return {0, tag, "26-01", "T1", testing::day(on), 50, {}, {}, {}};
}

struct MadeIndex : ::testing::Test {
    MadeIndex() {
        orchard.blocks = {{1, "Upper", {}}};
        orchard.rows = {{1, "Upper", "1", {}, 1, {}}, {2, "Lower", "1", {}, 1, {}}};
        orchard.trees = {tree("T1", "Red"), tree("T2", "Red", "2026-06-01"), tree("T3", {}),
                         tree("T1", "Green")};
        orchard.accessions = {named("Red"), named("Green"), named("Red")};
        orchard.blend_members = {{1, "Mix", "Red", Share{0.25}}, {2, "Mix", "Green", {}}};
        orchard.stations = {{1, "Home", Metres{500}, {}, {}}};
        orchard.goals = {{1, "26-01", {2026}, "Red", "Mix", 100, {}, {}}};
        orchard.pollen_lots.emplace_back().code = "P1";
        orchard.pollinations = {work("26-01-a", "2026-04-25"), work("26-01-a", "2026-04-27")};
        orchard.seed_lots.emplace_back().code = "S1";
    }
    Orchard orchard;
};

TEST_F(MadeIndex, GivesEveryThingByTheNameOnItsTag) {
    const OrchardIndex index(orchard);
    EXPECT_EQ(index.tree("T2"), &orchard.trees[1]);
    EXPECT_EQ(index.accession("Green"), &orchard.accessions[1]);
    EXPECT_EQ(index.block("Upper"), orchard.blocks.data());
    EXPECT_EQ(index.row("Lower", "1"), &orchard.rows[1]);
    EXPECT_EQ(index.station("Home"), orchard.stations.data());
    EXPECT_EQ(index.goal("26-01"), orchard.goals.data());
    EXPECT_EQ(index.pollen_lot("P1"), orchard.pollen_lots.data());
    EXPECT_EQ(index.seed_lot("S1"), orchard.seed_lots.data());
    EXPECT_EQ(&index.orchard(), &orchard);
}

TEST_F(MadeIndex, GivesNothingWhereTheBookHasNoSuchName) {
    const OrchardIndex index(orchard);
    EXPECT_EQ(index.tree("t2"), nullptr);
    EXPECT_EQ(index.accession(""), nullptr);
    EXPECT_EQ(index.accession("Mix"), nullptr);
    EXPECT_EQ(index.row("Upper", "2"), nullptr);
    EXPECT_TRUE(index.trees_of("Blue").empty());
    EXPECT_TRUE(index.blend("Red").empty());
    EXPECT_EQ(index.pollination("26-02-a"), nullptr);
}

TEST_F(MadeIndex, TakesTheFirstRowOfANameThatStandsTwice) {
    const OrchardIndex index(orchard);
    EXPECT_EQ(index.tree("T1"), orchard.trees.data());
    EXPECT_EQ(index.accession("Red"), orchard.accessions.data());
    EXPECT_EQ(index.pollination("26-01-a"), orchard.pollinations.data());
    EXPECT_EQ(first_named(orchard.accessions, &Accession::name, "Red"), orchard.accessions.data());
    EXPECT_EQ(first_named(orchard.accessions, &Accession::name, "Blue"), nullptr);
}

TEST_F(MadeIndex, TellsTheTreesThatStandOnTheDayAsked) {
    const OrchardIndex index(orchard);
    EXPECT_EQ(index.trees_of("Red", testing::day("2026-05-31")).size(), 2U);
    EXPECT_EQ(index.trees_of("Red", testing::day("2026-06-01")).size(), 1U);
    EXPECT_TRUE(index.has_tree("Red", testing::day("2026-06-01")));
    orchard.trees[0].planted_on = testing::day("2027-03-01");
    EXPECT_FALSE(index.has_tree("Red", testing::day("2026-06-01")));
}

TEST_F(MadeIndex, TellsWhoGivesTheDonorsPollen) {
    const OrchardIndex index(orchard);
    const auto members = index.donors("Mix");
    ASSERT_EQ(members.size(), 2U);
    EXPECT_EQ(members[0].donor, "Red");
    EXPECT_DOUBLE_EQ(members[0].share.value, 0.25);
    EXPECT_EQ(members[1].donor, "Green");
    EXPECT_DOUBLE_EQ(members[1].share.value, 0.75);
    ASSERT_EQ(index.donors("Red").size(), 1U);
    EXPECT_DOUBLE_EQ(index.donors("Red")[0].share.value, 1);
}

TEST_F(MadeIndex, TakesANameThatNothingAnswersToForADonorOfItsOwn) {
    const OrchardIndex index(orchard);
    ASSERT_EQ(index.donors("Blue").size(), 1U);
    EXPECT_EQ(index.donors("Blue")[0].donor, "Blue");
}

TEST_F(MadeIndex, PutsAnAccessionBeforeABlendOfTheSameName) {
    orchard.accessions.push_back(named("Mix"));
    const OrchardIndex index(orchard);
    EXPECT_FALSE(index.is_blend("Mix"));
    EXPECT_EQ(index.donors("Mix").size(), 1U);
}

std::vector<double> shares_of(const std::vector<std::optional<double>>& written) {
    std::vector<BlendMember> members;
    for (const auto& share : written) {
        members.push_back({0, "Mix", "M", share ? std::optional{Share{*share}} : std::nullopt});
    }
    std::vector<const BlendMember*> rows;
    for (const auto& member : members) {
        rows.push_back(&member);
    }
    std::vector<double> shares;
    for (const auto share : blend_shares(rows)) {
        shares.push_back(share.value);
    }
    return shares;
}

// Common practice, no source.
TEST(BlendShares, ThatAreMissingDivideWhatTheOthersLeave) {
    EXPECT_EQ(shares_of({{}, {}}), (std::vector{0.5, 0.5}));
    EXPECT_EQ(shares_of({0.5, {}, {}}), (std::vector{0.5, 0.25, 0.25}));
}

TEST(BlendShares, ThatFallShortOfAWholeStaySo) {
    EXPECT_EQ(shares_of({0.5, 0.25}), (std::vector{0.5, 0.25}));
}

TEST(BlendShares, AboveAWholeAreScaledDownAndLeaveNothing) {
    EXPECT_EQ(shares_of({1.0, 1.0, {}}), (std::vector{0.5, 0.5, 0.0}));
}

TEST(BlendShares, AreNeverNegative) {
    EXPECT_EQ(shares_of({-1.0, 0.5}), (std::vector{0.0, 0.5}));
}

}  // namespace
}  // namespace pipward
