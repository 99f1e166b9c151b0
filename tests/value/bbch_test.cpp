// SPDX-License-Identifier: MIT
#include "pipward/value/bbch.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

// BBCH pome fruit, Meier et al. 1994: the scale leaves these out.
TEST(Bbch, RefusesStagesThePomeFruitScaleDoesNotDefine) {
    for (const int code : {58, 66, 68, 70, 2, 50, 100, -1}) {
        EXPECT_FALSE(make_bbch(code)) << code;
    }
}

TEST(Bbch, KnowsTheFlowerStagesInOrderAndInWords) {
    Bbch last{-1};
    for (const auto& [stage, words] : bbch_stages()) {
        EXPECT_LT(last, stage);
        EXPECT_FALSE(words.empty());
        EXPECT_EQ(make_bbch(stage.code), stage);
        EXPECT_EQ(words_of(stage), words);
        last = stage;
    }
    for (const int code : {51, 52, 53, 54, 55, 56, 57, 59, 60, 61, 62, 63, 64, 65, 67, 69}) {
        EXPECT_TRUE(make_bbch(code)) << code;
    }
}

}  // namespace
}  // namespace pipward
