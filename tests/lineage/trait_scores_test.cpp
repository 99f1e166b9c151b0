// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_scores.h"

#include <gtest/gtest.h>

#include "lineage/pedigrees.h"

namespace pipward::lineage {
namespace {

void score(Orchard& orchard, const std::string& accession, const std::string& trait, double points) {
    Tree tree;
    tree.label = "T-" + accession;
    tree.accession = accession;
    orchard.trees.push_back(tree);
    TraitScore made;
    made.tree = tree.label;
    made.trait = trait;
    made.score = points;
    made.scored_on = *parse_iso_day("2025-09-01");
    orchard.trait_scores.push_back(made);
}

Orchard made_orchard() {
    testing::Pedigree pedigree;
    pedigree.add("Mother");
    pedigree.add("Father");
    pedigree.add("Child", "Mother", "Father");
    pedigree.add("Half", "Mother");
    Orchard orchard;
    orchard.accessions = pedigree.accessions;
    score(orchard, "Mother", "taste", 7);
    score(orchard, "Child", "scab", 2);
    return orchard;
}

TraitDescent taste_of(const PedigreeGraph& graph, const Orchard& orchard, const std::string& name) {
    const auto means = trait_means(orchard.trees, scores_until(orchard, *parse_iso_day("2026-01-01")));
    for (const auto& descent : trait_descent(graph, graph.number.at(name), means)) {
        if (descent.trait == "taste") {
            return descent;
        }
    }
    throw std::runtime_error("no taste of " + name);
}

TEST(ScoredTraits, AllAreMeantByAll) {
    Findings findings;
    EXPECT_EQ(scored_traits(made_orchard(), "all", "key", findings),
              (std::vector<std::string>{"scab", "taste"}));
    EXPECT_TRUE(findings.empty());
}

TEST(ScoredTraits, OneThatNobodyScoredIsAnErrorThatNamesTheOthers) {
    Findings findings;
    (void)scored_traits(made_orchard(), "taste, crunch", "traits", findings);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].field, "traits");
    EXPECT_EQ(findings[0].value, "crunch");
    EXPECT_EQ(findings[0].remedy.text(), "The book has scores of: scab, taste.");
}

TEST(TraitLines, ComeByPlaceInTheGraph) {
    const auto orchard = made_orchard();
    const auto graph = pedigree_graph(orchard.accessions, {});
    const auto lines = trait_lines(graph, trait_means(orchard.trees, orchard.trait_scores), {"taste"});
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines.begin()->first, graph.number.at("Mother"));
    EXPECT_EQ(lines.begin()->second.at(0).text(), "taste 7 (1 tree)");
}

TEST(SeenIn, TellsWhoHasItWhoWasNotScoredAndWhoIsUnknown) {
    const auto orchard = made_orchard();
    const auto graph = pedigree_graph(orchard.accessions, {});
    EXPECT_EQ(seen_in_words(graph, taste_of(graph, orchard, "Child")).text(),
              "Mother 7 (1 tree); Father not scored");
    EXPECT_EQ(seen_in_words(graph, taste_of(graph, orchard, "Half")).text(),
              "Mother 7 (1 tree); pollen parent unknown");
}

TEST(ParentsAndCrossed, HasParentsAndWhatStandsInAGoal) {
    auto orchard = made_orchard();
    CrossGoal goal;
    goal.seed_parent = "Half";
    goal.pollen_parent = "Elsewhere";
    orchard.goals = {goal};
    const auto graph = pedigree_graph(orchard.accessions, {});
    EXPECT_EQ(parents_and_crossed(orchard, graph),
              (std::vector{graph.number.at("Mother"), graph.number.at("Father"), graph.number.at("Half")}));
}

}  // namespace
}  // namespace pipward::lineage
