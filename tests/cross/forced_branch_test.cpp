// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/forced_branch.h"

#include <gtest/gtest.h>

#include "cross/made_orchard.h"
#include "pipward/cross/detail/forcing.h"

namespace pipward::cross {
namespace {

using testing::courses_at;

TEST(ForcedBranch, HasLessOfAChanceTheLaterTheCut) {
    const auto seed = courses_at(120);
    const auto donor = courses_at(140);
    double before = 1;
    for (SeasonDay cut = 0; cut < 140; cut += 2) {
        const double chance = detail::chance_forced(seed, donor, {cut, {50}});
        EXPECT_LE(chance, before + 1e-12) << cut;
        before = chance;
    }
    EXPECT_EQ(before, 0);
}

TEST(ForcedBranch, LastCutKeepsItsPartOfTheChanceAndTheDayAfterDoesNot) {
    const auto seed = courses_at(120);
    const auto donor = courses_at(140);
    const double best = detail::chance_forced(seed, donor, {60, {50}});
    const auto last = detail::last_cut(seed, donor, {60, {50}}, 0.9);
    ASSERT_TRUE(last);
    EXPECT_GE(detail::chance_forced(seed, donor, {*last, {50}}), 0.9 * best);
    EXPECT_LT(detail::chance_forced(seed, donor, {*last + 1, {50}}), 0.9 * best);
    EXPECT_FALSE(detail::last_cut(seed, donor, {135, {50}}, 0.9));
}

TEST(ForcedBranch, OfDormantWoodWaitsForItsChill) {
    const auto donor = courses_at(150);
    const SeasonDay chilled = season_first + 200;  // half a portion a day
    EXPECT_EQ(detail::median_useful_cut(donor, {0, {100}}), chilled);
    const SeasonDay swelling =
        detail::median_useful_cut(donor, {0, {130}});  // has had its chill, whatever the figure says
    EXPECT_GT(swelling, chilled);
    EXPECT_LT(swelling, 150 - 25);
    EXPECT_EQ(detail::median_useful_cut(donor, {0, {20}}), 0);
    EXPECT_EQ(detail::chance_forced(courses_at(60), courses_at(120), {0, {100}}), 0);
}

TEST(ForcedBranch, IsNotCutFromADonorAtBalloon) {
    EXPECT_EQ(detail::chance_forced(courses_at(130), courses_at(100), {105, {50}}), 0);
}

// What a breeder reads must hold together: who cuts on the last day has dried pollen before the last day of
// use.
TEST(ForcedBranch, CutOnTheLastDayIsInTimeForTheLastDayOfUse) {
    for (double seed_at = 110; seed_at < 135; seed_at += 1) {
        const auto seed = courses_at(seed_at);
        const auto donor = courses_at(seed_at + 12);
        for (SeasonDay from = 60; from < 130; from += 3) {
            const auto days = detail::forced_days(seed, donor, {from, {50}}, 0.1);
            if (!days) {
                continue;
            }
            EXPECT_GE(days->cut.first, from);
            EXPECT_LE(days->cut.first, days->cut.last);
            EXPECT_LE(days->cut.last + days->days_in_the_room + detail::drying_days, days->use.last)
                << seed_at << from;
            EXPECT_LE(days->use.first, days->use.last) << seed_at << from;
            EXPECT_GE(days->use.first, days->cut.first + detail::drying_days);
        }
    }
}

TEST(ForcedBranch, CannotBeUsedBeforeItsPollenIsThere) {
    const auto seed = courses_at(120);
    const auto early = detail::forced_days(seed, courses_at(135), {70, {50}}, 0.1);
    const auto late = detail::forced_days(seed, courses_at(135), {104, {50}}, 0.1);
    ASSERT_TRUE(early && late);
    EXPECT_GE(late->use.first, early->use.first);
    EXPECT_GE(late->use.last, late->cut.first + detail::drying_days);
}

TEST(ForcedBranch, IsOfNoUseToASeedParentThatIsOver) {
    EXPECT_FALSE(detail::forced_days(courses_at(100), courses_at(140), {112, {50}}, 0.1));
}

}  // namespace
}  // namespace pipward::cross
