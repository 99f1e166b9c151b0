// SPDX-License-Identifier: MIT
// The tag of a branch is done when its fruit is in; no pass over the branch haunts the lists after that.
#include "pipward/seed/waiting_tags.h"
#include "days.h"

#include <gtest/gtest.h>

#include "pipward/seed/harvest.h"

namespace pipward::seed {
namespace {

using testing::day_of;

Pollination work(const char* tag, const char* day, std::optional<int> pass = {}) {
    Pollination made;
    made.tag = tag;
    made.cross = "26-01";
    made.tree = "T1";
    made.pollinated_on = day_of(day);
    made.flowers = 40;
    made.pass = pass;
    return made;
}

Fruit fruit(const char* tag, const char* day) {
    Fruit made;
    made.tag = tag;
    made.harvested_on = day_of(day);
    made.fruits = 9;
    return made;
}

std::size_t waiting(const Orchard& orchard, const char* day) {
    return waiting_tags(orchard, day_of(day), longest_hanging_days).size();
}

TEST(WaitingTags, ATwicePollinatedTagWaitsOnceAndIsDoneWhenItsFruitIsIn) {
    Orchard orchard;
    orchard.pollinations = {work("a", "2026-05-06"), work("a", "2026-05-08")};
    EXPECT_EQ(waiting(orchard, "2026-08-01"), 1U);
    orchard.fruits = {fruit("a", "2026-09-20")};
    EXPECT_EQ(waiting(orchard, "2026-09-21"), 0U);
}

TEST(WaitingTags, ALaterPassUnderATagOfItsOwnDoesNotHauntTheList) {
    Orchard orchard;
    orchard.pollinations = {work("a", "2026-05-06"), work("b", "2026-05-08", 2)};
    EXPECT_EQ(waiting(orchard, "2026-08-01"), 1U);
    orchard.fruits = {fruit("a", "2026-09-20")};
    EXPECT_EQ(waiting(orchard, "2026-09-21"), 0U);
}

TEST(WaitingTags, ALaterPassWhoseFirstIsNotInTheBookIsWaitedFor) {
    Orchard orchard;
    orchard.pollinations = {work("b", "2026-05-08", 2)};
    EXPECT_EQ(waiting(orchard, "2026-08-01"), 1U);
}

TEST(WaitingTags, ATagOnWhichNothingIsLeftIsDone) {
    Orchard orchard;
    orchard.pollinations = {work("a", "2026-05-06")};
    FruitSetCount count;
    count.tag = "a";
    count.counted_on = day_of("2026-06-25");
    count.fruits = 3;
    orchard.fruit_set_counts = {count};
    EXPECT_EQ(waiting(orchard, "2026-08-01"), 1U);
    orchard.fruit_set_counts[0].fruits = 0;
    EXPECT_EQ(waiting(orchard, "2026-08-01"), 0U);
    EXPECT_EQ(waiting(orchard, "2026-06-24"), 1U) << "the day before the count";
}

}  // namespace
}  // namespace pipward::seed
