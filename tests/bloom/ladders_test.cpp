// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/ladders.h"

#include <gtest/gtest.h>

#include <cmath>

#include "springs.h"

namespace pipward::bloom {
namespace {

const std::string pear_species = "Pyrus communis";

struct LadderWorld {
    CurvesOf curves = testing::curves_of_springs(testing::springs(2001, 12));
    std::vector<StageSeen> stages;

    // Bloom that goes `first` and `end` degree-days to either side of full bloom on season day 118.
    void observe_spring(int year, double first, double end) {
        const auto& season = curves.at({{year}, 0.0});
        const double full = value_at(season.ladder, 118);
        observe(year, 60, day_reaching(season.ladder, full + first));
        observe(year, 65, 118);
        observe(year, 69, day_reaching(season.ladder, full + end));
    }
    void observe(int year, int bbch, double day) {
        StageSeen seen;
        seen.accession = "Pear A";
        seen.species = pear_species;
        seen.season = {year};
        seen.stage = {bbch};
        seen.observed_on = anchor_of({year}, Hemisphere::north) + static_cast<int>(std::round(day));
        stages.push_back(seen);
    }
    StageLadder learned() const {
        return detail::learn_ladders(stages, curves, Hemisphere::north, {2013}).of(pear_species);
    }
};

TEST(Ladders, WithoutObservationsAreTheUsualOnes) {
    EXPECT_EQ(LadderWorld{}.learned(), usual_ladder(pear_species));
}

TEST(Ladders, ComeToWhatIsObservedSpringAfterSpring) {
    LadderWorld world;
    for (int year = 2001; year <= 2012; ++year) {
        world.observe_spring(year, -80, 150);
    }
    EXPECT_NEAR(world.learned().first.value, -69, 6);
    EXPECT_NEAR(world.learned().end.value, 133, 10);
}

TEST(Ladders, RecentSpringsCountMost) {
    LadderWorld older;
    LadderWorld later;
    for (int year = 2001; year <= 2012; ++year) {
        older.observe_spring(year, -40, year < 2007 ? 150 : 90);
        later.observe_spring(year, -40, year < 2007 ? 90 : 150);
    }
    EXPECT_GT(later.learned().end.value, older.learned().end.value + 5);
}

TEST(Ladders, ASlipOfThePenTeachesLittle) {
    LadderWorld world;
    for (int year = 2001; year <= 2012; ++year) {
        world.observe_spring(year, -38, 86);
    }
    const double before = world.learned().end.value;
    world.stages.back().observed_on = world.stages.back().observed_on + 30;
    EXPECT_NEAR(world.learned().end.value, before, 25);
}

TEST(Ladders, OfASpeciesTeachNothingOfAnother) {
    LadderWorld world;
    world.observe_spring(2012, -80, 150);
    const auto ladders = detail::learn_ladders(world.stages, world.curves, Hemisphere::north, {2013});
    EXPECT_EQ(ladders.of("Malus domestica"), usual_ladder("Malus domestica"));
}

TEST(Ladders, PlaceStagesByTheirSpecies) {
    LadderWorld world;
    world.observe_spring(2012, -80, 150);
    const auto ladders = detail::learn_ladders(world.stages, world.curves, Hemisphere::north, {2013});
    detail::place_stages(world.stages, ladders);
    EXPECT_EQ(world.stages[0].place.after_full, ladders.of(pear_species).first);
    EXPECT_EQ(world.stages[1].place.after_full.value, 0);
    EXPECT_EQ(world.stages[2].place.after_full, ladders.of(pear_species).end);
}

}  // namespace
}  // namespace pipward::bloom
