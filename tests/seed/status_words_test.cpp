// SPDX-License-Identifier: MIT
#include "pipward/seed/status_words.h"

#include <gtest/gtest.h>

namespace pipward::seed {
namespace {

TEST(CountWords, SayWhereThereAreMoreAndNothingWhereNobodyCounted) {
    EXPECT_EQ(count_words(StepCount{12, true}).text(), "12");
    EXPECT_EQ(count_words(StepCount{12, false}).text(), "12 or more");
    EXPECT_TRUE(count_words(StepCount{}).empty());
}

// Wilson's interval of 12 of 40 by hand, z = 1.96: 18.1 to 45.4 %.
TEST(ShareWords, HaveTheInterval) {
    EXPECT_EQ(share_words({40, true}, {12, true}).text(), "30 % (18 to 45)");
}

TEST(ShareWords, SayNothingOfWhatCannotBeCompared) {
    EXPECT_TRUE(share_words({40, false}, {12, true}).empty());
    EXPECT_TRUE(share_words({40, true}, {}).empty());
    EXPECT_TRUE(share_words({0, true}, {0, true}).empty());
    EXPECT_TRUE(share_words({10, true}, {12, true}).empty());
}

TEST(SeedsPerFruit, IsOfWholeCountsOnly) {
    CrossTally tally;
    tally.fruits = {4, true};
    tally.sound_seed = {18, true};
    EXPECT_DOUBLE_EQ(*seeds_per_fruit(tally), 4.5);
    tally.fruits.whole = false;
    EXPECT_FALSE(seeds_per_fruit(tally));
}

TEST(StatusWords, EveryStepAndWorkHasItsOwn) {
    EXPECT_EQ(failed_words(SeedStep::fruits).text(), "no fruit set");
    EXPECT_EQ(failed_words(SeedStep::alive).text(), "no seedling is left");
    EXPECT_EQ(work_words(SeedWork::wash).text(), "wash the seed");
    EXPECT_TRUE(work_words(SeedWork::nothing).empty());
}

LotCourse course_of(const SeedLot& lot, int out, std::optional<int> germinated = {}) {
    LotCourse course;
    course.lot = &lot;
    course.out = out;
    course.germinated = germinated;
    return course;
}

SeedLot lot_of(const char* cross, int seeds, const char* washed) {
    SeedLot lot;
    lot.cross = cross;
    lot.seeds = seeds;
    lot.washed_on = *parse_iso_day(washed);
    return lot;
}

TEST(LotsOnHand, AreThoseWithSeedLeftTheOldestFirst) {
    const std::vector lots{lot_of("26-01", 40, "2026-10-02"), lot_of("26-02", 40, "2026-10-01"),
                           lot_of("26-01", 40, "2026-10-01"), lot_of("26-01", 40, "2027-10-01")};
    const std::vector courses{course_of(lots[0], 10), course_of(lots[1], 0), course_of(lots[2], 40),
                              course_of(lots[3], 0)};
    const Day as_of = *parse_iso_day("2026-12-01");
    EXPECT_EQ(lots_on_hand(courses, "", as_of), (std::vector<const LotCourse*>{&courses[1], &courses[0]}));
    EXPECT_EQ(lots_on_hand(courses, "26-01", as_of), (std::vector<const LotCourse*>{&courses[0]}));
}

TEST(NotGerminated, LeavesOutWhatGerminatedAndWhatLeft) {
    const auto lot = lot_of("26-01", 40, "2026-10-02");
    EXPECT_EQ(on_hand(course_of(lot, 10, 25)), 30);
    EXPECT_EQ(not_germinated(course_of(lot, 10, 25)), 15);
    EXPECT_EQ(not_germinated(course_of(lot, 30, 25)), 10);
    EXPECT_EQ(on_hand(course_of(lot, 50)), 0);
}

}  // namespace
}  // namespace pipward::seed
