// SPDX-License-Identifier: MIT
// Purdy notation against the two files lineage-purdy.txt, and what cannot be read.
#include "pipward/lineage/cross_notation.h"

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <sstream>

#include "paths.h"

namespace pipward::lineage {
namespace {

std::vector<std::string> parts(const std::string& line) {
    std::vector<std::string> found;
    std::istringstream text(line);
    for (std::string part; std::getline(text, part, '|');) {
        const auto first = part.find_first_not_of(' ');
        found.push_back(part.substr(first, part.find_last_not_of(' ') - first + 1));
    }
    return found;
}

std::vector<std::string> lines_of(const std::string& kind) {
    std::vector<std::string> lines;
    for (const auto& path :
         {testing::oracle_file("lineage-purdy.txt"), testing::regression_file("lineage-purdy.txt")}) {
        std::ifstream file(path);
        for (std::string line; std::getline(file, line);) {
            if (line.starts_with(kind + " ")) {
                lines.push_back(line.substr(kind.size() + 1));
            }
        }
    }
    EXPECT_FALSE(lines.empty()) << kind;
    return lines;
}

void add_shares(const CrossTree& tree, double share, std::map<std::string, double>& shares) {
    if (tree.parents.empty()) {
        shares[tree.name] += share;
    }
    for (const auto& parent : tree.parents) {
        add_shares(parent, share / 2, shares);
    }
}

std::map<std::string, double> shares_of(const std::string& text) {
    std::map<std::string, double> shares;
    add_shares(read_purdy(text).tree, 1, shares);
    return shares;
}

TEST(CrossNotation, ReadsAndPrintsThePublishedStrings) {
    for (const auto& line : lines_of("purdy")) {
        const auto wanted = parts(line);
        const auto read = read_purdy(wanted.at(0));
        EXPECT_EQ(read.trouble, "") << line;
        EXPECT_EQ(times_text(read.tree), wanted.at(1));
        EXPECT_EQ(purdy_text(read.tree, read.style), wanted.at(0));
        EXPECT_EQ(read_cross(wanted.at(1)).tree, read.tree) << line;
    }
}

TEST(CrossNotation, TakesOtherSpellingsAndPrintsOne) {
    for (const auto& line : lines_of("same")) {
        const auto wanted = parts(line);
        EXPECT_EQ(purdy_text(read_purdy(wanted.at(0)).tree), wanted.at(1)) << line;
    }
}

TEST(CrossNotation, SharesOfLeavesAreThePublishedCrosses) {
    const auto scout = parts(lines_of("purdy").front()).front();
    const auto shares = shares_of(scout);
    std::vector<std::string> order;
    for (const auto& line : lines_of("leaf")) {
        const auto end = line.rfind(' ');
        order.push_back(line.substr(0, end));
        EXPECT_EQ(shares.at(order.back()), std::stod(line.substr(end)));
    }
    EXPECT_EQ(leaves_of(read_purdy(scout).tree), order);
    for (const auto& line : lines_of("dose")) {
        std::istringstream words(line);
        std::string text;
        std::string name;
        double share = 0;
        words >> text >> name >> share;
        EXPECT_EQ(shares_of(text).at(name), share) << line;
    }
}

// Every tree of up to four leaves over two names, so that backcrosses come about in all ways.
std::vector<CrossTree> trees_of(int leaves) {
    std::vector<CrossTree> found;
    if (leaves == 1) {
        return {{"A", {}}, {"B/1 \"x\"*2", {}}};
    }
    for (int left = 1; left < leaves; ++left) {
        for (const auto& seed : trees_of(left)) {
            for (const auto& pollen : trees_of(leaves - left)) {
                found.push_back(crossed(seed, pollen));
            }
        }
    }
    return found;
}

TEST(CrossNotation, EveryTreeReadsBackTheSame) {
    for (int leaves = 1; leaves <= 5; ++leaves) {
        for (const auto& tree : trees_of(leaves)) {
            for (const auto style : {SlashStyle::doubled, SlashStyle::numbered}) {
                const auto text = purdy_text(tree, style);
                const auto read = read_purdy(text);
                EXPECT_EQ(read.trouble, "") << text;
                ASSERT_EQ(read.tree, tree) << text;
            }
        }
    }
}

TEST(CrossNotation, SaysWhyATextCannotBeRead) {
    const auto trouble = [](const char* text) { return read_cross(text).trouble.text(); };
    EXPECT_NE(trouble("A/B/C").find("Cross 1 stands more than once"), std::string::npos);
    EXPECT_EQ(trouble("A/"), "A parent has no name.");
    EXPECT_EQ(trouble("/B"), "A parent has no name.");
    EXPECT_EQ(trouble(""), "A parent has no name.");
    EXPECT_EQ(trouble("A*x/B"), "The doses of A cannot be read.");
    EXPECT_EQ(trouble("A*99/B"), "The doses of A cannot be read.");
    EXPECT_NE(trouble("A*2/B*2").find("only one"), std::string::npos);
    EXPECT_NE(trouble("A × B × C").find("parentheses"), std::string::npos);
    EXPECT_EQ(trouble("A × "), "A parent has no name.");
}

TEST(CrossNotation, ReadsTheBreedersCrossAndPassesOverWhatIsKnownOfAParent) {
    EXPECT_EQ(read_cross("Tansy Lane x Wrenlea").tree, crossed({"Tansy Lane", {}}, {"Wrenlea", {}}));
    EXPECT_EQ(read_cross("A (C × D) × B (A × unknown)").tree, crossed({"A", {}}, {"B", {}}));
    EXPECT_EQ(read_cross("Max x Felix").tree, crossed({"Max", {}}, {"Felix", {}}));
    EXPECT_EQ(read_cross("Wrenlea").tree, (CrossTree{"Wrenlea", {}}));
}

TEST(CrossNotation, WritesALineOfTheBook) {
    std::vector<Accession> all;
    const auto bred = [&](const char* name, std::optional<std::string> seed,
                          std::optional<std::string> pollen) {
        Accession accession;
        accession.name = name;
        accession.seed_parent = std::move(seed);
        accession.pollen_parent = std::move(pollen);
        all.push_back(accession);
    };
    bred("C", "A", "B");
    bred("D", "C", "B");
    bred("E", "D", {});
    bred("S", "never", "read");
    all.back().sport_of = "D";
    BlendMember member;
    member.name = "Mix";
    member.member = "A";
    bred("F", "S", "Mix");
    const std::vector<BlendMember> blends{member};
    const auto graph = pedigree_graph(all, blends);
    const auto purdy = [&](const char* name, int generations) {
        return purdy_text(cross_tree(graph, graph.number.at(name), generations, "unknown"));
    };
    EXPECT_EQ(purdy("D", 5), "A/B*2");
    EXPECT_EQ(purdy("D", 1), "C/B");
    EXPECT_EQ(purdy("E", 5), "A/B*2//unknown");
    EXPECT_EQ(purdy("F", 5), "A/B*2//Mix");
    EXPECT_EQ(purdy("A", 5), "A");
}

}  // namespace
}  // namespace pipward::lineage
