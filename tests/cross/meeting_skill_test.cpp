// SPDX-License-Identifier: MIT
#include "pipward/cross/meeting_skill.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "bloom/springs.h"

namespace pipward::cross {
namespace {

using testing::apple;
using testing::orchard_latitude;
using testing::spring_weather;
using testing::true_bloom;

/// Two apples that bloom together, and a third that blooms so late that its pollen never comes in time.
struct ThreeApples {
    Orchard orchard;
    Station station{1, "Hill", Metres{300}, MapPoint{9, 50, {}}, orchard_latitude};
    std::vector<weather::SeasonWeather> seasons;

    ThreeApples() {
        for (const auto* name : {"Apple A", "Apple B", "Late"}) {
            orchard.accessions.push_back(apple(name));
        }
        for (int year = 2010; year <= 2020; ++year) {
            seasons.push_back(spring_weather(year));
            add_spring(seasons.back());
        }
    }

    void add_spring(const weather::SeasonWeather& spring) {
        const auto curves = bloom::season_curves(spring.days, spring.first, orchard_latitude, CelsiusStep{0});
        for (const auto& [name, requirement] :
             {std::pair{"Apple A", 4600.0}, std::pair{"Apple B", 4700.0}, std::pair{"Late", 10500.0}}) {
            const double full = true_bloom(curves, requirement);
            observe(name, spring.season, first_bloom, full - 4);
            observe(name, spring.season, full_bloom, full);
            observe(name, spring.season, bloom_end, full + 9);
        }
    }

    void observe(const std::string& accession, Season season, Bbch stage, double day) {
        BloomObservation seen;
        seen.fid = static_cast<std::int64_t>(orchard.bloom_observations.size()) + 1;
        seen.accession = accession;
        seen.observed_on = anchor_of(season, Hemisphere::north) + static_cast<int>(std::lround(day));
        seen.bbch = stage;
        orchard.bloom_observations.push_back(seen);
    }

    std::vector<MeetingScore> scores() const {
        const Day as_of = parse_iso_day("2020-12-31").value();
        return meeting_scores({orchard, station, orchard_latitude, as_of, seasons}, {{{4, 1}}, 2016, {}});
    }
};

const MeetingScore& whole(const std::vector<MeetingScore>& found, MeetingWay way) {
    return *std::ranges::find_if(found, [&](const MeetingScore& score) {
        return score.way == way && score.probability_from == 0 && score.probability_to == 1;
    });
}

TEST(MeetingSkill, EveryOrderedPairOfEverySpringIsScoredOnce) {
    const auto found = ThreeApples().scores();
    for (const auto way : {MeetingWay::same_day, MeetingWay::kept}) {
        EXPECT_EQ(whole(found, way).n, 5 * 6);
        int in_tenths = 0;
        for (const auto& score : found) {
            if (score.way == way && score.probability_to - score.probability_from < 0.5) {
                EXPECT_GE(score.mean_probability, score.probability_from - 1e-9);
                EXPECT_LE(score.mean_probability, score.probability_to + 1e-9);
                in_tenths += score.n;
            }
        }
        EXPECT_EQ(in_tenths, 5 * 6);
    }
}

TEST(MeetingSkill, TellsWhatCameAndWhatTheMeanShareWouldHaveScored) {
    const auto found = ThreeApples().scores();
    const auto& same_day = whole(found, MeetingWay::same_day);
    EXPECT_NEAR(same_day.observed_share, 1.0 / 3, 1e-9);
    EXPECT_NEAR(same_day.brier_climatology, 1.0 / 3 * 2 / 3, 1e-9);
    const auto& kept = whole(found, MeetingWay::kept);
    EXPECT_NEAR(kept.observed_share, 2.0 / 3, 1e-9);
}

TEST(MeetingSkill, ProbabilitiesBeatTheMeanShareWherePairsDiffer) {
    const auto found = ThreeApples().scores();
    for (const auto way : {MeetingWay::same_day, MeetingWay::kept}) {
        EXPECT_LT(whole(found, way).brier, 0.5 * whole(found, way).brier_climatology) << to_text(way);
    }
}

}  // namespace
}  // namespace pipward::cross
