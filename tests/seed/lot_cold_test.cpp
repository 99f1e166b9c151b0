// SPDX-License-Identifier: MIT
#include "days.h"
#include "pipward/seed/lot_stratification.h"

#include <gtest/gtest.h>

namespace pipward::seed {
namespace {

using testing::day_of;

SeedLot lot_of(const char* code, std::optional<Day> stratified_from) {
    SeedLot lot;
    lot.code = code;
    lot.cross = "26-01";
    lot.seeds = 40;
    lot.washed_on = day_of("2026-10-01");
    lot.stratified_from = stratified_from;
    lot.cold = Celsius{3};
    return lot;
}

Orchard made() {
    Orchard orchard;
    Accession mother;
    mother.name = "Wrenlea";
    mother.species = "Malus domestica";
    orchard.accessions = {mother};
    CrossGoal goal;
    goal.code = "26-01";
    goal.season = {2026};
    goal.seed_parent = "Wrenlea";
    goal.pollen_parent = "Marlside";
    orchard.goals = {goal};
    orchard.seed_lots = {lot_of("S-late", day_of("2026-12-01")), lot_of("S-early", day_of("2026-11-01")),
                         lot_of("S-warm", std::nullopt)};
    return orchard;
}

TEST(LotsInCold, ComeByTheDayOnWhichTheyAreReady) {
    const auto orchard = made();
    const Day as_of = day_of("2026-12-20");
    const auto courses = lot_courses(orchard, as_of);
    Findings findings;
    const auto lots = lots_in_cold(courses, orchard, {{}, as_of, false}, findings);
    ASSERT_EQ(lots.size(), 2U);
    EXPECT_EQ(lots[0].course->lot->code, "S-early");
    EXPECT_LT(*lots[0].ready, *lots[1].ready);
}

TEST(LotsInCold, ALotThatIsNotInTheColdIsANote) {
    const auto orchard = made();
    const Day as_of = day_of("2026-12-20");
    const auto courses = lot_courses(orchard, as_of);
    Findings findings;
    (void)lots_in_cold(courses, orchard, {{}, as_of, false}, findings);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].level, Level::notice);
    EXPECT_EQ(findings[0].row, "S-warm");
}

}  // namespace
}  // namespace pipward::seed
