// SPDX-License-Identifier: MIT
#include "pipward/bloom/skill.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::curves_of_springs;
using testing::orchard_latitude;
using testing::springs;
using testing::true_observations;

struct SkillWorld {
    std::vector<weather::SeasonWeather> seasons = springs(2011, 10);
    CurvesOf curves = curves_of_springs(seasons);
    std::vector<Observation> observations = true_observations(curves, {5800, 6600, 7400});

    std::vector<SkillScore> scores(const SkillRequest& request,
                                   const std::function<bool(double)>& progress = {}) const {
        return score_methods(observations, curves, seasons, orchard_latitude, {}, request, progress);
    }
};

const SkillScore& score_of(const std::vector<SkillScore>& scores, BloomMethod method,
                           std::optional<int> lead = {}, std::optional<int> training = {},
                           const std::string& accession = "") {
    const auto found = std::ranges::find_if(scores, [&](const SkillScore& s) {
        return s.method == method && s.lead_days == lead && s.training_seasons == training &&
               s.accession == accession;
    });
    EXPECT_NE(found, scores.end());
    return *found;
}

TEST(Skill, ScoresEveryMethodOnEverySeason) {
    SkillWorld world;
    const auto scores = world.scores({});
    ASSERT_EQ(scores.size(), 4U);
    for (const auto& score : scores) {
        EXPECT_EQ(score.seasons, 10);
        EXPECT_EQ(score.observations, 30);
        EXPECT_GE(score.rmse, score.mae);
        EXPECT_GE(score.mae, std::abs(score.bias));
        EXPECT_LE(score.within_3_days, score.within_5_days);
    }
}

TEST(Skill, ModelsThatFeelTheWeatherBeatTheMeanDay) {
    SkillWorld world;
    const auto scores = world.scores({});
    EXPECT_LT(score_of(scores, BloomMethod::averaged).rmse,
              0.6 * score_of(scores, BloomMethod::mean_day).rmse);
}

TEST(Skill, ALongerLeadIsHarderAndAtLengthNoBetterThanTheMeanDay) {
    SkillWorld world;
    const auto scores = world.scores({{10, 90}, {}, false});
    const double known = score_of(scores, BloomMethod::averaged).rmse;
    const double near = score_of(scores, BloomMethod::averaged, 10).rmse;
    const double far = score_of(scores, BloomMethod::averaged, 90).rmse;
    EXPECT_LT(known, far);
    EXPECT_LT(near, far);
    EXPECT_DOUBLE_EQ(score_of(scores, BloomMethod::mean_day).rmse,
                     score_of(scores, BloomMethod::mean_day, 90).rmse);
}

TEST(Skill, WindowsHoldAboutAsManyDatesAsTheySay) {
    SkillWorld world;
    for (const auto& score : world.scores({{10, 30}, {}, false})) {
        if (score.method == BloomMethod::averaged) {
            EXPECT_GE(score.coverage_80, 0.7);
        }
    }
}

TEST(Skill, FewerTrainingSeasonsForecastWorse) {
    SkillWorld world;
    const auto scores = world.scores({{}, 3, false});
    const auto& few = score_of(scores, BloomMethod::mean_day, {}, 3);
    EXPECT_GT(few.rmse, score_of(scores, BloomMethod::mean_day).rmse);
    EXPECT_GT(few.observations, 500);
}

TEST(Skill, IsTheSameEveryTime) {
    SkillWorld world;
    const SkillRequest request{{10}, 4, true};
    const auto once = world.scores(request);
    std::ranges::reverse(world.observations);
    const auto again = world.scores(request);
    ASSERT_EQ(once.size(), again.size());
    for (std::size_t i = 0; i < once.size(); ++i) {
        EXPECT_EQ(once[i].rmse, again[i].rmse);
        EXPECT_EQ(once[i].coverage_80, again[i].coverage_80);
        EXPECT_EQ(once[i].accession, again[i].accession);
    }
}

TEST(Skill, ScoresEachAccessionWhenAsked) {
    SkillWorld world;
    const auto scores = world.scores({{}, {}, true});
    EXPECT_EQ(scores.size(), 16U);
    EXPECT_EQ(score_of(scores, BloomMethod::averaged, {}, {}, "Apple B").observations, 10);
}

TEST(Skill, AnAccessionIsScoredOnlyWhereItsOtherSeasonsTellOfIt) {
    SkillWorld world;
    world.observations.push_back(testing::observed("Once", 2015, 110));
    EXPECT_EQ(score_of(world.scores({}), BloomMethod::averaged).observations, 30);
}

TEST(Skill, TheGainIsPairedSeasonBySeason) {
    SkillWorld world;
    const auto scores = world.scores({});
    const auto& averaged = score_of(scores, BloomMethod::averaged);
    const auto& mean_day = score_of(scores, BloomMethod::mean_day);
    EXPECT_EQ(averaged.gain, 0);
    EXPECT_NEAR(mean_day.gain, averaged.rmse * averaged.rmse - mean_day.rmse * mean_day.rmse, 1e-9);
    EXPECT_GT(mean_day.gain_error, 0);
}

TEST(Skill, RivalsThatCouldNotBeChosenAreNotFitted) {
    SkillWorld world;
    SkillRequest request;
    request.only_to_choose = true;
    std::erase_if(world.observations, [](const Observation& o) { return o.season.year > 2016; });
    EXPECT_EQ(world.scores(request).size(), 2U);
}

TEST(Skill, OneSeasonCannotBeLeftOut) {
    SkillWorld world;
    world.observations.resize(3);
    EXPECT_TRUE(world.scores({}).empty());
    EXPECT_EQ(best_method({}), BloomMethod::averaged);
}

TEST(Skill, CanBeStopped) {
    SkillWorld world;
    double last = 0;
    EXPECT_THROW(world.scores({},
                              [&](double done) {
                                  EXPECT_GE(done, last);
                                  last = done;
                                  return done < 0.5;
                              }),
                 Error);
    EXPECT_GE(last, 0.5);
    EXPECT_LT(last, 0.6);
}

SkillScore made_score(BloomMethod method, double rmse, int seasons = 10) {
    SkillScore score;
    score.gain = 3;
    score.gain_error = 1;
    score.method = method;
    score.rmse = rmse;
    score.seasons = seasons;
    return score;
}

TEST(BestMethod, IsARivalThatEarnedItsPlace) {
    const std::vector<SkillScore> scores{made_score(BloomMethod::averaged, 3.0),
                                         made_score(BloomMethod::degree_days, 2.5)};
    EXPECT_EQ(best_method(scores), BloomMethod::degree_days);
}

TEST(BestMethod, IsTheAveragedOneAtANearTieOrWithFewSeasons) {
    const std::vector<SkillScore> tie{made_score(BloomMethod::degree_days, 2.96),
                                      made_score(BloomMethod::averaged, 3.0)};
    EXPECT_EQ(best_method(tie), BloomMethod::averaged);
    auto lucky = made_score(BloomMethod::degree_days, 2.0);
    lucky.gain_error = 2;
    EXPECT_EQ(best_method(std::vector{lucky, made_score(BloomMethod::averaged, 3.0)}), BloomMethod::averaged);
    const std::vector<SkillScore> few{made_score(BloomMethod::degree_days, 1.0, 9),
                                      made_score(BloomMethod::averaged, 3.0, 9)};
    EXPECT_EQ(best_method(few), BloomMethod::averaged);
}

TEST(BestMethod, LooksOnlyAtKnownWeatherAndAllAccessions) {
    auto lead = made_score(BloomMethod::mean_day, 0.1);
    lead.lead_days = 30;
    auto one = made_score(BloomMethod::mean_day, 0.1);
    one.accession = "Apple A";
    auto drawn = made_score(BloomMethod::mean_day, 0.1);
    drawn.training_seasons = 3;
    const std::vector<SkillScore> scores{lead, one, drawn, made_score(BloomMethod::averaged, 3.0),
                                         made_score(BloomMethod::chill_then_heat, 2.0)};
    EXPECT_EQ(best_method(scores), BloomMethod::chill_then_heat);
}

}  // namespace
}  // namespace pipward::bloom
