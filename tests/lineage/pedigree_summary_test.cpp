// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_summary.h"

#include <gtest/gtest.h>

#include <span>

#include "lineage/pedigrees.h"

namespace pipward::lineage {
namespace {

struct Line {
    testing::Pedigree made;

    Line() {
        made.add("Gran");
        made.add("Mother", "Gran");
        made.add("Father");
        made.add("Child", "Mother", "Father");
        made.add_sport("Red Child", "Child");
        made.add("Late", "Child", "Gran");
    }
    PedigreeGraph graph() const { return pedigree_graph(made.accessions, made.blends); }
};

std::string summary(const PedigreeGraph& graph, const std::string& name) {
    const int subject = graph.number.at(name);
    return pedigree_summary(graph, subject, ancestor_shares(graph, subject),
                            descendants_of(graph, subject).size())
        .text();
}

TEST(LineSummary, TellsFoundersUnknownPartAndDescendants) {
    const Line line;
    EXPECT_EQ(summary(line.graph(), "Child"),
              "Child descends from 3 ancestors and is expected to have 50 % of Father, 25 % of Gran. "
              "From unknown parents: 25 %. Descendants in the book: 2.");
}

TEST(LineSummary, SaysWhereNoParentIsRecorded) {
    const Line line;
    EXPECT_EQ(summary(line.graph(), "Father").find("No parent of Father is recorded."), 0U);
}

TEST(ShareNote, TellsOfAParentThatIsNotKnown) {
    const Line line;
    const auto graph = line.graph();
    const auto shares = ancestor_shares(graph, graph.number.at("Child"));
    for (const auto& share : std::span(shares).subspan(1)) {  // the first is itself
        const bool is_mother = graph.nodes[share.node].name == "Mother";
        EXPECT_EQ(share_note(graph, share).text(), is_mother ? "One of its parents is not known." : "");
    }
}

TEST(Descendants, GoByTheShortestWayThenByName) {
    const Line line;
    const auto graph = line.graph();
    std::vector<std::string> names;
    for (const auto& descendant : descendants_of(graph, graph.number.at("Gran"))) {
        names.push_back(graph.nodes[descendant.node].name + " " + std::to_string(descendant.generation));
    }
    EXPECT_EQ(names, (std::vector<std::string>{"Late 1", "Mother 1", "Child 2", "Red Child 2"}));
}

TEST(Descendants, HaveWhatShareTheySay) {
    const Line line;
    const auto graph = line.graph();
    for (const auto& descendant : descendants_of(graph, graph.number.at("Mother"))) {
        EXPECT_DOUBLE_EQ(descendant.share,
                         shares_of_ancestor(graph, graph.number.at("Mother"))[descendant.node]);
    }
}

}  // namespace
}  // namespace pipward::lineage
