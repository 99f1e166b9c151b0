// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pipward/place/detail/row_stands.h"
#include "pipward/place/near_question.h"
#include "pipward/place/near_spots.h"
#include "place/made_trees.h"

namespace pipward::place {
namespace {

const Day near_day = make_day({2026, 3, 20}).value();
constexpr double rows_apart = 4;
constexpr double trees_apart = 3;

// Rows to the north of each other, positions to the east, in plain metres.
Orchard made_block(int rows, int positions) {
    Orchard orchard;
    for (int row = 1; row <= rows; ++row) {
        for (int position = 1; position <= positions; ++position) {
            auto tree = testing::made_tree(fmt::format("{}-{}", row, position), row % 2 == 0 ? "Even" : "Odd",
                                           "B", std::to_string(row), position);
            tree.at = MapPoint{trees_apart * position, rows_apart * row, {}};
            orchard.trees.push_back(tree);
        }
    }
    return orchard;
}

Tree& labelled(Orchard& orchard, const std::string& label) {
    return *std::ranges::find(orchard.trees, label, &Tree::label);
}

double probability_of(const NearSpots& near, const Orchard& orchard, const std::string& label) {
    for (const auto& spot : near.spots) {
        if (spot.tree && orchard.trees[*spot.tree].label == label) {
            return spot.probability;
        }
    }
    return 0;
}

double sum_of(const NearSpots& near) {
    double sum = 0;
    for (const auto& spot : near.spots) {
        sum += spot.probability;
    }
    return sum;
}

const NearQuestion* question(const std::vector<NearQuestion>& questions, const std::string& key) {
    const auto found = std::ranges::find(questions, key, &NearQuestion::key);
    return found == questions.end() ? nullptr : &*found;
}

TEST(DeviationOf, LeavesThirtyTwoInAHundredOutsideOfTheRadius) {
    const double deviation = deviation_of(Metres{5});
    EXPECT_NEAR(std::exp(-25 / (2 * deviation * deviation)), 0.32, 1e-12);
}

TEST(NearSpots, WeighByTheGaussianOfTheirDistance) {
    // Two trees 3 m apart, seen from one of them: by hand exp(-9 / 2 s^2) against 1.
    const auto orchard = made_block(1, 2);
    const NearWish wish{{3, 4, {}}, Metres{3}, Metres{0}};
    const auto near = near_spots(orchard, near_day, wish);
    const double deviation = deviation_of(Metres{3});
    const double other = std::exp(-9 / (2 * deviation * deviation));
    ASSERT_EQ(near.spots.size(), 2U);
    EXPECT_NEAR(near.spots[0].probability, 1 / (1 + other), 1e-12);
    EXPECT_NEAR(near.spots[1].probability, other / (1 + other), 1e-12);
    EXPECT_NEAR(near.off, 0, 1e-12);
}

TEST(NearSpots, SumToOneAndComeSurerWithABetterReceiver) {
    const auto orchard = made_block(6, 10);
    double before = 0;
    for (const double accuracy : {10.0, 5.0, 2.0, 0.5}) {
        const auto near = near_spots(orchard, near_day, {{15.2, 12.3, {}}, Metres{accuracy}});
        EXPECT_NEAR(sum_of(near), 1, 1e-9);
        EXPECT_TRUE(std::ranges::is_sorted(near.spots, std::ranges::greater{}, &NearSpot::probability));
        EXPECT_GT(probability_of(near, orchard, "3-5"), before);
        before = probability_of(near, orchard, "3-5");
    }
    EXPECT_GT(before, 0.9);
}

TEST(NearSpots, AreSureOfTheTreeOneStandsAtWhereNothingIsUncertain) {
    const auto orchard = made_block(2, 3);
    const auto near = near_spots(orchard, near_day, {{6, 4, {}}, Metres{0}, Metres{0}});
    EXPECT_NEAR(sum_of(near), 1, 1e-9);
    EXPECT_NEAR(probability_of(near, orchard, "1-2"), 1, 1e-9);
}

TEST(NearSpots, AreRightAsOftenAsTheySay) {
    // Stand at tree 3-5 with errors spread evenly through the Gaussian; the mean probability given to the
    // likeliest must be the share of times that it is the right one.
    const auto orchard = made_block(6, 10);
    const double deviation = deviation_of(Metres{2});
    double said = 0;
    int right = 0;
    int count = 0;
    for (int ring = 0; ring < 40; ++ring) {
        const double radius = deviation * std::sqrt(-2 * std::log(1 - (ring + 0.5) / 40));
        for (int step = 0; step < 36; ++step, ++count) {
            const double angle = 2 * 3.14159265358979323846 * (step + 0.37 * ring) / 36;
            const auto near = near_spots(
                orchard, near_day,
                {{15 + radius * std::cos(angle), 12 + radius * std::sin(angle), {}}, Metres{2}, Metres{0}});
            said += near.spots[0].probability;
            right += orchard.trees[*near.spots[0].tree].label == "3-5" ? 1 : 0;
        }
    }
    EXPECT_NEAR(said / count, static_cast<double>(right) / count, 0.02);
}

TEST(NearSpots, CountGapsLessThanTrees) {
    auto orchard = made_block(1, 9);
    labelled(orchard, "1-5").removed_on = make_day({2021, 11, 1});
    std::erase_if(orchard.trees, [](const Tree& tree) { return tree.label == "1-7"; });
    const auto near = near_spots(orchard, near_day, {{15, 4, {}}, Metres{3}});
    const auto removed = std::ranges::find(near.spots, SpotKind::removed, &NearSpot::kind);
    const auto vacant = std::ranges::find(near.spots, SpotKind::vacant, &NearSpot::kind);
    ASSERT_NE(removed, near.spots.end());
    ASSERT_NE(vacant, near.spots.end());
    EXPECT_NEAR(vacant->at.east, 2 * trees_apart, 1e-9);
    EXPECT_EQ(vacant->position, 7);
    EXPECT_EQ(near.spots[0].kind, SpotKind::tree);
    NearWish heavy{{15, 4, {}}, Metres{3}};
    heavy.gap_weight = 1;
    EXPECT_EQ(near_spots(orchard, near_day, heavy).spots[0].kind, SpotKind::removed);
}

TEST(NearSpots, AskWhetherATreeStandsOnTheDay) {
    auto orchard = made_block(1, 3);
    labelled(orchard, "1-2").removed_on = near_day + 30;
    labelled(orchard, "1-3").planted_on = near_day + 30;
    const auto kind_on = [&](Day day, const std::string& label) {
        for (const auto& spot : near_spots(orchard, day, {{6, 4, {}}, Metres{3}}).spots) {
            if (spot.tree && orchard.trees[*spot.tree].label == label) {
                return spot.kind;
            }
        }
        throw std::runtime_error("no spot of " + label);
    };
    EXPECT_EQ(kind_on(near_day, "1-2"), SpotKind::tree);
    EXPECT_EQ(kind_on(near_day + 30, "1-2"), SpotKind::removed);
    EXPECT_EQ(kind_on(near_day, "1-3"), SpotKind::vacant);
    EXPECT_EQ(kind_on(near_day + 30, "1-3"), SpotKind::tree);
    labelled(orchard, "1-3").row.reset();
    EXPECT_EQ(kind_on(near_day, "1-3"), SpotKind::vacant);
}

TEST(NearSpots, AreNoneFarFromEveryTree) {
    EXPECT_TRUE(near_spots(made_block(2, 3), near_day, {{5000, 5000, {}}, Metres{5}}).spots.empty());
    EXPECT_TRUE(near_spots({}, near_day, {{0, 0, {}}, Metres{5}}).spots.empty());
    EXPECT_GT(near_spots(made_block(2, 3), near_day, {{-15, 4, {}}, Metres{3}}).off, 3);
}

TEST(NearSpots, TakeTreesWithoutAPlaceOrARow) {
    auto orchard = made_block(1, 3);
    orchard.trees[0].at.reset();
    orchard.trees[1].row.reset();
    const auto near = near_spots(orchard, near_day, {{6, 4, {}}, Metres{3}});
    EXPECT_EQ(near.spots.size(), 2U);
    EXPECT_GT(probability_of(near, orchard, "1-2"), 0.5);
    EXPECT_FALSE(questions_about(near, orchard).empty());
}

TEST(Questions, AskForTheGapThatPartsTwoTrees) {
    // Between 2-4 and 2-5: only beyond the second is there a gap.
    auto orchard = made_block(3, 9);
    labelled(orchard, "2-6").removed_on = make_day({2021, 11, 1});
    const auto near = near_spots(orchard, near_day, {{13.5, 8, {}}, Metres{1.2}, Metres{0}});
    const auto questions = questions_about(near, orchard);
    ASSERT_FALSE(questions.empty());
    EXPECT_EQ(questions[0].key, "tree-ahead");
    EXPECT_EQ(questions[0].words, "Does a tree stand at the next position of this row to the east?");
    EXPECT_GT(questions[0].bits, 0.9);
    auto after = near;
    EXPECT_TRUE(weigh_answers(after, orchard, {{"tree-ahead", false}}).empty());
    EXPECT_EQ(orchard.trees[*after.spots[0].tree].label, "2-5");
    EXPECT_GT(after.spots[0].probability, 0.9);
    EXPECT_NEAR(sum_of(after), 1, 1e-9);
}

TEST(Questions, AskForTheOuterRowWhereRowsAreInDoubt) {
    const auto orchard = made_block(4, 30);
    const auto near =
        near_spots(orchard, near_day, {{45, 14, {}}, Metres{1.5}, Metres{0}});  // between rows 3 and 4
    const auto questions = questions_about(near, orchard);
    const auto* outer = question(questions, "row-left");
    ASSERT_NE(outer, nullptr);
    EXPECT_EQ(outer->words, "Is there another row beside this one to the north?");
    EXPECT_GT(outer->bits, 0.9);
    EXPECT_EQ(questions[0].key, "row-left");
    EXPECT_EQ(question(questions, "row-right"), nullptr);  // there is one on both: nothing to learn
}

TEST(Questions, KnowWhatEachAnswerWouldSay) {
    const auto orchard = made_block(4, 12);
    const auto near = near_spots(orchard, near_day, {{33, 14, {}}, Metres{3}});
    for (const auto& one : questions_about(near, orchard)) {
        ASSERT_EQ(one.if_yes.size(), near.spots.size());
        for (std::size_t i = 0; i < near.spots.size(); ++i) {
            EXPECT_NEAR(one.yes * one.if_yes[i] + (1 - one.yes) * one.if_no[i], near.spots[i].probability,
                        1e-9);
        }
        EXPECT_GT(one.yes, 0);
        EXPECT_LT(one.yes, 1);
        EXPECT_LE(one.bits, 1 + 1e-12);
    }
}

TEST(Questions, LeadToTheTreeByTheirAnswers) {
    // Ask the best question, answer it as it is at the tree, and so on.
    auto orchard = made_block(6, 10);
    labelled(orchard, "4-7").removed_on = make_day({2021, 11, 1});
    const std::string truth = "4-6";
    const NearWish wish{{16.5, 14.5, {}}, Metres{3}};  // an alley and half a spacing off
    auto near = near_spots(orchard, near_day, wish);
    EXPECT_LT(probability_of(near, orchard, truth), 0.3);
    std::map<std::string, bool> answers;
    std::vector<std::string> asked;
    while (asked.size() < 8 && probability_of(near, orchard, truth) < 0.9) {
        const auto questions = questions_about(near, orchard, asked);
        ASSERT_FALSE(questions.empty());
        const auto& best = questions.front();
        const auto at = std::ranges::find_if(near.spots, [&](const NearSpot& spot) {
            return spot.tree && orchard.trees[*spot.tree].label == truth;
        });
        const bool answer = best.if_yes[static_cast<std::size_t>(at - near.spots.begin())] > 0;
        asked.push_back(best.key);
        weigh_answers(near, orchard, {{best.key, answer}});
    }
    EXPECT_GE(probability_of(near, orchard, truth), 0.9);
    EXPECT_LE(asked.size(), 5U);
}

TEST(Questions, TellWhichAnswersMeanNothing) {
    const auto orchard = made_block(2, 4);
    auto near = near_spots(orchard, near_day, {{6, 4, {}}, Metres{3}});
    const double before = near.spots[0].probability;
    EXPECT_EQ(weigh_answers(near, orchard, {{"colour", true}}), std::vector<std::string>{"colour"});
    EXPECT_NEAR(near.spots[0].probability, before, 1e-12);
}

TEST(RowStands, FillMissingPositionsEvenlyAndTakeTheStandingTree) {
    auto orchard = made_block(1, 5);
    auto old = labelled(orchard, "1-2");
    old.label = "old";
    old.removed_on = make_day({2015, 11, 1});
    orchard.trees.push_back(old);
    std::erase_if(orchard.trees, [](const Tree& tree) { return tree.label == "1-3" || tree.label == "1-4"; });
    const MetrePlane plane("", {0, 0, {}});
    const auto stands = detail::stands_of(tree_lines(orchard, plane).at(0), orchard, near_day);
    ASSERT_EQ(stands.size(), 5U);
    EXPECT_TRUE(stands[1].stands);
    EXPECT_FALSE(stands[2].tree);
    EXPECT_NEAR(stands[2].at.east, 3 * trees_apart, 1e-9);
    EXPECT_NEAR(stands[3].at.east, 4 * trees_apart, 1e-9);
}

}  // namespace
}  // namespace pipward::place
