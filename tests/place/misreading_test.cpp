// SPDX-License-Identifier: MIT
#include "pipward/place/detail/misreading.h"

#include <gtest/gtest.h>

#include "pipward/place/detail/likeness.h"

namespace pipward::place::detail {
namespace {

TEST(Misreading, LikelySlipsCostLess) {
    const auto cost = [](std::string_view a, std::string_view b) { return misread_whole(a, b).cost; };
    EXPECT_EQ(cost("up0312", "up0312"), 0);
    EXPECT_LT(cost("up03l2", "up0312"), cost("up03s2", "up0312"));
    EXPECT_LT(cost("upo312", "up0312"), cost("upx312", "up0312"));
    EXPECT_LT(cost("up0321", "up0312"), cost("up0345", "up0312"));
    EXPECT_LT(cost("wrennlea", "wrenlea"), cost("wrenxlea", "wrenlea"));
    EXPECT_LT(cost("modem", "modern"), 1.0F);
}

TEST(Misreading, CountsTheLettersThatDiffer) {
    EXPECT_EQ(misread_whole("kitten", "sitting").letters, 3);
    EXPECT_EQ(misread_whole("wernlea", "wrenlea").letters, 1);
    EXPECT_EQ(misread_part("tansi", "oldtansylane").letters, 1);
    EXPECT_EQ(misread_part("", "x").letters, 0);
    EXPECT_EQ(misread_whole("", "xyz").letters, 3);
}

TEST(Likeness, SeesCharactersThatLookAlikeAsEqualWhenForgiving) {
    EXPECT_EQ(Likeness("up03l2").slips_in_all("up0312"), 1);
    EXPECT_EQ(Likeness("up03l2", Eye::forgiving).slips_in_all("up0312"), 0);
    EXPECT_EQ(Likeness("upo3iz", Eye::forgiving).slips_in_part("upo3i2x"), 0);
    EXPECT_EQ(LettersSought("up03l2").lacking(letters_of("up0312")), 0);
}

}  // namespace
}  // namespace pipward::place::detail
