// SPDX-License-Identifier: MIT
// Past springs lived through again: what was not known on a day must not matter on it.
#include "pipward/season/plan_replay.h"

#include <gtest/gtest.h>

#include <cmath>

#include "bloom/springs.h"

namespace pipward::season {
namespace {

using namespace pipward::testing;

constexpr int replayed_year = 2025;

void add_replay_weather(Orchard& orchard, int year, double warmer_after_february) {
    const auto spring = spring_weather(year);
    const Day known_to = anchor_of({year}, Hemisphere::north) + 50;
    for (std::size_t i = 0; i < spring.days.size(); ++i) {
        const Day day = spring.first + static_cast<int>(i);
        const CelsiusStep warmer{day > known_to && year == replayed_year ? warmer_after_february : 0};
        orchard.weather.push_back({0, "Hill", day, spring.days[i].t_min + warmer,
                                   spring.days[i].t_max + warmer, WeatherSource::observed});
    }
}

void add_replay_bloom(Orchard& orchard, const std::string& accession, int year, double need, int later) {
    const auto spring = spring_weather(year);
    const auto curves = bloom::season_curves(spring.days, spring.first, orchard_latitude, CelsiusStep{0});
    BloomObservation seen;
    seen.fid = static_cast<std::int64_t>(orchard.bloom_observations.size()) + 1;
    seen.accession = accession;
    seen.observed_on = anchor_of({year}, Hemisphere::north) +
                       static_cast<int>(std::lround(true_bloom(curves, need))) + later;
    seen.bbch = Bbch{65};
    orchard.bloom_observations.push_back(seen);
}

// Two apples with eight springs before the replayed one; whatever came after its 19 February can be changed.
Place two_apples_replayed(double warmer_after_february = 0, int bloom_later = 0) {
    Orchard orchard;
    orchard.stations = {{1, "Hill", Metres{300}, MapPoint{9, 50, {}}, orchard_latitude}};
    orchard.accessions = {apple("Apple A"), apple("Apple B")};
    for (const auto* name : {"Apple A", "Apple B"}) {
        Tree tree;
        tree.label = std::string("T-") + name;
        tree.accession = name;
        orchard.trees.push_back(tree);
    }
    for (int year = replayed_year - 8; year <= replayed_year + 1; ++year) {
        add_replay_weather(orchard, year, warmer_after_february);
        if (year <= replayed_year) {
            const int later = year == replayed_year ? bloom_later : 0;
            add_replay_bloom(orchard, "Apple A", year, 4600, later);
            add_replay_bloom(orchard, "Apple B", year, 4800, later);
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
