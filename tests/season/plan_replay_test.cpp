// SPDX-License-Identifier: MIT
// Past springs lived through again: what was not known on a day must not matter on it.
#include "pipward/season/plan_replay.h"

#include <gtest/gtest.h>

#include "season/two_apples.h"

namespace pipward::season {
namespace {

using namespace pipward::testing;

constexpr int replayed_year = 2025;

// Two apples with eight springs before the replayed one; whatever came after its 19 February can be changed.
Place two_apples_replayed(double warmer_after_february = 0, int bloom_later = 0) {
    auto orchard = two_apple_trees();
    for (int year = replayed_year - 8; year <= replayed_year + 1; ++year) {
        const bool replayed = year == replayed_year;
        add_weather(orchard, year, {replayed ? warmer_after_february : 0}, 50);
        if (year <= replayed_year) {
            add_full_bloom(orchard, "Apple A", year, 4600, replayed ? bloom_later : 0);
            add_full_bloom(orchard, "Apple B", year, 4800, replayed ? bloom_later : 0);
        }
    }
    orchard.goals = {{1, "26-01", {replayed_year + 1}, "Apple A", "Apple B", 50, {}, {}}};
    return place_of(std::move(orchard), {*parse_iso_day("2026-03-20"), ""});
}

// With so many days between looks the only one is on 15 February.
cross::SpringReplay seen_in_february(const Place& place) {
    const auto replays = replay_springs(place, {{MethodChoice::averaged}, 300, replayed_year});
    EXPECT_EQ(replays.size(), 1U);
    return replays.front();
}

TEST(PlanReplay, WeatherAndBloomOfAfterALookDoNotChangeWhatItSays) {
    const auto as_it_was = seen_in_february(two_apples_replayed());
    ASSERT_EQ(as_it_was.chances.size(), 1U);
    for (const auto& place : {two_apples_replayed(3), two_apples_replayed(-3), two_apples_replayed(0, 9)}) {
        EXPECT_EQ(seen_in_february(place).chances.front().chance, as_it_was.chances.front().chance);
    }
}

TEST(PlanReplay, WithLooksEveryWeekACrossThatCanMeetIsMadeAndNothingIsLate) {
    const auto replays = replay_springs(two_apples_replayed(), {{MethodChoice::averaged}, 7, replayed_year});
    ASSERT_EQ(replays.size(), 1U);
    ASSERT_EQ(replays[0].crosses.size(), 1U);
    const auto& cross = replays[0].crosses[0];
    EXPECT_TRUE(cross.observed);
    EXPECT_FALSE(cross.late);
    EXPECT_GE(cross.done[0], cross::success_from);
    EXPECT_GE(cross.done[1], cross::success_from);
}

TEST(PlanReplay, TheSameTwiceIsTheSame) {
    const auto place = two_apples_replayed();
    const ReplayRequest request{{MethodChoice::averaged}, 14, replayed_year - 1};
    const auto once = replay_springs(place, request);
    const auto again = replay_springs(place, request);
    ASSERT_EQ(once.size(), 2U);
    for (std::size_t i = 0; i < once.size(); ++i) {
        EXPECT_EQ(once[i].crosses[0].done, again[i].crosses[0].done);
        EXPECT_EQ(once[i].chances.size(), again[i].chances.size());
    }
}

TEST(PlanReplay, AnOrchardWithoutPastSpringsIsRefused) {
    auto place = two_apples_replayed();
    place.orchard.bloom_observations.clear();
    EXPECT_THROW(replay_springs(place, {}), Error);
}

}  // namespace
}  // namespace pipward::season
