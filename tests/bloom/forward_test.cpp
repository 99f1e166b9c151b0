// SPDX-License-Identifier: MIT
#include "pipward/bloom/forward.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pipward/bloom/stage_ladder.h"
#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::orchard_latitude;
using testing::true_bloom;

constexpr Day at_last{1000000};

struct ForwardWorld {
    std::vector<weather::SeasonWeather> seasons = testing::springs(2001, 14);
    Station station{1, "Larkfold", {100}, {}, orchard_latitude};
    Orchard orchard;

    ForwardWorld() {
        const auto curves = testing::curves_of_springs(seasons);
        for (const auto& [name, need, species] : {std::tuple{"Apple A", 5800.0, "Malus domestica"},
                                                  std::tuple{"Apple B", 6600.0, "Malus domestica"},
                                                  std::tuple{"Pear A", 4600.0, "Pyrus communis"}}) {
            auto accession = testing::apple(name);
            accession.species = species;
            orchard.accessions.push_back(accession);
            for (const auto& [key, season] : curves) {
                observe_spring(name, key.season, true_bloom(season, need), season, usual_ladder(species));
            }
        }
    }

    void observe_spring(const std::string& accession, Season season, double full, const SeasonCurves& curves,
                        const StageLadder& ladder) {
        observe(accession, season, first_bloom, ladder_day(curves, full, ladder.first));
        observe(accession, season, full_bloom, full);
        observe(accession, season, bloom_end, ladder_day(curves, full, ladder.end));
    }

    void observe(const std::string& accession, Season season, Bbch stage, double day) {
        BloomObservation seen;
        seen.fid = static_cast<std::int64_t>(orchard.bloom_observations.size());
        seen.accession = accession;
        seen.observed_on = anchor_of(season, Hemisphere::north) + static_cast<int>(std::round(day));
        seen.bbch = stage;
        orchard.bloom_observations.push_back(seen);
    }

    std::vector<ForwardCase> cases(ForwardRequest request = {
                                       {{3, 1}, {4, 15}}, 2010, {BloomMethod::averaged}}) const {
        return forward_cases({orchard, station, orchard_latitude, at_last, seasons}, request);
    }
};

std::vector<double> errors_in(const std::vector<ForwardCase>& cases, int year) {
    std::vector<double> errors;
    for (const auto& scored : cases) {
        if (scored.season.year == year) {
            errors.push_back(scored.error);
        }
    }
    return errors;
}

TEST(Forward, EveryStageOfEverySpringIsScoredOnEveryDayOfIssue) {
    const auto cases = ForwardWorld().cases();
    EXPECT_EQ(cases.size(), 5U * 3U * 3U * 2U);  // springs, accessions, stages, days
    for (const auto& scored : cases) {
        EXPECT_LT(std::abs(scored.error), 25);
        EXPECT_GE(scored.crps, 0);
        EXPECT_TRUE(scored.length_error);
    }
}

TEST(Forward, LaterSpringsTeachNothing) {
    ForwardWorld world;
    const auto before = errors_in(world.cases(), 2010);
    for (auto& seen : world.orchard.bloom_observations) {
        if (seen.observed_on > make_day({2010, 12, 31}).value()) {
            seen.observed_on = seen.observed_on + 20;
        }
    }
    EXPECT_EQ(errors_in(world.cases(), 2010), before);
}

TEST(Forward, TheWeatherAfterTheDayOfIssueIsHidden) {
    ForwardWorld world;
    const ForwardRequest early{{{3, 1}}, 2014, {BloomMethod::averaged}};
    const auto before = errors_in(world.cases(early), 2014);
    auto& last = world.seasons.back();
    for (std::size_t i = 60 - season_first; i < last.days.size(); ++i) {
        last.days[i].t_min = last.days[i].t_min + CelsiusStep{6};
        last.days[i].t_max = last.days[i].t_max + CelsiusStep{6};
    }
    EXPECT_EQ(errors_in(world.cases(early), 2014), before);
}

TEST(Forward, AMethodKnowsMoreTheLaterTheDay) {
    const auto scores = forward_scores(ForwardWorld().cases());
    const auto rmse = [&](DayOfYear issued) {
        return std::ranges::find_if(scores,
                                    [&](const ForwardScore& score) {
                                        return score.accession.empty() && score.stage == full_bloom &&
                                               score.issued == issued;
                                    })
            ->rmse;
    };
    EXPECT_LT(rmse({4, 15}), rmse({3, 1}));
}

TEST(Forward, AnAccessionWithoutEarlierObservationsIsForecastByItsKind) {
    ForwardWorld world;
    auto& all = world.orchard.bloom_observations;
    std::erase_if(all, [](const BloomObservation& seen) {
        return seen.accession == "Apple B" && seen.observed_on < make_day({2014, 1, 1}).value();
    });
    const auto cases = world.cases({{{4, 15}}, 2014, {BloomMethod::averaged}});
    const auto borrowed = std::ranges::find(cases, "Apple B", &ForwardCase::accession);
    ASSERT_NE(borrowed, cases.end());
    EXPECT_LT(std::abs(borrowed->error), 15);
}

TEST(Forward, WithoutAFirstSpringFiveTeachBefore) {
    int first = 9999;
    for (const auto& scored : ForwardWorld().cases({{{3, 1}}, {}, {BloomMethod::mean_day}})) {
        first = std::min(first, scored.season.year);
    }
    EXPECT_EQ(first, 2006);
}

TEST(Forward, CanBeStopped) {
    const ForwardWorld world;
    EXPECT_THROW(
        forward_cases({world.orchard, world.station, orchard_latitude, at_last, world.seasons},
                      {{{3, 1}}, 2010, {BloomMethod::mean_day}}, [](double done) { return done < 0.5; }),
        Error);
}

ForwardCase made_case(const std::string& accession, const std::string& species, int year, double error,
                      double place) {
    ForwardCase made;
    made.stage = full_bloom;
    made.accession = accession;
    made.species = species;
    made.season = {year};
    made.error = error;
    made.place = place;
    made.inside = std::abs(error) < 3;
    made.length_error = error / 2;
    return made;
}

TEST(ForwardScores, AreGivenForEachAccessionEachSpeciesAndAll) {
    const std::vector cases{made_case("Apple A", "Malus domestica", 2001, 3, 0.05),
                            made_case("Apple B", "Malus domestica", 2001, -1, 0.55),
                            made_case("Pear A", "Pyrus communis", 2002, 2, 1.0)};
    const auto scores = forward_scores(cases);
    EXPECT_EQ(scores.size(), 6U);
    const auto all = std::ranges::find(scores, "", &ForwardScore::accession);
    ASSERT_NE(all, scores.end());
    EXPECT_EQ(all->n, 3);
    EXPECT_EQ(all->springs, 2);
    EXPECT_NEAR(all->rmse, std::sqrt(14.0 / 3), 1e-12);
    EXPECT_NEAR(all->mae, 2, 1e-12);
    EXPECT_NEAR(all->bias, 4.0 / 3, 1e-12);
    EXPECT_NEAR(all->inside_80, 2.0 / 3, 1e-12);
    EXPECT_NEAR(*all->length_bias, 2.0 / 3, 1e-12);
    EXPECT_EQ(all->places[0], 1);
    EXPECT_EQ(all->places[5], 1);
    EXPECT_EQ(all->places[9], 1);
    const auto apples = std::ranges::find(scores, "Malus domestica", &ForwardScore::accession);
    ASSERT_NE(apples, scores.end());
    EXPECT_TRUE(apples->of_species);
    EXPECT_EQ(apples->n, 2);
}

}  // namespace
}  // namespace pipward::bloom
