// SPDX-License-Identifier: MIT
#include "pipward/bloom/model.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "pipward/bloom/detail/row_fit.h"
#include "springs.h"
#include "testing.h"

namespace pipward::bloom {
namespace {

using testing::apple;
using testing::curves_of_springs;
using testing::observed;
using testing::orchard_latitude;
using testing::springs;
using testing::true_bloom;
using testing::true_observations;

const std::vector<double> needs{5800, 6600, 7400};

struct ModelWorld {
    std::vector<weather::SeasonWeather> seasons = springs(2011, 12);
    CurvesOf curves = curves_of_springs(seasons);
    std::vector<Observation> observations = true_observations(curves, needs);

    const SeasonCurves& season(int year) const { return curves.at({{year}, 0.0}); }
    BloomModel fitted(const std::vector<Accession>& accessions = {}) const {
        return fit(BloomMethod::averaged, observations, curves, accessions);
    }
};

double day_in(const ModelWorld& world, const BloomModel& model, const std::string& accession, int year) {
    return predict(model, model.needs.at(accession), world.season(year), {});
}

TEST(Fit, FindsTheBloomThatMadeTheObservations) {
    ModelWorld world;
    const auto unseen = curves_of_springs(springs(2030, 10));
    const auto model = world.fitted();
    double missed = 0;
    for (const auto& [key, curves] : unseen) {
        for (std::size_t i = 0; i < needs.size(); ++i) {
            const auto name = std::string("Apple ") + static_cast<char>('A' + i);
            missed +=
                std::abs(predict(model, model.needs.at(name), curves, {}) - true_bloom(curves, needs[i]));
        }
    }
    EXPECT_LT(missed / 30, 1.5);
}

TEST(Fit, WeightsAreSharesAndNeedsAreCounted) {
    ModelWorld world;
    for (const auto method : bloom_methods()) {
        const auto model = fit(method, world.observations, world.curves, {});
        EXPECT_NEAR(std::accumulate(model.weights.begin(), model.weights.end(), 0.0), 1, 1e-12);
        EXPECT_EQ(model.needs.size(), 3U);
        EXPECT_EQ(model.needs.at("Apple B").observations, 12);
        EXPECT_EQ(model.needs.at("Apple B").seasons, 12);
        EXPECT_EQ(model.needs.at("Apple B").source, NeedSource::own_observations);
        EXPECT_GT(model.season_sd_days, 0);
        EXPECT_GT(model.own_sd_days, 0);
    }
}

TEST(Fit, ChillThenHeatIsOneStructure) {
    ModelWorld world;
    const auto model = fit(BloomMethod::chill_then_heat, world.observations, world.curves, {});
    EXPECT_EQ(std::ranges::count(model.weights, 1.0), 1);
    EXPECT_EQ(std::ranges::count(model.weights, 0.0), 23);
}

TEST(Fit, TheMeanDayOfOneAccessionIsItsMeanDay) {
    ModelWorld world;
    const std::vector<Observation> few{observed("Apple A", 2011, 110), observed("Apple A", 2012, 114),
                                       observed("Apple A", 2013, 112)};
    const auto model = fit(BloomMethod::mean_day, few, world.curves, {});
    EXPECT_NEAR(predict(model, model.needs.at("Apple A"), world.season(2015), {}), 112, 1e-9);
}

TEST(Fit, OneNoteMovesTheNeedTowardIt) {
    ModelWorld world;
    const double before = day_in(world, world.fitted(), "Apple B", 2015);
    auto later = world.observations;
    later.push_back(observed("Apple B", 2022, true_bloom(world.season(2022), needs[1]) + 4, 0.5));
    const auto model = fit(BloomMethod::averaged, later, world.curves, {});
    EXPECT_GT(predict(model, model.needs.at("Apple B"), world.season(2015), {}), before);
}

TEST(Fit, TheOrderOfObservationsAndAccessionsIsOfNoEffect) {
    ModelWorld world;
    std::vector<Accession> accessions{apple("Apple A"), apple("New", "Apple A", "Apple C"),
                                      apple("Newer", "New"), apple("Stranger")};
    const auto model = world.fitted(accessions);
    std::ranges::reverse(world.observations);
    std::ranges::rotate(world.observations, world.observations.begin() + 7);
    std::ranges::reverse(accessions);
    const auto again = world.fitted(accessions);
    EXPECT_EQ(model.weights, again.weights);
    ASSERT_EQ(model.needs.size(), again.needs.size());
    for (const auto& [name, need] : model.needs) {
        EXPECT_EQ(need.amount, again.needs.at(name).amount) << name;
        EXPECT_EQ(need.sd_days, again.needs.at(name).sd_days) << name;
    }
    EXPECT_EQ(model.findings, again.findings);
}

TEST(Fit, ASlipOfThePenIsFlaggedAndBarelyMovesTheAnswer) {
    ModelWorld world;
    const auto honest = world.fitted();
    auto& slip = world.observations[4];
    const auto name = slip.accession;
    const auto row = "fid " + std::to_string(slip.observations.front());
    slip.full_bloom += 20;
    slip.observed_on[0] = slip.observed_on[0] + 20;
    const auto model = world.fitted();
    for (const int year : {2012, 2016, 2020}) {
        EXPECT_NEAR(day_in(world, model, name, year), day_in(world, honest, name, year), 0.5);
    }
    const auto flagged = std::ranges::count_if(model.findings, [&](const Finding& f) {
        return f.level == Level::warning && f.table == "bloom_observation" && f.row == row &&
               f.field == "observed_on" && f.value == to_iso(slip.observed_on[0]) && !f.remedy.empty();
    });
    EXPECT_EQ(flagged, 1);
    EXPECT_TRUE(
        std::ranges::none_of(honest.findings, [](const Finding& f) { return f.level == Level::warning; }));
    EXPECT_LT(model.own_sd_days, honest.own_sd_days + 1);
}

TEST(Fit, ASpringThatIsOddForTheWholeOrchardIsNoSlip) {
    ModelWorld world;
    for (auto& observation : world.observations) {
        observation.full_bloom += observation.season.year == 2016 ? 9 : 0;
    }
    const auto model = world.fitted();
    EXPECT_TRUE(
        std::ranges::none_of(model.findings, [](const Finding& f) { return f.field == "observed_on"; }));
    EXPECT_GT(model.season_sd_days, 1.5);
}

TEST(Fit, OneNoteLeavesThePriorAsItWas) {
    ModelWorld world;
    const auto model =
        fit(BloomMethod::averaged, std::vector{observed("Apple A", 2015, 124)}, world.curves, {});
    const auto structures = detail::structures_of(BloomMethod::averaged);
    for (std::size_t j = 1; j < structures.size(); ++j) {
        const double expected = std::exp(-(structures[j].penalty - structures[0].penalty) / 2);
        EXPECT_NEAR(model.weights[j] / model.weights[0], expected, 1e-6);
    }
}

TEST(Fit, TwentyAccessionsOfOneSpringAreNotTwentySprings) {
    ModelWorld world;
    std::vector<Observation> one;
    std::vector<Observation> twenty;
    for (int year = 2011; year < 2023; ++year) {
        const double day = std::round(true_bloom(world.season(year), needs[1]));
        one.push_back(observed("Apple A", year, day));
        for (int i = 0; i < 20; ++i) {
            twenty.push_back(observed(std::string("Apple ") + static_cast<char>('A' + i), year, day));
        }
    }
    const auto undecided = [&](const std::vector<Observation>& remarks) {
        const auto weights = fit(BloomMethod::averaged, remarks, world.curves, {}).weights;
        return 1 / std::inner_product(weights.begin(), weights.end(), weights.begin(), 0.0);
    };
    EXPECT_GT(undecided(twenty), 0.7 * undecided(one));
}

TEST(Fit, DeparturesAreThoseOfARowLeftOut) {
    ModelWorld world;
    const std::vector<double> days{100, 102, 101, 101.5};
    std::vector<Observation> remarks;
    for (int i = 0; i < 4; ++i) {
        remarks.push_back(observed("Apple A", 2011 + i, days[i]));
    }
    const auto table = detail::fit_table(BloomMethod::mean_day, remarks, world.curves);
    const auto fitted = detail::fit_rows(table, {0, 1, 2, 3});
    for (int i = 0; i < 4; ++i) {
        const double others = (404.5 - days[i]) / 3;
        EXPECT_NEAR(fitted.departures[i], others - days[i], 1e-9);
    }
}

TEST(Fit, WithoutObservationsThereIsNothingToFit) {
    ModelWorld world;
    try {
        fit(BloomMethod::averaged, {}, world.curves, {});
        FAIL() << "expected an error";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        EXPECT_EQ(error.findings().front().table, "bloom_observation");
    }
}

TEST(Fit, FewSeasonsAreSaidAndKeepTheSpreadWide) {
    ModelWorld world;
    const std::vector<Observation> few{world.observations[0], world.observations[3]};
    const auto model = fit(BloomMethod::averaged, few, world.curves, {});
    EXPECT_TRUE(std::ranges::any_of(model.findings, [](const Finding& f) { return f.value == "2 seasons"; }));
    EXPECT_GT(std::hypot(model.season_sd_days, model.own_sd_days), 2);
}

TEST(Fit, AnOddWinterWithoutChillDoesNotBreakIt) {
    ModelWorld world;
    auto& warm = world.curves.at({{2015}, 0.0});
    for (double& chill : warm.chill) {
        chill = std::min(chill, 25.0);
    }
    const auto model = world.fitted();
    const double day = day_in(world, model, "Apple A", 2015);
    EXPECT_GT(day, 60);
    EXPECT_LT(day, 160);
}

TEST(Predict, AWarmerSpringBloomsEarlier) {
    ModelWorld world;
    const auto model = world.fitted();
    double before = 1e9;
    for (double warmer = -2; warmer <= 2; warmer += 0.5) {
        const auto weather = testing::spring_weather(2025, warmer);
        const auto curves = season_curves(weather.days, weather.first, orchard_latitude, {});
        const double day = predict(model, model.needs.at("Apple B"), curves, {});
        EXPECT_LT(day, before);
        before = day;
    }
}

TEST(Predict, ATreeHigherUpIsLateByAsManyDaysAsPublished) {
    ModelWorld world;
    const auto range = testing::regression_rows("bloom-altitude.txt").front();
    const std::vector<double> offsets{0.0, -100 * lapse_per_metre};
    const auto curves = curves_of_springs(world.seasons, orchard_latitude, offsets);
    for (const auto method : bloom_methods()) {
        const auto model = fit(method, world.observations, world.curves, {});
        const auto& need = model.needs.at("Apple B");
        double later = 0;
        for (const auto& [key, season] : curves) {
            const double day = predict(model, need, season, {key.offset_degrees});
            later += key.offset_degrees < 0 ? day : -day;
        }
        later /= static_cast<double>(world.seasons.size());
        EXPECT_GT(later, std::stod(range[0])) << to_text(method);
        EXPECT_LT(later, std::stod(range[1])) << to_text(method);
    }
}

TEST(Borrow, AnAccessionWithoutObservationsStandsBetweenItsParents) {
    ModelWorld world;
    const auto model = world.fitted({apple("Seedling", "Apple A", "Apple C")});
    EXPECT_EQ(model.needs.at("Seedling").source, NeedSource::mid_parent);
    EXPECT_EQ(model.needs.at("Seedling").observations, 0);
    for (const int year : {2012, 2018}) {
        const double day = day_in(world, model, "Seedling", year);
        EXPECT_GT(day, day_in(world, model, "Apple A", year));
        EXPECT_LT(day, day_in(world, model, "Apple C", year));
    }
}

TEST(Borrow, TheLessIsKnownTheWiderTheSpread) {
    ModelWorld world;
    const auto model =
        world.fitted({apple("Both", "Apple A", "Apple C"), apple("One", "", "Apple C"),
                      apple("Grandchild", "Both", "One"), apple("None"), apple("Far", "unheard of")});
    const auto sd = [&](const std::string& name) { return model.needs.at(name).sd_days; };
    EXPECT_LT(sd("Apple A"), sd("Both"));
    EXPECT_LT(sd("Both"), sd("One"));
    EXPECT_LT(sd("Both"), sd("Grandchild"));
    EXPECT_LT(sd("One"), sd("None"));
    EXPECT_GE(sd("None"), 3.5);
    EXPECT_EQ(model.needs.at("One").source, NeedSource::one_parent);
    EXPECT_EQ(model.needs.at("Grandchild").source, NeedSource::mid_parent);
    EXPECT_EQ(model.needs.at("None").source, NeedSource::orchard_mean);
    EXPECT_EQ(model.needs.at("Far").source, NeedSource::orchard_mean);
}

TEST(Borrow, AnAccessionWithoutObservationsLeansOnItsOwnSpecies) {
    ModelWorld world;
    auto pear = apple("Pear A");
    auto unnoted = apple("Pear B");
    auto quince = apple("Quince");
    pear.species = "Pyrus communis";
    unnoted.species = "Pyrus communis";
    quince.species = "Cydonia oblonga";
    for (int year = 2011; year < 2023; ++year) {
        world.observations.push_back(
            observed("Pear A", year, std::round(true_bloom(world.season(year), 4000))));
    }
    std::vector<Accession> accessions{pear, unnoted, quince};
    for (const auto* name : {"Apple A", "Apple B", "Apple C", "Apple D"}) {
        accessions.push_back(apple(name));
        accessions.back().species = "Malus domestica";
    }
    const auto model = world.fitted(accessions);
    EXPECT_NEAR(day_in(world, model, "Pear B", 2015), day_in(world, model, "Pear A", 2015), 1.5);
    EXPECT_NEAR(day_in(world, model, "Apple D", 2015), day_in(world, model, "Apple B", 2015), 3);
    EXPECT_GT(model.needs.at("Quince").sd_days, 1.5 * model.needs.at("Pear B").sd_days);
}

TEST(Fit, TheRecentMeanForgets) {
    ModelWorld world;
    std::vector<Observation> observations;
    const auto seasons = springs(1990, 30);
    const auto curves = curves_of_springs(seasons);
    for (int year = 1990; year < 2020; ++year) {
        observations.push_back(observed("Apple A", year, year < 2005 ? 130 : 110));
    }
    const auto recent = fit(BloomMethod::recent_mean, observations, curves, {});
    const auto all = fit(BloomMethod::mean_day, observations, curves, {});
    EXPECT_NEAR(predict(recent, recent.needs.at("Apple A"), world.season(2015), {}), 110, 1e-9);
    EXPECT_NEAR(predict(all, all.needs.at("Apple A"), world.season(2015), {}), 120, 1e-9);
}

TEST(Borrow, APedigreeInACircleEndsAtTheOrchardsMean) {
    ModelWorld world;
    const auto model = world.fitted({apple("Snake", "Tail", ""), apple("Tail", "Snake", "Apple A"),
                                     apple("Self", "Self", "Self"), apple("After", "Snake", "Apple A")});
    EXPECT_EQ(model.needs.at("Snake").source, NeedSource::orchard_mean);
    EXPECT_EQ(model.needs.at("Tail").source, NeedSource::one_parent);
    EXPECT_EQ(model.needs.at("Self").source, NeedSource::orchard_mean);
    EXPECT_EQ(model.needs.at("After").source, NeedSource::one_parent);
}

TEST(Borrow, BorrowedNeedsAreSaidOnceForEachKind) {
    ModelWorld world;
    std::vector<Accession> seedlings;
    for (int i = 0; i < 40; ++i) {
        seedlings.push_back(apple("Seedling " + std::to_string(i), "Apple A", "Apple C"));
    }
    const auto model = world.fitted(seedlings);
    EXPECT_EQ(std::ranges::count(model.findings, "accession", &Finding::table), 1);
}

TEST(Words, EveryMethodAndSourceHasItsWord) {
    EXPECT_EQ(to_text(BloomMethod::averaged), "averaged");
    EXPECT_EQ(to_text(BloomMethod::mean_day), "mean_day");
    EXPECT_EQ(to_text(BloomMethod::degree_days), "degree_days");
    EXPECT_EQ(to_text(BloomMethod::chill_then_heat), "chill_then_heat");
    EXPECT_EQ(to_text(BloomMethod::recent_mean), "recent_mean");
    EXPECT_EQ(bloom_methods().size(), 5U);
    EXPECT_EQ(to_text(NeedSource::own_observations), "own_observations");
    EXPECT_EQ(to_text(NeedSource::orchard_mean), "orchard_mean");
}

}  // namespace
}  // namespace pipward::bloom
