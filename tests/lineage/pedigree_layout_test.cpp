// SPDX-License-Identifier: MIT
// Whatever the pedigree: no two boxes overlap, every link joins its boxes, seed parents stand above.
#include "pipward/lineage/pedigree_layout.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "lineage/pedigrees.h"

namespace pipward::lineage {
namespace {

using testing::Pedigree;

constexpr double touching = 1e-6;
const PedigreeSpace page{.width = 277, .height = 165};

bool apart(const PlacedBox& a, const PlacedBox& b) {
    return a.right() <= b.left + touching || b.right() <= a.left + touching ||
           a.bottom() <= b.top + touching || b.bottom() <= a.top + touching;
}

bool touches(const PedigreeSpot& spot, double x, const PlacedBox& box) {
    return std::abs(spot.x - x) < touching && spot.y > box.top - touching && spot.y < box.bottom() + touching;
}

// Whether a level or upright run goes through the inside of a box.
bool cuts(const PedigreeSpot& a, const PedigreeSpot& b, const PlacedBox& box) {
    return std::max(a.x, b.x) > box.left + touching && std::min(a.x, b.x) < box.right() - touching &&
           std::max(a.y, b.y) > box.top + touching && std::min(a.y, b.y) < box.bottom() - touching;
}

void expect_sound(const PedigreeView& view, const PedigreeLayout& layout, const PedigreeSpace& space) {
    ASSERT_EQ(layout.boxes.size(), view.boxes.size());
    ASSERT_EQ(layout.links.size(), view.links.size());
    for (std::size_t i = 0; i < layout.boxes.size(); ++i) {
        const auto& box = layout.boxes[i];
        EXPECT_TRUE(box.left >= -touching && box.right() <= space.width + touching && box.top >= -touching &&
                    box.bottom() <= space.height + touching)
            << i;
        for (std::size_t k = 0; k < i; ++k) {
            EXPECT_TRUE(apart(box, layout.boxes[k])) << i << " and " << k;
        }
    }
    for (const auto& placed : layout.links) {
        const auto& link = view.links[placed.link];
        EXPECT_LT(view.columns[link.child], view.columns[link.parent]);
        const auto& child = layout.boxes[link.child];
        const auto& parent = layout.boxes[link.parent];
        EXPECT_TRUE(touches(placed.through.front(), child.right(), child));
        EXPECT_TRUE(touches(placed.through.back(), parent.left, parent));
        for (std::size_t i = 1; i < placed.through.size(); ++i) {
            const auto& a = placed.through[i - 1];
            const auto& b = placed.through[i];
            EXPECT_TRUE(std::abs(a.x - b.x) < touching || std::abs(a.y - b.y) < touching) << "a slanting run";
            for (const auto& box : layout.boxes) {
                EXPECT_FALSE(cuts(a, b, box)) << "a link through a box";
            }
        }
    }
}

// Seed parents that stand below the pollen parent of the same child in one column.
int upside_down(const PedigreeView& view, const PedigreeLayout& layout) {
    int count = 0;
    for (const auto& seed : view.links) {
        for (const auto& pollen : view.links) {
            const bool of_one_child = seed.child == pollen.child && seed.role == PedigreeRole::seed &&
                                      pollen.role == PedigreeRole::pollen && seed.parent != pollen.parent;
            if (of_one_child && view.columns[seed.parent] == view.columns[pollen.parent]) {
                count += layout.boxes[seed.parent].top > layout.boxes[pollen.parent].top ? 1 : 0;
            }
        }
    }
    return count;
}

// Level runs of two links that lie on each other though they neither begin nor end at the same box.
int level_overlaps(const PedigreeView& view, const PedigreeLayout& layout) {
    struct Level {
        int link = 0;
        double y = 0;
        double from = 0;
        double to = 0;
    };
    std::vector<Level> levels;
    for (const auto& placed : layout.links) {
        for (std::size_t i = 1; i < placed.through.size(); ++i) {
            const auto& a = placed.through[i - 1];
            const auto& b = placed.through[i];
            if (a.x < b.x) {
                levels.push_back({placed.link, a.y, a.x, b.x});
            }
        }
    }
    int count = 0;
    for (const auto& a : levels) {
        for (const auto& b : levels) {
            const bool meet = view.links[a.link].child == view.links[b.link].child ||
                              view.links[a.link].parent == view.links[b.link].parent;
            count += a.link < b.link && !meet && std::abs(a.y - b.y) < 0.3 &&
                             std::min(a.to, b.to) - std::max(a.from, b.from) > 0.3
                         ? 1
                         : 0;
        }
    }
    return count;
}

struct Drawn {
    PedigreeGraph graph;
    PedigreeView view;
    PedigreeLayout layout;

    int box(const std::string& name) const {
        for (std::size_t i = 0; i < view.boxes.size(); ++i) {
            if (view.boxes[i].node >= 0 && graph.nodes[view.boxes[i].node].name == name) {
                return static_cast<int>(i);
            }
        }
        return -1;
    }
};

Drawn drawn(const Pedigree& pedigree, const std::string& who, const PedigreeLimits& limits) {
    Drawn made{pedigree_graph(pedigree.accessions, pedigree.blends), {}, {}};
    made.view = pedigree_view(made.graph, made.graph.number.at(who), limits);
    const std::vector<double> heights(made.view.boxes.size(), 4);
    const auto layout = pedigree_layout(made.view, heights, page);
    EXPECT_TRUE(layout);
    made.layout = layout.value_or(PedigreeLayout{});
    expect_sound(made.view, made.layout, page);
    return made;
}

TEST(PedigreeLayout, OfAFullPedigreeOfFiveGenerations) {
    Pedigree p;
    for (int i = 1; i < 32; ++i) {
        p.add("n" + std::to_string(i), "n" + std::to_string(2 * i), "n" + std::to_string(2 * i + 1));
    }
    const PedigreeSpace narrow{.width = 277, .height = 165};
    const auto graph = pedigree_graph(p.accessions, p.blends);
    const auto view = pedigree_view(graph, graph.number.at("n1"), {5, 0, 0});
    EXPECT_EQ(view.boxes.size(), 63U);
    EXPECT_EQ(view.column_count, 6);
    const auto layout = pedigree_layout(view, std::vector<double>(63, 4.1), narrow);
    ASSERT_TRUE(layout);
    expect_sound(view, *layout, narrow);
    EXPECT_EQ(upside_down(view, *layout), 0);
    EXPECT_FALSE(pedigree_layout(view, std::vector<double>(63, 6), narrow)) << "32 of them do not fit";
}

TEST(PedigreeLayout, DrawsASharedAncestorOnce) {
    Pedigree p;
    p.add("X", "S", "P");
    p.add("S", "A", "B");
    p.add("P", "C", "S");
    const auto made = drawn(p, "X", {4, 0, 0});
    const auto& shared = made.view.boxes[made.box("S")];
    EXPECT_TRUE(shared.is_shared);
    EXPECT_EQ(shared.generation, 1);
    EXPECT_EQ(made.view.columns[made.box("S")], 2) << "beyond the farthest child";
    EXPECT_FALSE(made.view.boxes[made.box("A")].is_shared);
    EXPECT_EQ(made.view.boxes.size(), 6U);
    EXPECT_EQ(upside_down(made.view, made.layout), 0);
}

TEST(PedigreeLayout, SelfingHasTwoLinksToOneBox) {
    Pedigree p;
    p.add("X", "A", "A");
    const auto made = drawn(p, "X", {4, 0, 0});
    EXPECT_EQ(made.view.links.size(), 2U);
    EXPECT_TRUE(made.view.boxes[made.box("A")].is_shared);
}

TEST(PedigreeLayout, ShowsBlendsUnknownParentsAndSports) {
    Pedigree p;
    p.mix("Mix", "A");
    p.mix("Mix", "B");
    p.add("X", "Y", "Mix");
    p.add("Y", {}, "B");
    p.add_sport("Red X", "X");
    const auto made = drawn(p, "Red X", {4, 0, 0});
    EXPECT_EQ(made.view.columns[made.box("X")], 1);
    EXPECT_EQ(made.view.boxes[made.box("X")].generation, 0);
    EXPECT_TRUE(made.view.boxes[made.box("B")].is_shared);
    int unknown = 0;
    for (const auto& box : made.view.boxes) {
        unknown += box.is_unknown() ? 1 : 0;
    }
    EXPECT_EQ(unknown, 1) << "only beside a known parent";
}

TEST(PedigreeLayout, PutsSeedlingsOfAFamilyInOneBoxAndDescendantsToTheLeft) {
    Pedigree p;
    for (int i = 1; i <= 5; ++i) {
        p.add("16-01-0" + std::to_string(i), "A", "B", AccessionKind::seedling);
    }
    p.add("C", "16-01-02", "A");
    p.add("D", "B", "A");
    const auto made = drawn(p, "A", {2, 2, 0});
    EXPECT_EQ(made.view.boxes[made.box("16-01-01")].family.size(), 4U);
    EXPECT_EQ(made.box("16-01-03"), -1);
    EXPECT_LT(made.view.columns[made.box("C")], made.view.columns[made.box("16-01-02")]);
    EXPECT_LT(made.view.columns[made.box("16-01-02")], made.view.columns[made.box("A")]);
    EXPECT_EQ(made.view.descendants_left_out, 0);
    const auto few = drawn(p, "A", {2, 1, 1});
    EXPECT_EQ(few.view.boxes.back().more, 3)
        << "the family has its box; the second seedling, C and D have none";
}

TEST(PedigreeLayout, IsSoundForManyMadeUpLines) {
    int orders = 0;
    int broken = 0;
    int overlaps = 0;
    int links = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const auto p = testing::made_pedigree(6, 8, seed);
        const auto graph = pedigree_graph(p.accessions, p.blends);
        for (const auto* who : {"G6-0", "G6-5", "G3-2"}) {
            const auto view = pedigree_view(graph, graph.number.at(who), {6, 1, 12});
            const PedigreeSpace space{.width = 600, .height = 500};
            const auto layout = pedigree_layout(view, std::vector<double>(view.boxes.size(), 5), space);
            ASSERT_TRUE(layout) << seed;
            expect_sound(view, *layout, space);
            std::set<int> nodes;
            for (const auto& box : view.boxes) {
                EXPECT_TRUE(box.node < 0 || nodes.insert(box.node).second) << "drawn twice";
            }
            overlaps += level_overlaps(view, *layout);
            links += static_cast<int>(view.links.size());
            broken += upside_down(view, *layout);
            orders += static_cast<int>(view.links.size()) / 2;
        }
    }
    // Reciprocal crosses among a few parents ask for both orders now and then.
    EXPECT_LT(broken, orders / 10);
    EXPECT_LT(overlaps, links / 50) << overlaps << " of " << links;
}

TEST(PedigreeLayout, GivesTheSameTwice) {
    const auto p = testing::made_pedigree(6, 8, 3);
    const auto once = drawn(p, "G6-1", {3, 0, 0});
    const auto again = drawn(p, "G6-1", {3, 0, 0});
    for (std::size_t i = 0; i < once.layout.boxes.size(); ++i) {
        EXPECT_EQ(once.layout.boxes[i].top, again.layout.boxes[i].top);
    }
}

}  // namespace
}  // namespace pipward::lineage
