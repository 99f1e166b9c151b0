// SPDX-License-Identifier: MIT
#include "pipward/seed/planting.h"

#include <gtest/gtest.h>

#include <map>

#include "pipward/seed/planted.h"
#include "pipward/seed/planting_back.h"
#include "pipward/seed/waiting_families.h"
#include "pipward/value/finding.h"

namespace pipward::seed {
namespace {

const std::vector<Family> three_families{{"25-01", 17}, {"25-02", 8}, {"25-03", 31}};

std::map<std::size_t, int> seedlings_by_family(const std::vector<PlantedPlace>& planted) {
    std::map<std::size_t, int> seedlings;
    for (const auto& place : planted) {
        seedlings[place.family] += place.is_check ? 0 : 1;
    }
    return seedlings;
}

TEST(Planting, LosesNoSeedlingAndNoPlace) {
    for (const auto order : {PlantingOrder::together, PlantingOrder::mixed}) {
        for (const int check_every : {0, 2, 10}) {
            const auto needed = places_needed(56, check_every);
            const auto planted = plan_planting(three_families, 500, {order, 5, 4, check_every, 7});
            ASSERT_EQ(planted.size(), needed);
            for (std::size_t i = 0; i < planted.size(); ++i) {
                EXPECT_EQ(planted[i].place, i);
                EXPECT_EQ(planted[i].is_check, check_every > 0 && (i + 1) % check_every == 0);
            }
            const auto seedlings = seedlings_by_family(planted);
            EXPECT_EQ(seedlings.at(0), 17);
            EXPECT_EQ(seedlings.at(1), 8);
            EXPECT_EQ(seedlings.at(2), 31);
        }
    }
}

TEST(Planting, KeepsFamiliesInOneRunWhereTheyStandTogether) {
    const auto planted = plan_planting(three_families, 56, {});
    for (std::size_t i = 1; i < planted.size(); ++i) {
        EXPECT_GE(planted[i].family, planted[i - 1].family);
    }
}

TEST(Planting, GivesEveryBlockItsShareOfEveryFamilyWhereMixed) {
    const auto planted = plan_planting({{"a", 40}, {"b", 20}}, 60, {PlantingOrder::mixed, 5, 4, 0, 3});
    for (std::size_t block = 0; block < 4; ++block) {
        int of_a = 0;
        for (std::size_t i = block * 15; i < (block + 1) * 15; ++i) {
            of_a += planted[i].family == 0 ? 1 : 0;
        }
        EXPECT_EQ(of_a, 10) << block;
    }
}

TEST(Planting, IsTheSameAgainForTheSameNumberAndAnotherForAnother) {
    const auto families_of = [](std::uint32_t chance) {
        std::vector<std::size_t> families;
        for (const auto& place : plan_planting(three_families, 56, {PlantingOrder::mixed, 2, 4, 0, chance})) {
            families.push_back(place.family);
        }
        return families;
    };
    EXPECT_EQ(families_of(12), families_of(12));
    EXPECT_NE(families_of(12), families_of(13));
}

TEST(Planting, StopsWhereThePlacesEnd) {
    EXPECT_EQ(plan_planting(three_families, 10, {}).size(), 10U);
    EXPECT_TRUE(plan_planting(three_families, 0, {}).empty());
    EXPECT_TRUE(plan_planting({}, 10, {}).empty());
}

TEST(PlantedRecords, AreSeedlingsWithTheirParentsAndTreesWithTheirPlaces) {
    Orchard orchard;
    Accession mother;
    mother.name = "Wrenlea";
    mother.species = "Malus domestica";
    orchard.accessions = {mother};
    CrossGoal goal;
    goal.code = "25-01";
    goal.seed_parent = "Wrenlea";
    goal.pollen_parent = "Marlside";
    orchard.goals = {goal};
    std::vector<place::RowPosition> places(3);
    for (int i = 0; i < 3; ++i) {
        places[static_cast<std::size_t>(i)] = {
            "Upper", "1", i + 1, place::PositionState::vacant, "", {}, MapPoint{3.0 * i, 4, {}}};
    }
    PlantingWish wish;
    wish.check_every = 2;
    const auto planted = planted_seedlings({{&orchard.goals[0], 2}}, places, wish, "Check", orchard);
    const auto records = planted_records(planted, orchard, {*parse_iso_day("2026-07-01"), "planting X"});
    ASSERT_EQ(records.trees.size(), 3U);
    ASSERT_EQ(records.accessions.size(), 2U);  // the check's accession is there already
    EXPECT_EQ(records.accessions[0].species, "Malus domestica");
    EXPECT_EQ(records.accessions[0].pollen_parent, "Marlside");
    EXPECT_EQ(records.accessions[0].kind, AccessionKind::seedling);
    EXPECT_EQ(records.trees[1].accession, "Check");
    EXPECT_EQ(records.trees[1].purpose, TreePurpose::other);
    EXPECT_EQ(records.trees[2].position, 3);
    EXPECT_EQ(records.trees[2].placed_by, PlacedBy::computed);
    EXPECT_EQ(records.trees[2].remark, "planting X");
    EXPECT_DOUBLE_EQ(records.trees[2].at->x, 6);
}

TEST(PlantingBack, IsRefusedWhereASportOfASeedlingWasFound) {
    Orchard orchard;
    auto& seedling = orchard.accessions.emplace_back();
    seedling.name = "25-01-7";
    auto& tree = orchard.trees.emplace_back();
    tree.label = "N-01-07";
    tree.accession = seedling.name;
    tree.remark = planting_remark("spring");
    seedling.remark = tree.remark;
    EXPECT_EQ(planting_to_take_back(orchard, *tree.remark).trees.size(), 1U);

    auto& sport = orchard.accessions.emplace_back();
    sport.name = "25-01-7 red";
    sport.sport_of = "25-01-7";
    EXPECT_THROW(planting_to_take_back(orchard, *tree.remark), Error);
}

TEST(WaitingFamilies, TakeBlanksRoundTheSign) {
    EXPECT_TRUE(is_wish_of_crosses("24-01 = 12; 24-02"));
    EXPECT_TRUE(is_wish_of_crosses(" 24-01=12 "));
    EXPECT_FALSE(is_wish_of_crosses("24-01 = twelve"));
    EXPECT_FALSE(is_wish_of_crosses("24-01 ="));
}

}  // namespace
}  // namespace pipward::seed
