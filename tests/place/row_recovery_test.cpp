// SPDX-License-Identifier: MIT
#include "pipward/place/row_recovery.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "place/made_orchard.h"

namespace pipward::place {
namespace {

using testing::made_orchard;
using testing::OrchardForm;
using testing::Score;
using testing::score_of;

Score numbered(const OrchardForm& form, RecoveryRule rule = {}) {
    const auto orchard = made_orchard(form);
    rule.bearing_deg = rule.bearing_deg.value_or(70);
    return score_of(orchard, recover_rows(orchard.seen, rule));
}

TEST(RecoverRows, NumbersNearlyAllRightAndNoneWrongWhereNoiseIsAQuarterOfTheSpacingAtMost) {
    Score sum;
    for (const double distance : {3.0, 4.0, 5.0}) {
        for (const auto& [spacing, noise] : {std::pair{1.0, 0.2}, {2.0, 0.3}, {2.0, 0.5}, {3.0, 0.6}}) {
            for (const double missing : {0.0, 0.1, 0.2}) {
                OrchardForm form;
                form.row_distance = distance;
                form.spacing = spacing;
                form.noise = noise;
                form.missing = missing;
                sum += numbered(form);
            }
        }
    }
    EXPECT_GT(sum.trees(), 9000);
    EXPECT_GE(sum.share(sum.right), 0.985);  // 0.989 when this was written
    EXPECT_EQ(sum.wrong, 0);
    EXPECT_EQ(sum.wrong_oddities, 0);
}

TEST(RecoverRows, RatherLeavesTreesOpenWhereTheNoiseIsTooGreat) {
    Score sum;
    for (const double noise : {1.0, 1.5, 2.0}) {
        for (const double spacing : {1.0, 1.5, 2.0}) {
            OrchardForm form;
            form.noise = noise;
            form.spacing = spacing;
            sum += numbered(form);
        }
    }
    EXPECT_GE(sum.share(sum.open), 0.8);
    EXPECT_LE(sum.share(sum.wrong), 0.002);
}

TEST(RecoverRows, FindsBearingDistanceSpacingAndNoise) {
    OrchardForm form;
    form.row_distance = 3.5;
    form.spacing = 1.5;
    form.bearing = 33;
    const auto got = recover_rows(made_orchard(form).seen, {});
    EXPECT_NEAR(got.bearing_deg, 33, 0.5);
    EXPECT_NEAR(got.row_distance.value, 3.5, 0.03);
    EXPECT_NEAR(got.spacing.value, 1.5, 0.01);
    EXPECT_NEAR(got.noise_along.value, 0.3 / std::sqrt(2.0), 0.04);
    EXPECT_NEAR(got.noise_across.value, 0.3 / std::sqrt(2.0), 0.04);
    EXPECT_EQ(got.rows, form.rows);
}

TEST(RecoverRows, CountsFromTheOtherEndAndSideWhenTold) {
    OrchardForm form;
    form.edge_lean = 0;
    const auto orchard = made_orchard(form);
    RecoveryRule rule;
    rule.bearing_deg = 250;
    rule.rows_to = Side::right;
    const auto got = recover_rows(orchard.seen, rule);
    int right = 0;
    for (std::size_t i = 0; i < orchard.truth.size(); ++i) {
        const auto& truth = orchard.truth[i];
        right += got.trees[i].doubt.empty() && got.trees[i].row == form.rows - 1 - truth.row &&
                         got.trees[i].position == form.positions - 1 - truth.position
                     ? 1
                     : 0;
    }
    EXPECT_GT(right, 260);
}

TEST(RecoverRows, LeavesTwoTreesOnOneSpotAndAStrayPointOpenAndSaysWhy) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        OrchardForm form;
        form.seed = seed;
        const auto orchard = made_orchard(form);
        const auto got = recover_rows(orchard.seen, {});
        for (std::size_t i = 0; i < orchard.truth.size(); ++i) {
            if (orchard.truth[i].doubled || orchard.truth[i].row < 0) {
                EXPECT_FALSE(got.trees[i].doubt.empty()) << seed;
            }
        }
    }
}

TEST(RecoverRows, KeepsGapsAtTheBeginningsOfRows) {
    OrchardForm form;
    form.missing = 0;
    form.oddities = false;
    auto orchard = made_orchard(form);
    // The first three trees of the fourth row are gone.
    for (int gone = 0; gone < 3; ++gone) {
        const auto at = 3 * form.positions;
        orchard.seen.erase(orchard.seen.begin() + at);
        orchard.truth.erase(orchard.truth.begin() + at);
    }
    EXPECT_EQ(score_of(orchard, recover_rows(orchard.seen, {})).right, 297);
    RecoveryRule own;
    own.begin = RowBegin::first_tree;
    const auto from_first = recover_rows(orchard.seen, own);
    EXPECT_EQ(from_first.trees[3 * 30].position, 0);
}

TEST(RecoverRows, LeavesASingleRowOpenBecauseItsBeginningCannotBeKnown) {
    OrchardForm form;
    form.rows = 1;
    form.bend = 0;
    form.oddities = false;
    const auto orchard = made_orchard(form);
    const auto got = recover_rows(orchard.seen, {});
    EXPECT_EQ(score_of(orchard, got).right, 0);
    EXPECT_FALSE(got.findings.empty());
    RecoveryRule own;
    own.begin = RowBegin::first_tree;
    own.bearing_deg = 74;
    EXPECT_GT(score_of(orchard, recover_rows(orchard.seen, own)).right, 20);
}

TEST(RecoverRows, AsksForTheBearingWhereTreesStandInSquare) {
    OrchardForm form;
    form.row_distance = 3;
    form.spacing = 3;
    form.bend = 0;
    form.edge_lean = 0;
    form.noise = 0.2;
    const auto got = recover_rows(made_orchard(form).seen, {});
    ASSERT_EQ(got.findings.size(), 1u);
    EXPECT_NE(got.findings[0].message.text().find("both ways"), std::string::npos);
    ASSERT_TRUE(got.question);
    EXPECT_EQ(got.question->answers[0].option, "bearing");
    EXPECT_EQ(numbered(form).wrong, 0);
}

TEST(RecoverRows, MakesNoRowsOutOfPointsWithoutOrder) {
    testing::Chance chance(7);
    std::vector<LonLat> seen;
    for (int i = 0; i < 300; ++i) {
        seen.push_back({9.301 + 0.0006 * chance.uniform(), 48.134 + 0.0004 * chance.uniform()});
    }
    const auto got = recover_rows(seen, {});
    EXPECT_TRUE(std::ranges::none_of(got.trees, [](const auto& tree) { return tree.doubt.empty(); }));
    EXPECT_FALSE(got.findings.empty());
}

TEST(RecoverRows, TakesFewPointsAndPointsAllOnOneSpot) {
    EXPECT_TRUE(recover_rows({}, {}).trees.empty());
    const LonLat here{9.301, 48.134};
    for (const std::size_t count : {1u, 2u, 5u, 6u, 40u}) {
        const auto got = recover_rows(std::vector<LonLat>(count, here), {});
        ASSERT_EQ(got.trees.size(), count);
        EXPECT_TRUE(std::ranges::none_of(got.trees, [](const auto& tree) { return tree.doubt.empty(); }));
    }
}

TEST(RecoverRows, GivesTheSameTwiceAndInAnyOrderOfThePoints) {
    auto orchard = made_orchard({});
    const auto once = recover_rows(orchard.seen, {});
    const auto twice = recover_rows(orchard.seen, {});
    auto reversed = orchard.seen;
    std::ranges::reverse(reversed);
    const auto other = recover_rows(reversed, {});
    const auto count = once.trees.size();
    for (std::size_t i = 0; i < count; ++i) {
        EXPECT_EQ(once.trees[i].confidence, twice.trees[i].confidence);
        EXPECT_EQ(once.trees[i].doubt.empty(), other.trees[count - 1 - i].doubt.empty());
        EXPECT_EQ(once.trees[i].position, other.trees[count - 1 - i].position);
    }
}

TEST(MatchRows, NumbersTreesAgainstRowsThatAreKnown) {
    OrchardForm form;
    form.noise = 0.5;
    form.bend = 0;
    const auto orchard = made_orchard(form);
    const LonLat corner{9.301, 48.134};
    std::vector<KnownRow> rows;
    for (int row = 0; row < form.rows; ++row) {
        const double across = row * form.row_distance;
        const auto start = way_from(way_from(corner, form.bearing, Metres{form.edge_lean * across}),
                                    form.bearing + 90, Metres{across});
        const auto end = way_from(start, form.bearing, Metres{(form.positions - 1) * form.spacing});
        rows.push_back({{{start}, {end}}, Metres{form.spacing}, form.positions});
    }
    const auto score = score_of(orchard, match_rows(orchard.seen, rows, {}));
    EXPECT_EQ(score.wrong, 0);
    EXPECT_EQ(score.wrong_oddities, 0);
    EXPECT_GE(score.share(score.right), 0.98);
}

TEST(MatchRows, EstimatesACommonOffsetAndSaysIt) {
    OrchardForm form;
    form.noise = 0.3;
    form.bend = 0;
    form.edge_lean = 0;
    form.oddities = false;
    const LonLat corner{9.301, 48.134};
    std::vector<KnownRow> rows;
    for (int row = 0; row < form.rows; ++row) {
        const auto start = way_from(corner, form.bearing + 90, Metres{row * form.row_distance});
        const auto end = way_from(start, form.bearing, Metres{(form.positions - 1) * form.spacing});
        rows.push_back({{{start}, {end}}, Metres{form.spacing}, form.positions});
    }
    for (const auto& [turn, metres] : {std::pair{0.0, 2.0}, {180.0, 2.0}, {90.0, 4.0}, {270.0, 4.0}}) {
        auto orchard = made_orchard(form);
        for (auto& seen : orchard.seen) {
            seen = way_from(seen, form.bearing + turn, Metres{metres});
        }
        const auto got = match_rows(orchard.seen, rows, {});
        const auto score = score_of(orchard, got);
        EXPECT_EQ(score.wrong, 0) << turn;
        EXPECT_GE(score.share(score.right), 0.98) << turn;
        ASSERT_EQ(got.findings.size(), 1u) << turn;
        EXPECT_NE(got.findings[0].message.text().find("All points"), std::string::npos);
    }
    EXPECT_TRUE(match_rows(made_orchard(form).seen, rows, {}).findings.empty());
}

TEST(MatchRows, LeavesTreesOpenThatStandNearNoRow) {
    const LonLat corner{9.301, 48.134};
    const KnownRow row{{{corner}, {way_from(corner, 74, Metres{30})}}, Metres{2}, 16};
    const std::vector<LonLat> far{way_from(corner, 164, Metres{80}), way_from(corner, 254, Metres{20})};
    const auto got = match_rows(far, std::vector{row}, {});
    EXPECT_FALSE(got.trees[0].doubt.empty());
    EXPECT_FALSE(got.trees[1].doubt.empty());
    EXPECT_TRUE(match_rows({}, std::vector{row}, {}).trees.empty());
}

}  // namespace
}  // namespace pipward::place
