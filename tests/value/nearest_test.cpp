// SPDX-License-Identifier: MIT
#include "pipward/value/nearest.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

const std::vector<std::string> ids{"book-new", "book-check", "bloom-fit", "season-plan"};

TEST(EditDistance, CountsLettersToChange) {
    EXPECT_EQ(edit_distance("kitten", "sitting"), 3);  // the textbook pair
    EXPECT_EQ(edit_distance("", "abc"), 3);
    EXPECT_EQ(edit_distance("abc", ""), 3);
    EXPECT_EQ(edit_distance("same", "same"), 0);
}

TEST(EditDistance, IsTheSameBothWaysAndKeepsTheTriangle) {
    for (const auto& a : ids) {
        for (const auto& b : ids) {
            EXPECT_EQ(edit_distance(a, b), edit_distance(b, a));
            for (const auto& c : ids) {
                EXPECT_LE(edit_distance(a, c), edit_distance(a, b) + edit_distance(b, c));
            }
        }
    }
}

TEST(Nearest, FindsWhatASlipOfTheHandMeant) {
    EXPECT_EQ(nearest("seasonplan", ids), "season-plan");
    EXPECT_EQ(nearest("book-chekc", ids), "book-check");
    EXPECT_EQ(nearest("season", ids), "season-plan");  // the beginning of a word
}

TEST(Nearest, OffersNothingWhereNothingIsNear) {
    EXPECT_EQ(nearest("xyzzy", ids), std::nullopt);
    EXPECT_EQ(nearest("book", {}), std::nullopt);
}

TEST(NearestFew, OffersTheLikeliestFirstAndNoMoreThanAsked) {
    const std::vector<std::string> labels{"LO-04-07", "LO-04-08", "LO-05-07", "UP-05-07"};
    EXPECT_EQ(nearest_few("lo-04-07", labels).front(), "LO-04-07");
    EXPECT_EQ(nearest_few("LO-04-17", labels, 2), (std::vector<std::string>{"LO-04-07", "LO-04-08"}));
    EXPECT_EQ(nearest_few("05-07", labels), (std::vector<std::string>{"LO-05-07", "UP-05-07"}));
    EXPECT_TRUE(nearest_few("xyzzy", labels).empty());
}

}  // namespace
}  // namespace pipward
