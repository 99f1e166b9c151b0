// SPDX-License-Identifier: MIT
#include "pipward/seed/harvest.h"
#include "days.h"

#include <gtest/gtest.h>

#include "pipward/seed/next_work.h"

namespace pipward::seed {
namespace {

using testing::day_of;

Pollination work(std::string tag, std::string tree, const char* day, int pass = 1) {
    Pollination made;
    made.tag = std::move(tag);
    made.cross = "26-01";
    made.tree = std::move(tree);
    made.pollinated_on = day_of(day);
    made.flowers = 40;
    made.pass = pass;
    return made;
}

Orchard orchard(std::optional<int> ripe_days) {
    Orchard made;
    Accession mother;
    mother.name = "Wrenlea";
    mother.seed_ripe_days = ripe_days;
    made.accessions = {mother};
    CrossGoal goal;
    goal.code = "26-01";
    goal.season = {2026};
    goal.seed_parent = "Wrenlea";
    goal.pollen_parent = "Marlside";
    made.goals = {goal};
    made.pollinations = {work("a", "T1", "2026-05-06"), work("b", "T2", "2026-05-08")};
    return made;
}

std::optional<FullBloomSpan> nothing_told(const std::string&) {
    return std::nullopt;
}

// Full bloom on 6 May 2026 and 145 days end on 28 September: calendar arithmetic.
TEST(Harvest, CountsFromFullBloomAsItIsKnown) {
    const auto book = orchard(145);
    const auto tags = tags_to_harvest(book, day_of("2026-09-01"), [](const std::string& tree) {
        const auto day = day_of("2026-05-06");
        return tree == "T1" ? std::optional{FullBloomSpan{day, day}} : std::nullopt;
    });
    ASSERT_EQ(tags.size(), 2U);
    EXPECT_EQ(tags[0].work->tag, "a");
    EXPECT_EQ(to_iso(tags[0].days.from), "2026-09-28");
    EXPECT_EQ(tags[0].days.to - tags[0].days.from, fruit_may_hang_days);
    EXPECT_FALSE(tags[0].bloom_by_work);
    EXPECT_TRUE(tags[1].bloom_by_work);
    EXPECT_EQ(tags[1].bloom.late - tags[1].bloom.early, 2 * days_around_full_bloom);
}

TEST(Harvest, WaitsForTheLateEndOfBloomAndNeverEndsBeforeItBegins) {
    Accession mother;
    mother.seed_ripe_days = 120;
    const auto days = harvest_days(mother, day_of("2026-04-20"), day_of("2026-05-30"));
    EXPECT_EQ(days.from, day_of("2026-05-30") + 120);
    EXPECT_GE(days.to, days.from);
}

TEST(Harvest, TrustsTheDayOfTheWorkMoreThanAWideForecast) {
    const auto book = orchard(120);
    const auto span = [](const char* early, const char* late) {
        return [=](const std::string&) { return std::optional{FullBloomSpan{day_of(early), day_of(late)}}; };
    };
    const auto wide = tags_to_harvest(book, day_of("2026-09-01"), span("2026-04-20", "2026-05-30"));
    EXPECT_TRUE(wide[0].bloom_by_work);
    EXPECT_EQ(wide[0].days.from, day_of("2026-05-06") + days_around_full_bloom + 120);
    const auto sharp = tags_to_harvest(book, day_of("2026-09-01"), span("2026-05-07", "2026-05-08"));
    EXPECT_FALSE(sharp[0].bloom_by_work);
    EXPECT_EQ(sharp[0].days.from, day_of("2026-05-08") + 120);
}

TEST(Harvest, LeavesOutWhatWasHarvestedAndWhatIsOfAnotherYear) {
    auto book = orchard(145);
    Fruit fruit;
    fruit.tag = "a";
    fruit.harvested_on = day_of("2026-09-20");
    book.fruits = {fruit};
    book.pollinations.push_back(work("old", "T1", "2025-05-06"));
    EXPECT_EQ(tags_to_harvest(book, day_of("2026-09-25"), nothing_told).size(), 1U);
    EXPECT_EQ(tags_to_harvest(book, day_of("2026-09-19"), nothing_told).size(), 2U)
        << "harvested the day after";
    EXPECT_TRUE(tags_to_harvest(book, day_of("2026-04-01"), nothing_told).empty())
        << "nothing was worked yet";
}

TEST(Harvest, TakesATagThatWasPollinatedTwiceForOne) {
    auto book = orchard(145);
    book.pollinations.push_back(work("a", "T1", "2026-05-07", 2));
    const auto tags = tags_to_harvest(book, day_of("2026-09-01"), nothing_told);
    ASSERT_EQ(tags.size(), 2U);
    EXPECT_EQ(to_iso(tags[0].work->pollinated_on), "2026-05-07");
}

TEST(Harvest, WarnsOfEarlyAndOfLateCultivars) {
    const auto caution = [](std::optional<int> days) {
        const auto book = orchard(days);
        return harvest_caution(tags_to_harvest(book, day_of("2026-09-01"), nothing_told).front()).text();
    };
    EXPECT_TRUE(caution(95).starts_with("Early cultivar"));
    EXPECT_TRUE(caution(165).starts_with("Late cultivar"));
    EXPECT_EQ(caution(130), "");
    EXPECT_EQ(caution(std::nullopt), "") << "where the book does not tell the days nothing is said of them";
}

TEST(WorkOfACross, IsToldLotByLotTheEarliestStepFirst) {
    auto book = orchard(145);
    for (const auto* code : {"S-1", "S-2"}) {
        SeedLot lot;
        lot.code = code;
        lot.cross = "26-01";
        lot.seeds = 50;
        lot.washed_on = day_of("2026-10-01");
        book.seed_lots.push_back(lot);
    }
    book.seed_lots[0].stratified_from = day_of("2026-11-25");
    const auto tallies = tally_crosses(book, day_of("2026-12-01"));
    const auto works = work_of_cross(tallies.front(), OrchardIndex(book), day_of("2026-12-01"));
    ASSERT_EQ(works.size(), 2U);
    EXPECT_EQ(works[0].work, SeedWork::start_stratification);
    EXPECT_EQ(works[0].lot, "S-2");
    EXPECT_EQ(works[1].work, SeedWork::sow);
    EXPECT_EQ(works[1].lot, "S-1");
    EXPECT_EQ(next_work(tallies.front(), OrchardIndex(book), day_of("2026-12-01")).lot, "S-2");
}

}  // namespace
}  // namespace pipward::seed
