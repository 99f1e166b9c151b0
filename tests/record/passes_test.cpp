// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "days.h"
#include "pipward/record/presence.h"

namespace pipward::record {
namespace {

using testing::day_of;

Pollination work(const char* tag, const char* day, std::optional<int> pass = {}) {
    Pollination made;
    made.tag = tag;
    made.pollinated_on = day_of(day);
    made.pass = pass;
    return made;
}

TEST(Passes, AreCountedUnderTheirTagInTheOrderOfDays) {
    EXPECT_EQ(passes_of({work("a", "2026-05-12"), work("a", "2026-05-10"), work("b", "2026-05-11")}),
              (std::vector<int>{2, 1, 1}));
}

TEST(Passes, AreWhatTheBookSaysWhereItSaysIt) {
    EXPECT_EQ(passes_of({work("a", "2026-05-10"), work("a2", "2026-05-12", 2), work("a2", "2026-05-14")}),
              (std::vector<int>{1, 2, 3}));
}

TEST(StoreOn, IsTheLatestMoveByTheDay) {
    PollenLot lot;
    lot.code = "P";
    lot.store = Store::room;
    const std::vector<PollenMove> moves{{0, "P", day_of("2026-05-20"), Store::freezer, {}},
                                        {0, "P", day_of("2026-05-12"), Store::refrigerator, {}},
                                        {0, "Q", day_of("2026-05-13"), Store::deep_freezer, {}}};
    EXPECT_EQ(store_on(lot, moves, day_of("2026-05-11")), Store::room);
    EXPECT_EQ(store_on(lot, moves, day_of("2026-05-12")), Store::refrigerator);
    EXPECT_EQ(store_on(lot, moves, day_of("2026-06-01")), Store::freezer);
}

}  // namespace
}  // namespace pipward::record
