// SPDX-License-Identifier: MIT
// The season from plain records, without a book and without a form, as a user of the library calls it.
#include "pipward/season/pipeline.h"

#include <gtest/gtest.h>

#include <cmath>

#include "pipward/season/meetings.h"
#include "pipward/season/work_to_come.h"
#include "season/two_apples.h"

namespace pipward::season {
namespace {

using namespace pipward::testing;

Day iso(const char* text) {
    return *parse_iso_day(text);
}

/// Two apples that bloom three weeks into spring, nine springs on record and the tenth under way.
Orchard two_apples() {
    auto orchard = two_apple_trees();
    for (int year = 2017; year <= 2026; ++year) {
        add_weather(orchard, year);
        if (year < 2026) {
            add_full_bloom(orchard, "Apple A", year, 4600);
            add_full_bloom(orchard, "Apple B", year, 4800);
        }
    }
    orchard.goals = {{1, "26-01", {2026}, "Apple A", "Apple B", 50, {}, {}}};
    return orchard;
}

std::string why_refused(Orchard orchard, const OwnPosition& from) {
    try {
        place_of(std::move(orchard), from);
    } catch (const Error& error) {
        return to_text(error.findings().back());
    }
    return "nothing";
}

TEST(SeasonPipeline, ForecastsBloomAndPlansCrossesFromPlainRecords) {
    auto place = place_of(two_apples(), {iso("2026-03-20"), ""});
    EXPECT_EQ(place.season.year, 2026);
    const auto forecast_made = make_forecast(place, MethodChoice::averaged);
    EXPECT_EQ(forecast_made.past.seasons.size(), 9U);
    const auto bloom = full_bloom_of(forecast_made.forecast);
    const auto spring = spring_weather(2026);
    const auto curves = bloom::season_curves(spring.days, spring.first, orchard_latitude, CelsiusStep{0});
    const Day truth =
        anchor_of({2026}, Hemisphere::north) + static_cast<int>(std::lround(true_bloom(curves, 4600)));
    EXPECT_LT(bloom.at("T-Apple A").early, bloom.at("T-Apple B").late);
    EXPECT_LE(bloom.at("T-Apple A").early, truth + 3);
    EXPECT_GE(bloom.at("T-Apple A").late, truth - 3);
    const auto plan =
        plan_crosses(place, forecast_made.forecast, assumptions_of({}, place.orchard, place.as_of));
    EXPECT_FALSE(plan.ways.empty());
    EXPECT_EQ(plan.ways.front().cross, "26-01");
}

TEST(SeasonPipeline, TellsItsStepsInOrderAndStopsWhereOneThrows) {
    auto place = place_of(two_apples(), {iso("2026-03-20"), "Hill"});
    double last = 0;
    make_forecast(place, MethodChoice::averaged, [&](double share, const Sentence&) {
        EXPECT_GE(share, last);
        last = share;
    });
    EXPECT_GT(last, 0.5);
    const Step refusing = [](double, const Sentence&) { throw std::runtime_error("stop"); };
    EXPECT_THROW(make_forecast(place, MethodChoice::averaged, refusing), std::runtime_error);
}

TEST(SeasonPipeline, RefusesAnOrchardWithoutAStationAndOffersTheNearestName) {
    EXPECT_NE(why_refused({}, {iso("2026-03-20"), ""}).find("no weather station"), std::string::npos);
    EXPECT_NE(why_refused(two_apples(), {iso("2026-03-20"), "Hil"}).find("Did you mean 'Hill'?"),
              std::string::npos);
}

TEST(WorkToCome, GivesWorkByItsFirstDayAndNoneThatIsOver) {
    auto place = place_of(two_apples(), {iso("2026-03-20"), ""});
    const auto items = work_to_come({.method = MethodChoice::averaged}, place);
    ASSERT_FALSE(items.empty());
    for (std::size_t i = 0; i < items.size(); ++i) {
        EXPECT_TRUE(!items[i].to || *items[i].to >= place.as_of || items[i].late) << items[i].key;
        EXPECT_TRUE(i == 0 || !items[i].from || *items[i - 1].from <= *items[i].from) << items[i].key;
    }
}

TEST(Meetings, LeaveTheOrchardsOwnGoalsAsTheyWere) {
    auto place = place_of(two_apples(), {iso("2026-03-20"), ""});
    const auto forecast = make_forecast(place, MethodChoice::averaged).forecast;
    const auto meetings = meetings_of({{"Apple A", "Apple B"}}, {20}, place, forecast, {});
    ASSERT_EQ(meetings.size(), 1U);
    EXPECT_TRUE(meetings.front().way);
    ASSERT_EQ(place.orchard.goals.size(), 1U);
    EXPECT_EQ(place.orchard.goals.front().code, "26-01");
}

}  // namespace
}  // namespace pipward::season
