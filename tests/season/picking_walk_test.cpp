// SPDX-License-Identifier: MIT
#include "pipward/season/picking_walk.h"
#include "days.h"

#include <gtest/gtest.h>

namespace pipward::season {
namespace {

using testing::day_of;

struct Made {
    Orchard orchard;
    std::vector<seed::TagToHarvest> tags;

    Made() {
        for (const auto* label : {"T1", "T2", "T3"}) {
            Tree tree;
            tree.label = label;
            orchard.trees.push_back(tree);
            Pollination work;
            work.tag = std::string("tag-") + label;
            work.tree = label;
            orchard.pollinations.push_back(work);
        }
        add(0, "2025-09-01", "2025-09-20");
        add(1, "2025-09-28", "2025-10-20");
        add(2, "2025-10-20", "2025-11-10");
    }
    void add(std::size_t work, const char* from, const char* to) {
        seed::TagToHarvest tag;
        tag.work = &orchard.pollinations[work];
        tag.days.from = day_of(from);
        tag.days.to = day_of(to);
        tags.push_back(tag);
    }
};

const SheetDays week{day_of("2025-09-24"), day_of("2025-09-30")};

TEST(Pickings, TellWhatIsLateWhatComesAndWhatHangsOn) {
    const Made made;
    const auto harvests = pickings_of(made.tags, week);
    EXPECT_EQ(harvests[0].state.text(), "late: harvest what is left at once");
    EXPECT_EQ(harvests[1].state.text(), "harvest from 2025-09-28 on");
    EXPECT_EQ(harvests[2].state.text(), "harvest not before 2025-10-20");
    EXPECT_EQ(trees_to_pick(harvests), (std::set<std::string>{"T1", "T2"}));
}

TEST(Pickings, StandInTheOrderOfTheWalkThenWhatHangsOn) {
    const Made made;
    auto harvests = pickings_of(made.tags, week);
    place::SheetWalk walk;
    walk.stops = {{&made.orchard.trees[1], 12.0}, {&made.orchard.trees[0], 30.0}};
    put_in_walking_order(harvests, walk, made.orchard);
    EXPECT_EQ(harvests[0].tag.work->tag, "tag-T2");
    EXPECT_EQ(harvests[0].order, 1);
    EXPECT_DOUBLE_EQ(*harvests[1].walked, 30);
    EXPECT_EQ(harvests[2].tag.work->tag, "tag-T3");
    EXPECT_FALSE(harvests[2].order);
    EXPECT_EQ(harvests[2].tree, &made.orchard.trees[2]);
}

}  // namespace
}  // namespace pipward::season
