// SPDX-License-Identifier: MIT
// Shares by hand, and by letting genes fall from parents to children.
#include "pipward/lineage/ancestor_shares.h"

#include <gtest/gtest.h>

#include "lineage/pedigrees.h"

namespace pipward::lineage {
namespace {

using testing::Pedigree;

struct Shares {
    PedigreeGraph graph;
    std::vector<AncestorShare> all;

    const AncestorShare& of(const std::string& name) const {
        for (const auto& share : all) {
            if (graph.nodes[share.node].name == name) {
                return share;
            }
        }
        static const AncestorShare none;
        return none;
    }
};

Shares shares(const Pedigree& pedigree, const std::string& who) {
    auto graph = pedigree_graph(pedigree.accessions, pedigree.blends);
    auto all = ancestor_shares(graph, graph.number.at(who));
    return {std::move(graph), std::move(all)};
}

TEST(AncestorShares, AddOverAllWays) {
    Pedigree p;  // the backcross (A × B) × A, then with its own parent's child
    p.add("F1", "A", "B");
    p.add("BC", "F1", "A");
    p.add("X", "BC", "F1");
    const auto found = shares(p, "X");
    EXPECT_EQ(found.of("BC").share, 0.5);
    EXPECT_EQ(found.of("F1").share, 0.75);
    EXPECT_EQ(found.of("F1").ways, 2);
    EXPECT_EQ(found.of("F1").nearest, 1);
    EXPECT_EQ(found.of("F1").farthest, 2);
    EXPECT_EQ(found.of("A").share, 0.625);
    EXPECT_EQ(found.of("A").ways, 3);
    EXPECT_EQ(found.of("B").share, 0.375);
    EXPECT_TRUE(found.of("A").is_founder);
    EXPECT_EQ(found.graph.nodes[found.all.front().node].name, "X");
    EXPECT_EQ(found.graph.nodes[found.all[1].node].name, "F1");
}

TEST(AncestorShares, OfABlendAreExpectedByItsShares) {
    Pedigree p;
    p.mix("Mix", "A", 0.4);
    p.mix("Mix", "B", 0.35);
    p.mix("Mix", "C", 0.25);
    p.mix("Half told", "A", 0.5);
    p.mix("Half told", "B");
    p.mix("Short", "A", 0.5);
    p.add("X", "A", "Mix");
    p.add("Y", "A", "Half told");
    p.add("Z", "A", "Short");
    const auto x = shares(p, "X");
    EXPECT_DOUBLE_EQ(x.of("A").share, 0.7);
    EXPECT_DOUBLE_EQ(x.of("C").share, 0.125);
    EXPECT_TRUE(x.of("C").by_blend);
    EXPECT_EQ(x.of("C").nearest, 1);
    EXPECT_EQ(x.of("Mix").ways, 0) << "a blend is no ancestor";
    EXPECT_DOUBLE_EQ(shares(p, "Y").of("B").share, 0.25);
    EXPECT_DOUBLE_EQ(shares(p, "Z").of("A").share, 0.75);
    EXPECT_DOUBLE_EQ(shares(p, "Z").all.front().unknown_share, 0.25);
}

TEST(AncestorShares, ASportHasTheGenesOfItsOriginal) {
    Pedigree p;
    p.add("A", "P", "Q");
    p.add_sport("Red A", "A");
    p.add("X", "Red A", {});
    const auto red = shares(p, "Red A");
    EXPECT_EQ(red.of("A").share, 1);
    EXPECT_EQ(red.of("A").nearest, 0);
    EXPECT_EQ(red.of("P").share, 0.5);
    EXPECT_EQ(red.of("P").nearest, 1);
    const auto x = shares(p, "X");
    EXPECT_EQ(x.of("A").share, 0.5);
    EXPECT_EQ(x.of("X").unknown_share, 0.5);
}

TEST(AncestorShares, OfFoundersAndTheUnknownAddUpToOne) {
    const auto p = testing::made_pedigree(12, 400, 7);
    const auto graph = pedigree_graph(p.accessions, p.blends);
    for (int i = 0; i < 40; ++i) {
        const auto& who = p.accessions[p.accessions.size() - 1 - static_cast<std::size_t>(i) * 11].name;
        const auto all = ancestor_shares(graph, graph.number.at(who));
        double sum = 0;
        for (const auto& share : all) {
            sum += share.unknown_share + (share.is_founder ? share.share : 0);
            EXPECT_NEAR(shares_of_ancestor(graph, share.node)[graph.number.at(who)], share.share, 1e-12);
        }
        EXPECT_NEAR(sum, 1, 1e-9) << who;
    }
}

TEST(AncestorShares, CountWaysUpToALimit) {
    Pedigree p;
    p.add("0", "A", "A");
    for (int i = 1; i < 64; ++i) {
        p.add(std::to_string(i), std::to_string(i - 1), std::to_string(i - 1));
    }
    EXPECT_EQ(shares(p, "63").of("A").ways, most_ways);
    EXPECT_EQ(shares(p, "63").of("A").share, 1);
}

TEST(PedigreeGraph, RefusesAccessionsThatAreTheirOwnAncestors) {
    Pedigree p;
    p.add("A", "B", {});
    p.add("B", "A", {});
    p.add("C");
    try {
        pedigree_graph(p.accessions, p.blends);
        FAIL();
    } catch (const Error& error) {
        EXPECT_EQ(error.findings().size(), 2U);
    }
}

}  // namespace
}  // namespace pipward::lineage
