// SPDX-License-Identifier: MIT
#include "pipward/bloom/forecast.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::apple;
using testing::curves_of_springs;
using testing::orchard_latitude;
using testing::spring_weather;
using testing::springs;
using testing::true_bloom;
using testing::true_observations;

const Station station{1, "Larkfold", {100}, {}, orchard_latitude};
constexpr int this_year = 2026;

Day season_date(int season_day) {
    return anchor_of({this_year}, Hemisphere::north) + season_day;
}

Tree tree(const std::string& label, const std::string& accession, double height = 100) {
    Tree planted;
    planted.label = label;
    planted.accession = accession;
    planted.elevation = Metres{height};
    return planted;
}

struct ForecastWorld {
    std::vector<weather::SeasonWeather> past = springs(2011, 12);
    CurvesOf curves = curves_of_springs(past);
    std::vector<Accession> accessions{apple("Apple A"), apple("Apple B"), apple("Apple C"),
                                      apple("Seedling", "Apple A", "Apple C"), apple("Stranger")};
    BloomModel model =
        fit(BloomMethod::averaged, true_observations(curves, {5800, 6600, 7400}), curves, accessions);
    std::vector<Tree> trees{tree("T1", "Apple A"), tree("T2", "Apple B"),  tree("T3", "Apple B", 200),
                            tree("T4", "Apple C"), tree("T5", "Seedling"), tree("T6", "Apple B")};

    weather::CurrentSeason current(int as_of, int forecast_days = 0) const {
        const int observed = as_of - season_first + 1;
        return {spring_weather(this_year, 0, Hemisphere::north, observed + forecast_days), observed, {}};
    }
    BloomForecast forecast(int as_of, std::vector<StageSeen> seen = {}, int forecast_days = 0) const {
        return forecast_bloom(model, {current(as_of, forecast_days), season_date(as_of), past,
                                      orchard_latitude, station, trees, accessions, seen});
    }
};

StageSeen seen(const std::string& accession, int season_day, int bbch) {
    StageSeen stage;
    stage.fid = season_day;
    stage.accession = accession;
    stage.season = {this_year};
    stage.observed_on = season_date(season_day);
    stage.stage = {bbch};
    stage.place = *ladder_place({bbch}, {});
    return stage;
}

const BloomWindow& window(const BloomForecast& forecast, const std::string& accession) {
    return forecast.windows[forecast.of_accession.at(accession)];
}

int width(const BloomWindow& window) {
    return window.full.p90 - window.full.p10;
}

TEST(ResidualNodes, AreAStandardSymmetricSpread) {
    const auto nodes = residual_nodes();
    const auto n = static_cast<double>(nodes.size());
    double sum = 0;
    double squares = 0;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        sum += nodes[i];
        squares += nodes[i] * nodes[i];
        EXPECT_NEAR(nodes[i], -nodes[nodes.size() - 1 - i], 1e-12);
        EXPECT_TRUE(i == 0 || nodes[i] > nodes[i - 1]);
    }
    EXPECT_NEAR(sum / n, 0, 1e-12);
    EXPECT_NEAR(squares / n, 1, 1e-12);
}

// Student's t with 4 degrees of freedom, its density summed from the middle out.
TEST(ResidualNodes, StandWhereStudentsTPutsThem) {
    const auto nodes = residual_nodes();
    const auto quantile = [](double probability) {
        double mass = 0.5;
        double t = 0;
        constexpr double step = 1e-5;
        for (; mass < probability; t += step) {
            mass += step * 0.375 * std::pow(1 + (t + step / 2) * (t + step / 2) / 4, -2.5);
        }
        return t;
    };
    const auto n = static_cast<double>(nodes.size());
    const double outer = quantile((n - 0.5) / n);
    const double next = quantile((n - 1.5) / n);
    EXPECT_NEAR(nodes[nodes.size() - 1] / nodes[nodes.size() - 2], outer / next, 1e-3);
}

TEST(Forecast, QuantilesAndStagesStandInOrder) {
    ForecastWorld world;
    for (const int as_of : {-60, 20, 80, 110, 140}) {
        for (const auto& one : world.forecast(as_of).windows) {
            for (const auto& days : {one.first, one.full, one.end}) {
                EXPECT_LE(days.p10, days.p50);
                EXPECT_LE(days.p50, days.p90);
            }
            EXPECT_LT(one.first.p50, one.full.p50);
            EXPECT_LT(one.full.p50, one.end.p50);
            EXPECT_EQ(one.full_bloom.size(), 2 * world.past.size());
        }
    }
}

TEST(Forecast, TheLaterInTheSpringTheNarrower) {
    ForecastWorld world;
    int before = 1000;
    for (const int as_of : {-30, 45, 75, 100}) {
        const int now = width(window(world.forecast(as_of), "Apple B"));
        EXPECT_LE(now, before) << as_of;
        before = now;
    }
    EXPECT_LT(before, width(window(world.forecast(-30), "Apple B")));
}

TEST(Forecast, MostSpringsBloomInsideTheirWindow) {
    ForecastWorld world;
    int inside = 0;
    constexpr int count = 40;
    for (int year = 2026; year < 2026 + count; ++year) {
        const auto whole = spring_weather(year);
        const auto truth = season_curves(whole.days, whole.first, orchard_latitude, {});
        weather::CurrentSeason current{
            spring_weather(year, 0, Hemisphere::north, 85 - season_first + 1), 0, {}};
        const Day anchor = anchor_of({year}, Hemisphere::north);
        const auto forecast = forecast_bloom(world.model, {current, anchor + 85, world.past, orchard_latitude,
                                                           station, world.trees, world.accessions});
        const auto& one = window(forecast, "Apple B");
        const Day bloom = forecast.day_of(true_bloom(truth, 6600));
        inside += one.full.p10 <= bloom && bloom <= one.full.p90 ? 1 : 0;
    }
    EXPECT_GE(inside, count * 65 / 100);
    EXPECT_LE(inside, count * 95 / 100);
}

TEST(Forecast, ForecastDaysCountAsWeather) {
    ForecastWorld world;
    const auto without = world.forecast(75);
    const auto with = world.forecast(75, {}, 15);
    const auto spread = [](const BloomWindow& one) {
        const auto [least, most] = std::ranges::minmax_element(one.full_bloom);
        return *most - *least;
    };
    EXPECT_LT(spread(window(with, "Apple B")), spread(window(without, "Apple B")));
}

TEST(Forecast, WhereLessIsKnownTheWindowIsWider) {
    ForecastWorld world;
    const auto forecast = world.forecast(85);
    EXPECT_GT(width(window(forecast, "Seedling")), width(window(forecast, "Apple B")));
    EXPECT_GT(width(window(forecast, "Stranger")), width(window(forecast, "Seedling")));
    EXPECT_FALSE(window(forecast, "Stranger").warnings.empty());
    EXPECT_TRUE(window(forecast, "Apple B").warnings.empty());
}

TEST(Forecast, ATreeHigherUpBloomsLater) {
    ForecastWorld world;
    const auto forecast = world.forecast(60);
    const auto& low = forecast.windows[forecast.trees[1].window];
    const auto& high = forecast.windows[forecast.trees[2].window];
    EXPECT_EQ(low.accession, high.accession);
    EXPECT_LT(high.offset, low.offset);
    EXPECT_GT(high.full.p50, low.full.p50);
    EXPECT_EQ(forecast.curves.size(), 2U);
}

TEST(Forecast, RemovedTreesAreLeftOutAndTreelessAccessionsKept) {
    ForecastWorld world;
    world.trees[3].removed_on = season_date(50);
    EXPECT_EQ(world.forecast(49).trees.size(), 6U);
    const auto later = world.forecast(50);
    EXPECT_EQ(later.trees.size(), 5U);
    EXPECT_TRUE(later.of_accession.contains("Apple C"));
    EXPECT_TRUE(later.of_accession.contains("Stranger"));
}

TEST(Forecast, SameInputSameOutputInAnyOrder) {
    ForecastWorld world;
    const auto forecast = world.forecast(90, {seen("Apple A", 88, 57), seen("Apple B", 89, 56)});
    std::ranges::reverse(world.trees);
    std::ranges::reverse(world.accessions);
    std::ranges::reverse(world.past);
    const auto again = world.forecast(90, {seen("Apple B", 89, 56), seen("Apple A", 88, 57)});
    ASSERT_EQ(forecast.windows.size(), again.windows.size());
    for (std::size_t i = 0; i < forecast.windows.size(); ++i) {
        EXPECT_EQ(forecast.windows[i].accession, again.windows[i].accession);
        EXPECT_EQ(forecast.windows[i].full_bloom, again.windows[i].full_bloom);
        EXPECT_EQ(forecast.windows[i].season_sd_days, again.windows[i].season_sd_days);
    }
    EXPECT_EQ(forecast.of_accession, again.of_accession);
}

TEST(Forecast, ALateNoteMovesItsOwnAccessionMostAndTheOthersSome) {
    ForecastWorld world;
    const int as_of = 85;
    const auto before = world.forecast(as_of);
    const auto mean = [](const BloomWindow& one) {
        return std::accumulate(one.full_bloom.begin(), one.full_bloom.end(), 0.0) /
               static_cast<double>(one.full_bloom.size());
    };
    // Green bud only, at a time when the model has the flowers much farther on.
    const int late = static_cast<int>(mean(window(before, "Apple A"))) - 3;
    const auto after = world.forecast(std::max(as_of, late), {seen("Apple A", late, 55)});
    const auto plain = world.forecast(std::max(as_of, late));
    const double own = mean(window(after, "Apple A")) - mean(window(plain, "Apple A"));
    const double other = mean(window(after, "Apple B")) - mean(window(plain, "Apple B"));
    EXPECT_GT(own, 0.5);
    EXPECT_GT(other, 0.1);
    EXPECT_GT(own, other);
    EXPECT_LT(window(after, "Apple A").own_sd_days, window(plain, "Apple A").own_sd_days);
    EXPECT_LT(window(after, "Apple B").season_sd_days, window(plain, "Apple B").season_sd_days);
    EXPECT_EQ(window(after, "Apple A").observations_used, window(plain, "Apple A").observations_used + 1);
}

TEST(Forecast, FullBloomNotedYesterdayIsBelieved) {
    ForecastWorld world;
    const int model_day = window(world.forecast(120), "Apple B").full.p50 - season_date(0);
    const int observed = model_day + 3;
    const auto forecast = world.forecast(observed + 1, {seen("Apple B", observed, 65)});
    const auto& one = window(forecast, "Apple B");
    EXPECT_NEAR(one.full.p50 - season_date(0), observed, 1);
    EXPECT_LE(width(one), 4);
    EXPECT_GE(width(one), 1);  // a note is not a certainty either
}

TEST(Forecast, ObservationsOfOtherSeasonsAndOfTheFutureArePassedOver) {
    ForecastWorld world;
    auto other_year = seen("Apple A", 90, 57);
    other_year.season = {2020};
    auto unheard = seen("Nobody", 90, 57);
    const auto plain = world.forecast(95);
    const auto forecast = world.forecast(95, {other_year, unheard, seen("Apple A", 96, 65)});
    EXPECT_EQ(window(forecast, "Apple A").full_bloom, window(plain, "Apple A").full_bloom);
}

TEST(Forecast, PastItsDateWithoutANoteItStaysUnsureAndSaysSo) {
    ForecastWorld world;
    const auto forecast = world.forecast(150);
    EXPECT_GE(width(window(forecast, "Apple B")), 2);
    EXPECT_EQ(window(forecast, "Apple B").warnings.size(), 1U);
}

TEST(Forecast, WithoutAPastSeasonThereIsNoEnsemble) {
    ForecastWorld world;
    world.past.clear();
    EXPECT_THROW(world.forecast(90), Error);
}

TEST(Forecast, TheSouthMirrorsTheNorth) {
    ForecastWorld north;
    std::vector<weather::SeasonWeather> past = north.past;
    for (auto& season : past) {
        season.first = anchor_of(season.season, Hemisphere::south) + season_first;
    }
    const Latitude latitude{-orchard_latitude.degrees};
    const auto curves = curves_of_springs(past, latitude);
    auto observations = true_observations(north.curves, {5800, 6600, 7400});
    const auto model = fit(BloomMethod::averaged, observations, curves, north.accessions);
    auto current = north.current(80);
    current.weather.first = anchor_of({this_year}, Hemisphere::south) + season_first;
    const Day as_of = anchor_of({this_year}, Hemisphere::south) + 80;
    const auto there =
        forecast_bloom(model, {current, as_of, past, latitude, station, north.trees, north.accessions});
    const auto here = north.forecast(80);
    for (const auto& one : here.windows) {
        const auto& other = window(there, one.accession);
        const int north_day =
            window(here, one.accession).full.p50 - anchor_of({this_year}, Hemisphere::north);
        const int south_day = other.full.p50 - anchor_of({this_year}, Hemisphere::south);
        EXPECT_NEAR(north_day, south_day, 1) << one.accession;
    }
}

}  // namespace
}  // namespace pipward::bloom
