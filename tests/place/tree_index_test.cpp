// SPDX-License-Identifier: MIT
#include "pipward/place/tree_index.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "pipward/place/geo_uri.h"
#include "place/made_queries.h"
#include "place/made_trees.h"

namespace pipward::place {
namespace {

const TreeIndex& made_index() {
    static const TreeIndex index(testing::made_orchard());
    return index;
}

std::string label_of(const TreeIndex& index, const FoundTree& found) {
    return index.orchard().trees[found.tree].label;
}

std::string first(const std::string& query) {
    const auto found = made_index().find(query);
    return found.empty() ? "" : label_of(made_index(), found.front());
}

std::string why(const std::string& query) {
    const auto found = made_index().find(query);
    return found.empty() ? "" : to_text(found.front().match).text();
}

std::set<std::string> all(const std::string& query) {
    std::set<std::string> labels;
    for (const auto& found : made_index().find(query, 1000)) {
        labels.insert(label_of(made_index(), found));
    }
    return labels;
}

TEST(TreeIndex, FindsALabelHoweverItIsWritten) {
    for (const auto* query :
         {"UP-04-17", "up-04-17", " UP 04 17 ", "UP0417", "up-4-17", "UP–04–17", "Up/04/17"}) {
        EXPECT_EQ(first(query), "UP-04-17") << query;
        EXPECT_EQ(why(query), "label") << query;
    }
}

TEST(TreeIndex, FindsAPartOfALabel) {
    EXPECT_EQ(all("LO-01"), (std::set<std::string>{"LO-01-03", "LO-01-04"}));
    EXPECT_EQ(why("LO-01"), "part of label LO-01-03");
}

TEST(TreeIndex, FindsALabelWithASlipOnlyWhereNothingIsRight) {
    EXPECT_EQ(first("LO-01-O3"), "LO-01-03");
    EXPECT_EQ(why("LO-01-O3"), "label LO-01-03, 1 letter differs");
    EXPECT_EQ(all("LO-01-03"), std::set<std::string>{"LO-01-03"});
}

TEST(TreeIndex, PutsTheLikeliestMisreadingFirst) {
    EXPECT_EQ(first("UP-04-l2"), "UP-04-12");
    EXPECT_EQ(first("UP-O4-I2"), "UP-04-12");
    EXPECT_EQ(first("Upper row 4 tree l2"), "UP-04-12");
    EXPECT_EQ(first("16-O1-1S"), "UP-04-20");
}

TEST(TreeIndex, FindsAddressesInWordsInAnyOrderAndLanguage) {
    for (const auto* query :
         {"row 4 tree 12 upper", "4/12 Upper", "upper r4 p12", "Upper IV 12", "Reihe 4 Baum 12 Upper",
          "12. Baum in Reihe 4, Quartier Upper", "the twelfth tree of the fourth row in Upper",
          "Uper row 4 tree 12", "rang 4 arbre 12 Upper", "upper4/12", "12 04 UP x"}) {
        const bool nonsense = std::string_view(query).ends_with('x');
        EXPECT_EQ(first(query), nonsense ? "" : "UP-04-12") << query;
    }
}

TEST(TreeIndex, FindsSeveralFieldsAtOnce) {
    Orchard orchard = testing::made_orchard();
    orchard.trees[1].rootstock = "M9";
    orchard.trees[1].planted_on = make_day({2019, 3, 1});
    orchard.trees[2].rootstock = "MM 106";
    orchard.trees[2].planted_on = make_day({2015, 3, 1});
    const TreeIndex index(orchard);
    const auto label = [&](const std::string& query) {
        const auto found = index.find(query);
        return found.empty() ? ""
                             : label_of(index, found.front()) + ": " + to_text(found.front().match).text();
    };
    EXPECT_EQ(label("Tansy Lane on m9, planted 2019"),
              "UP-01-02: accession Tansy Lane, rootstock M9, planted 2019");
    EXPECT_EQ(label("Upper mm106"), "UP-01-03: block Upper, row 1, position 3, rootstock MM 106");
    EXPECT_EQ(label("wrenlea in Upper row 1"), "UP-01-03: accession Wrenlea, block Upper, row 1, position 3");
    EXPECT_EQ(label("M9"), "UP-01-02: rootstock M9");
    EXPECT_EQ(label("planted 2015"), "UP-01-03: planted 2015");
    EXPECT_EQ(label("Tansy Lane mm106"), "");
}

TEST(TreeIndex, FindsTheTreesOfLots) {
    Orchard orchard = testing::made_orchard();
    PollenLot lot;
    lot.code = "P-26-01";
    lot.donor = "LF 08-041";
    orchard.pollen_lots = {lot};
    SeedLot seed;
    seed.code = "S-16-01";
    seed.cross = "16-01";
    orchard.seed_lots = {seed};
    const TreeIndex index(orchard);
    const auto found = index.find("pollen lot P-26-O1");
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(label_of(index, found.front()), "LO-01-04");
    EXPECT_EQ(to_text(found.front().match), "pollen lot P-26-01, 1 letter differs");
    EXPECT_EQ(index.find("S-16-01", 100).size(), 20U);
}

TEST(TreeIndex, FindsTheTreeAtAPlace) {
    Orchard orchard = testing::made_orchard();
    orchard.crs = "EPSG:25832";
    for (auto& tree : orchard.trees) {
        tree.at->x += 522000;
        tree.at->y += 5331000;
    }
    const TreeIndex index(orchard);
    const auto there = ToEarth(orchard.crs)(*orchard.trees[4].at).value();
    for (const auto& query :
         {geo_uri(there), geo_uri(there, Metres{3}), fmt::format("{:.7f}, {:.7f}", there.lat, there.lon),
          fmt::format("{:.7f}N {:.7f}E", there.lat, there.lon), std::string("522040, 5331004")}) {
        const auto found = index.find(query);
        ASSERT_FALSE(found.empty()) << query;
        EXPECT_EQ(label_of(index, found.front()), "LO-01-04") << query;
        EXPECT_EQ(found.front().match.kind, MatchKind::nearness);
    }
    EXPECT_TRUE(index.find("geo:0,0").empty());
}

TEST(TreeIndex, FindsTheTreeOfATag) {
    EXPECT_EQ(first("16-01-a"), "UP-01-02");
    EXPECT_EQ(why("16-01-A"), "tag 16-01-a");
}

TEST(TreeIndex, FindsAccessionsByNamePartAndMisspelling) {
    EXPECT_EQ(all("tansy lane"), (std::set<std::string>{"UP-01-01", "UP-01-02"}));
    EXPECT_EQ(why("tansy lane"), "accession Tansy Lane");
    EXPECT_EQ(why("tansy"), "part of accession Tansy Lane");
    EXPECT_EQ(why("Wernlea"), "accession Wrenlea, 1 letter differs");
    EXPECT_EQ(why("tanzy lane"), "accession Tansy Lane, 1 letter differs");
    EXPECT_EQ(first("ete dorme"), "LO-01-03");
    EXPECT_EQ(first("ÉTÉ D’ORME"), "LO-01-03");
    EXPECT_EQ(first("lf08041"), "LO-01-04");
}

TEST(TreeIndex, FindsTheNthSeedlingOfACross) {
    for (const auto* query :
         {"Tansy Lane x Wrenlea 17", "Tansy Lane × Wrenlea no. 17", "tansy lane×wrenlea #17",
          "tansy x wren 17", "Tansy Lane X Wrenlea nr 017", "Tansy Lane * Wrenlea seedling 17"}) {
        EXPECT_EQ(first(query), "UP-04-22") << query;
        EXPECT_EQ(why(query), "seedling of Tansy Lane × Wrenlea no. 17") << query;
        EXPECT_EQ(made_index().find(query)[0].tree, made_index().find("16-01-17")[0].tree) << query;
    }
}

TEST(TreeIndex, FindsSeedlingsThatAreNumberedOnTheirLabels) {
    EXPECT_EQ(first("Wrenlea × Tansy Lane no. 5"), "K-5");
    EXPECT_EQ(first("18-02 no. 5"), "K-5");
    EXPECT_EQ(first("16-01 no. 5"), "UP-04-10");
}

TEST(TreeIndex, PutsParentsTheOtherWayRoundSecond) {
    const auto found = made_index().find("Wrenlea x Tansy Lane 7");
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(label_of(made_index(), found[0]), "K-7");
    EXPECT_EQ(label_of(made_index(), found[1]), "UP-04-12");
    EXPECT_GT(found[0].score, found[1].score);
}

TEST(TreeIndex, FindsAWholeFamilyAndParentsWhoseNamesEndInDigits) {
    EXPECT_EQ(all("Tansy Lane x Wrenlea").size(), 40U);  // both ways round
    EXPECT_EQ(first("Tansy Lane x Old Mix"), "LO-01-04");
    EXPECT_EQ(first("Tansy Lane x Old Mix 41"), "LO-01-04");
}

TEST(TreeIndex, FindsTheTreesOfACrossCode) {
    EXPECT_EQ(why("18-02"), "accession 18-02");
    EXPECT_EQ(all("16-01").size(), 21U);  // twenty seedlings, and the tree that was worked
    EXPECT_EQ(why("26-01"), "pollinated for cross 26-01");
    EXPECT_EQ(first("26-01"), "UP-01-03");
    EXPECT_EQ(why("27-01"), "seed parent of cross 27-01");
    EXPECT_EQ(first("27-01"), "LO-01-03");
}

TEST(TreeIndex, FindsRowAndPosition) {
    for (const auto* query : {"Upper 4 12", "U4-12", "block Upper, row 4, position 12", "upper row 4 pos. 12",
                              "row 4 12", "Upper 04/12"}) {
        EXPECT_EQ(first(query), "UP-04-12") << query;
        EXPECT_EQ(why(query), "block Upper, row 4, position 12") << query;
    }
    EXPECT_EQ(first("Lower row 1 4"), "LO-01-04");
    EXPECT_EQ(all("row 1 3"), (std::set<std::string>{"LO-01-03", "UP-01-03"}));
    EXPECT_EQ(all("Lower row 1"), (std::set<std::string>{"LO-01-03", "LO-01-04"}));
}

TEST(TreeIndex, FindsWordsOfObservations) {
    EXPECT_EQ(first("voles"), "UP-01-01");
    EXPECT_EQ(first("canker river"), "LO-01-03");
    EXPECT_EQ(why("voles"), "remark: \"Roots eaten by voles.\"");
    EXPECT_EQ(first("iver"), "");  // not the middle of a word
}

TEST(TreeIndex, PutsStandingTreesBeforeRemovedOnesAndNearOnesFirst) {
    const auto found_on = [](Day day) {
        std::vector<std::string> labels;
        for (const auto& one : made_index().find("Tansy Lane", 20, {}, day)) {
            labels.push_back(label_of(made_index(), one));
        }
        return labels;
    };
    const Day removed = make_day({2021, 11, 18}).value();
    EXPECT_EQ(found_on(removed), (std::vector<std::string>{"UP-01-02", "UP-01-01"}));
    EXPECT_EQ(found_on(removed - 1), (std::vector<std::string>{"UP-01-01", "UP-01-02"}));
    const auto near = made_index().find("18-02", 1, OwnPosition{{148, 8, {}}});
    EXPECT_EQ(label_of(made_index(), near[0]), "K-15");
}

TEST(TreeIndex, TellsTheNearestTrees) {
    const auto near = made_index().nearest(OwnPosition{{151, 8, {}}}, 3);
    ASSERT_EQ(near.size(), 3U);
    EXPECT_EQ(label_of(made_index(), near[0]), "K-15");
    EXPECT_EQ(label_of(made_index(), near[1]), "UP-04-15");
}

TEST(TreeIndex, RanksEveryTreesOwnLabelFirst) {
    for (const auto& tree : made_index().orchard().trees) {
        const auto found = made_index().find(tree.label);
        ASSERT_FALSE(found.empty()) << tree.label;
        EXPECT_EQ(label_of(made_index(), found.front()), tree.label);
        EXPECT_EQ(found.front().score, 1.0) << tree.label;
    }
}

TEST(TreeIndex, RanksStrangeLabelsFirstToo) {
    Orchard orchard;
    const std::vector<std::string> labels{"A 1",     "A1",       "a1",          "A-01",
                                          "A-001",   "--",       "-",           "🍎",
                                          "🍎🍎",      "\xFF\xFE", "' OR 1=1 --", "Ä1",
                                          "A×1",     "row 3 12", "A x B 17",    std::string(10000, 'q'),
                                          "16-01-a", "x"};
    for (const auto& label : labels) {
        orchard.trees.push_back(testing::made_tree(label, "A1", "A", "1", 1));
    }
    orchard.pollinations = {testing::made_work("16-01-a", "16-01", "A 1"), testing::made_work("x", "", "A1")};
    const TreeIndex index(orchard);
    for (const auto& label : labels) {
        const auto found = index.find(label);
        ASSERT_FALSE(found.empty()) << label.substr(0, 40);
        EXPECT_EQ(label_of(index, found.front()), label) << label.substr(0, 40);
    }
}

std::vector<std::string> odd_queries() {
    std::vector<std::string> queries{"",
                                     " ",
                                     "\t\n",
                                     "🍎 × 🍐 no. 7",
                                     "'; DROP TABLE tree; --",
                                     "\"\\",
                                     "%_*?[](){}",
                                     "\xFF\xFE\xC3",
                                     "×",
                                     " x ",
                                     "x x x",
                                     "a x ",
                                     " x b 7",
                                     "no. no. no.",
                                     "row",
                                     "row row",
                                     "0",
                                     "-0",
                                     "99999999999999999999 99999999999999999999",
                                     "\xE2\x82",
                                     "a\n1\n"};
    for (const auto* part : {"a", "1", " ", "x ", "a x b ", "é", "🍎", "row 1 ", "\xFF", "-", "UP-04-"}) {
        std::string query;
        while (query.size() < 10000) {
            query += part;
        }
        queries.push_back(query);
    }
    for (int byte = 0; byte < 256; ++byte) {
        queries.emplace_back(1, static_cast<char>(byte));
        queries.push_back("UP" + std::string(1, static_cast<char>(byte)) + "17");
    }
    return queries;
}

TEST(TreeIndex, TakesAnyBytes) {
    const TreeIndex nothing{Orchard{}};
    for (const auto& query : odd_queries()) {
        for (const auto* index : {&made_index(), &nothing}) {
            std::vector<FoundTree> found;
            ASSERT_NO_THROW(found = index->find(query)) << query.substr(0, 40);
            ASSERT_NO_THROW((void)index->names_like(query)) << query.substr(0, 40);
            EXPECT_LE(found.size(), 20U);
            EXPECT_TRUE(std::ranges::is_sorted(found, std::greater{}, &FoundTree::score));
            for (const auto& one : found) {
                EXPECT_TRUE(one.score >= 0 && one.score <= 1) << one.score;
                EXPECT_FALSE(to_text(one.match).empty());
            }
        }
    }
    EXPECT_TRUE(made_index().find("").empty());
    EXPECT_TRUE(made_index().find(" \t").empty());
}

TEST(TreeIndex, OffersTheNearestNamesWhereNothingIsFound) {
    EXPECT_TRUE(made_index().find("Trumpington").empty());
    EXPECT_EQ(made_index().names_like("Renlee", 1), std::vector<std::string>{"Wrenlea"});
    EXPECT_EQ(made_index().names_like("Trumpington").size(), 3U);
    EXPECT_TRUE(made_index().names_like("Renlee", 0).empty());
}

// How often on a larger orchard, and on more of them: find_report prints it.
TEST(TreeIndex, FindsWhatIsMeantByMostCorruptedTexts) {
    const auto orchard = testing::large_orchard({.blocks = 6, .rows = 15, .positions = 20, .cultivars = 100});
    const TreeIndex index(orchard);
    int asked = 0;
    int came_first = 0;
    int among_three = 0;
    for (const auto& query : testing::QueryMaker(orchard, 7).all(12)) {
        const auto found = index.find(query.text, 3);
        const auto meant = [&](const FoundTree& one) { return query.meant.contains(one.tree); };
        ++asked;
        came_first += !found.empty() && meant(found.front()) ? 1 : 0;
        among_three += std::ranges::any_of(found, meant) ? 1 : 0;
    }
    EXPECT_GE(asked, 300);
    EXPECT_GE(came_first, 0.93 * asked);
    EXPECT_GE(among_three, 0.98 * asked);
}

TEST(TreeIndex, FindsNothingForNonsense) {
    const auto orchard = testing::large_orchard({.blocks = 6, .rows = 15, .positions = 20, .cultivars = 100});
    const TreeIndex index(orchard);
    for (const auto& text : testing::QueryMaker::nonsense()) {
        EXPECT_TRUE(index.find(text).empty()) << text;
    }
}

TEST(TreeIndex, GivesTheSameTwice) {
    for (const auto* query : {"1", "UP", "16-01", "tansy", "row 1"}) {
        const auto once = made_index().find(query);
        const auto again = TreeIndex(testing::made_orchard()).find(query);
        ASSERT_EQ(once.size(), again.size());
        for (std::size_t i = 0; i < once.size(); ++i) {
            EXPECT_EQ(once[i].tree, again[i].tree) << query;
        }
    }
}

}  // namespace
}  // namespace pipward::place
