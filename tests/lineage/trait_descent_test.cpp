// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_descent.h"

#include <gtest/gtest.h>

#include "lineage/pedigrees.h"

namespace pipward::lineage {
namespace {

TraitScore scored(const char* tree, const char* day, const char* trait, double score) {
    return {0, tree, *parse_iso_day(day), trait, score, {}};
}

Tree tree(const char* label, const char* accession) {
    Tree it;
    it.label = label;
    it.accession = accession;
    return it;
}

TEST(TraitMeans, CountEachTreeOnce) {
    const std::vector<Tree> trees{tree("a1", "A"), tree("a2", "A"), tree("b1", "B")};
    const std::vector<TraitScore> scores{
        scored("a1", "2020-09-01", "taste", 4), scored("a1", "2021-09-01", "taste", 6),
        scored("a1", "2022-09-01", "taste", 8), scored("a2", "2019-09-01", "taste", 2),
        scored("b1", "2020-09-01", "scab", 1),  scored("gone", "2020-09-01", "scab", 9)};
    const auto means = trait_means(trees, scores);
    const auto& taste = means.at("A").at("taste");
    EXPECT_EQ(taste.mean, 4);
    EXPECT_EQ(taste.trees, 2);
    EXPECT_EQ(taste.first_year, 2019);
    EXPECT_EQ(taste.last_year, 2022);
    EXPECT_EQ(means.size(), 2U);
}

TEST(TraitDescent, FollowsParentsBlendsSportsAndGrandparents) {
    testing::Pedigree p;
    p.mix("Mix", "A", 0.75);
    p.mix("Mix", "B", 0.25);
    p.mix("Mix", "C", 0.0);
    p.add("M", "A", "B");
    p.add("X", "M", "Mix");
    p.add_sport("Red X", "X");
    p.add("Y", "Red X", {});
    const auto graph = pedigree_graph(p.accessions, p.blends);
    TraitMeans means;
    means["A"]["taste"] = {8, 1, 2020, 2020};
    means["B"]["taste"] = {4, 2, 2021, 2021};
    const auto of = [&](const char* name) { return trait_descent(graph, graph.number.at(name), means); };
    const auto x = of("X").at(0);
    EXPECT_FALSE(x.own);
    EXPECT_FALSE(x.of(Relative::seed).mean);
    EXPECT_EQ(x.of(Relative::seed_seed).mean->mean, 8);
    EXPECT_EQ(x.of(Relative::seed_pollen).mean->mean, 4);
    EXPECT_EQ(x.of(Relative::pollen).mean->mean, 7);
    EXPECT_TRUE(x.of(Relative::pollen).mean->by_blend);
    EXPECT_EQ(x.of(Relative::pollen_seed).node, -1);
    EXPECT_EQ(of("Red X").at(0).of(Relative::seed).node, graph.number.at("M"));
    const auto y = of("Y").at(0);
    EXPECT_EQ(y.of(Relative::seed).node, graph.number.at("Red X"));
    EXPECT_EQ(y.of(Relative::seed_pollen).mean->mean, 7);
    EXPECT_EQ(y.of(Relative::pollen).node, -1);
    EXPECT_TRUE(of("C").empty());
}

}  // namespace
}  // namespace pipward::lineage
