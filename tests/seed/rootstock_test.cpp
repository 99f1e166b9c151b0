// SPDX-License-Identifier: MIT
#include "pipward/seed/detail/rootstock.h"

#include <gtest/gtest.h>

#include "pipward/seed/detail/trait_kind.h"

namespace pipward::seed {
namespace {

TEST(Rootstock, WordsAreMatchedWhole) {
    for (const auto* name : {"dwarfing", "Dwarf", "half-dwarfing", "quince", "Quince A", "M9", "M 9", "m.9",
                             "M.9 T337", "B 9", "G.41", "P22"}) {
        EXPECT_TRUE(detail::is_dwarfing(name)) << name;
    }
    for (const auto* name : {"", "non-dwarfing", "not dwarfing", "seedling", "own roots", "MM 106", "M 25",
                             "M 90", "MM9", "dwarfling", "9"}) {
        EXPECT_FALSE(detail::is_dwarfing(name)) << name;
    }
}

TEST(TraitKind, IsWhatTheBookSaysElseAUsualWord) {
    Orchard orchard;
    EXPECT_EQ(detail::kind_of_trait(orchard, "taste"), TraitKind::fruit);
    EXPECT_EQ(detail::kind_of_trait(orchard, "fruit_mass_g"), TraitKind::fruit);
    EXPECT_EQ(detail::kind_of_trait(orchard, "mildew in the nursery"), TraitKind::leaf);
    EXPECT_EQ(detail::kind_of_trait(orchard, "scab on fruit"), TraitKind::fruit);
    EXPECT_EQ(detail::kind_of_trait(orchard, "xyz"), std::nullopt);
    orchard.traits = {{0, "xyz", TraitKind::bloom, {}}, {0, "mildew", TraitKind::tree, {}}};
    EXPECT_EQ(detail::kind_of_trait(orchard, "xyz"), TraitKind::bloom);
    EXPECT_EQ(detail::kind_of_trait(orchard, "mildew"), TraitKind::tree);
}

TEST(TraitKind, OnlyFlowersAndFruitShowThatATreeHasBloomed) {
    EXPECT_TRUE(detail::shows_bloom(TraitKind::fruit));
    EXPECT_TRUE(detail::shows_bloom(TraitKind::bloom));
    EXPECT_FALSE(detail::shows_bloom(TraitKind::leaf));
    EXPECT_FALSE(detail::shows_bloom(TraitKind::tree));
    EXPECT_FALSE(detail::shows_bloom(std::nullopt));
}

}  // namespace
}  // namespace pipward::seed
