// SPDX-License-Identifier: MIT
// Flowers of a cross are spread over the trees of its seed parent.
#include "pipward/cross/detail/tree_shares.h"

#include <gtest/gtest.h>

#include <numeric>

#include "cross/made_orchard.h"

namespace pipward::cross {
namespace {

using detail::PollinatedTree;
using detail::spread_over_trees;
using testing::day;

const Day today = day("2026-04-01");

/// Trees in a line, at these places.
class TreesAt {
  public:
    explicit TreesAt(const std::vector<double>& places) {
        trees_.reserve(places.size());
        for (const double x : places) {
            Tree tree;
            tree.label = "T" + std::to_string(trees_.size() + 1);
            tree.at = MapPoint{x, 0, {}};
            trees_.push_back(tree);
        }
    }
    Tree& operator[](std::size_t i) { return trees_[i]; }
    std::vector<bloom::TreeBloom> blooms() const {
        std::vector<bloom::TreeBloom> blooms;
        for (const auto& tree : trees_) {
            blooms.push_back({&tree, 0});
        }
        return blooms;
    }

  private:
    std::vector<Tree> trees_;
};

std::vector<std::string> labels(const std::vector<PollinatedTree>& shares) {
    std::vector<std::string> all;
    for (const auto& share : shares) {
        all.push_back(share.bloom.tree->label);
    }
    return all;
}

int flowers(const std::vector<PollinatedTree>& shares) {
    return std::accumulate(shares.begin(), shares.end(), 0,
                           [](int sum, const PollinatedTree& share) { return sum + share.flowers; });
}

TEST(TreeShares, GoToTheNearestTreesThatAreNeeded) {
    const TreesAt trees({0, 500, 4, 8});
    std::map<std::string, int> planned;
    const auto shares = spread_over_trees(trees.blooms(), 145, today, {}, planned);
    EXPECT_EQ(labels(shares), (std::vector<std::string>{"T1", "T3"}));
    EXPECT_EQ(flowers(shares), 145);
    EXPECT_LE(std::abs(shares[0].flowers - shares[1].flowers), 1);
}

TEST(TreeShares, YoungTreesBearLess) {
    TreesAt trees({0, 4, 8});
    trees[0].planted_on = day("2024-11-20");
    trees[1].planted_on = day("2022-11-20");
    std::map<std::string, int> planned;
    const auto shares = spread_over_trees(trees.blooms(), 126, today, {}, planned);
    ASSERT_EQ(shares.size(), 3U);
    EXPECT_LE(shares[0].flowers, detail::flowers_a_whip);
    EXPECT_LE(shares[1].flowers, detail::flowers_a_young_tree);
    EXPECT_EQ(flowers(shares), 126);
}

TEST(TreeShares, CrossesBeforeHaveTakenTheirFlowers) {
    const TreesAt trees({0, 4, 8});
    std::map<std::string, int> planned;
    spread_over_trees(trees.blooms(), 90, today, {}, planned);
    EXPECT_EQ(planned.at("T1"), 90);
    const auto second = spread_over_trees(trees.blooms(), 90, today, {}, planned);
    EXPECT_EQ(labels(second), (std::vector<std::string>{"T1", "T2"}));
    EXPECT_LE(second[0].flowers, 10);
    EXPECT_EQ(flowers(second), 90);
}

TEST(TreeShares, TreesThatAreBegunAreGoneOnWith) {
    const TreesAt trees({0, 4, 8, 12});
    std::map<std::string, int> planned;
    const auto shares = spread_over_trees(trees.blooms(), 120, today, {{"T4"}, {}}, planned);
    EXPECT_EQ(labels(shares), (std::vector<std::string>{"T4", "T3"}));
}

TEST(TreeShares, TreesWhosePartIsDoneAreLeft) {
    const TreesAt trees({0, 4});
    std::map<std::string, int> planned{{"T1", 150}};
    EXPECT_EQ(labels(spread_over_trees(trees.blooms(), 150, today, {{}, {"T1"}}, planned)),
              (std::vector<std::string>{"T2"}));
}

TEST(TreeShares, MoreThanAllOfThemBearIsSpreadEvenly) {
    const TreesAt trees({0, 4});
    std::map<std::string, int> planned;
    const auto shares = spread_over_trees(trees.blooms(), 301, today, {}, planned);
    ASSERT_EQ(shares.size(), 2U);
    EXPECT_EQ(flowers(shares), 301);
    EXPECT_EQ(shares[0].flowers, 150);
}

}  // namespace
}  // namespace pipward::cross
