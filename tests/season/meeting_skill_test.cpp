// SPDX-License-Identifier: MIT
#include "pipward/season/meeting_skill.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "bloom/springs.h"

namespace pipward::season {
namespace {

using namespace pipward::testing;

void note(Orchard& orchard, const std::string& accession, int year, Bbch stage, double day) {
    BloomNote written;
    written.fid = static_cast<std::int64_t>(orchard.bloom_notes.size()) + 1;
    written.accession = accession;
    written.noted_on = anchor_of({year}, Hemisphere::north) + static_cast<int>(std::lround(day));
    written.bbch = stage;
    orchard.bloom_notes.push_back(written);
}

/// Two apples that bloom together, and a third that blooms so late that its pollen never comes in time.
Orchard three_apples() {
    Orchard orchard;
    orchard.stations = {{1, "Hill", Metres{300}, MapPoint{9, 50, {}}, orchard_latitude}};
    for (const auto* name : {"Apple A", "Apple B", "Late"}) {
        orchard.accessions.push_back(apple(name));
    }
    for (int year = 2010; year <= 2020; ++year) {
        const auto spring = spring_weather(year);
        for (std::size_t i = 0; i < spring.days.size(); ++i) {
            orchard.weather.push_back({0, "Hill", spring.first + static_cast<int>(i), spring.days[i].t_min,
                                       spring.days[i].t_max, WeatherSource::observed});
        }
        const auto curves = bloom::season_curves(spring.days, spring.first, orchard_latitude, CelsiusStep{0});
        for (const auto& [name, need] :
             {std::pair{"Apple A", 4600.0}, std::pair{"Apple B", 4700.0}, std::pair{"Late", 10500.0}}) {
            const double full = true_bloom(curves, need);
            note(orchard, name, year, first_bloom, full - 4);
            note(orchard, name, year, full_bloom, full);
            note(orchard, name, year, bloom_end, full + 9);
        }
    }
    return orchard;
}

std::vector<MeetingScore> scores() {
    auto place = place_of(three_apples(), {parse_iso_day("2020-12-31").value(), {}});
    const auto past = read_past(place);
    return score_meetings(place, past, {{{4, 1}}, 2016, {}});
}

const MeetingScore& whole(const std::vector<MeetingScore>& found, MeetingWay way) {
    return *std::ranges::find_if(found, [&](const MeetingScore& score) {
        return score.way == way && score.chance_from == 0 && score.chance_to == 1;
    });
}

TEST(MeetingSkill, EveryOrderedPairOfEverySpringIsScoredOnce) {
    const auto found = scores();
    for (const auto way : {MeetingWay::same_day, MeetingWay::kept}) {
        EXPECT_EQ(whole(found, way).n, 5 * 6);
        int in_tenths = 0;
        for (const auto& score : found) {
            if (score.way == way && score.chance_to - score.chance_from < 0.5) {
                EXPECT_GE(score.mean_chance, score.chance_from - 1e-9);
                EXPECT_LE(score.mean_chance, score.chance_to + 1e-9);
                in_tenths += score.n;
            }
        }
        EXPECT_EQ(in_tenths, 5 * 6);
    }
}

TEST(MeetingSkill, TellsWhatCameAndWhatTheMeanShareWouldHaveScored) {
    const auto found = scores();
    const auto& same_day = whole(found, MeetingWay::same_day);
    EXPECT_NEAR(same_day.observed_share, 1.0 / 3, 1e-9);
    EXPECT_NEAR(same_day.brier_climatology, 1.0 / 3 * 2 / 3, 1e-9);
    const auto& kept = whole(found, MeetingWay::kept);
    EXPECT_NEAR(kept.observed_share, 2.0 / 3, 1e-9);
}

TEST(MeetingSkill, ChancesBeatTheMeanShareWherePairsDiffer) {
    for (const auto way : {MeetingWay::same_day, MeetingWay::kept}) {
        const auto found = scores();
        EXPECT_LT(whole(found, way).brier, 0.5 * whole(found, way).brier_climatology) << to_text(way);
    }
}

}  // namespace
}  // namespace pipward::season
