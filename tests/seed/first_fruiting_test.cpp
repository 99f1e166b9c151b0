// SPDX-License-Identifier: MIT
// The years are common practice without a source; what is tested here is the calculating with them.
#include "pipward/seed/first_fruiting.h"
#include "days.h"

#include <gtest/gtest.h>

#include "pipward/seed/family_scores.h"

namespace pipward::seed {
namespace {

using testing::day_of;

Accession accession(std::string name, std::string species = {}) {
    Accession made;
    made.name = std::move(name);
    if (!species.empty()) {
        made.species = std::move(species);
    }
    return made;
}

Accession seedling(std::string name) {
    auto made = accession(std::move(name));
    made.kind = AccessionKind::seedling;
    made.seed_parent = "Ember";
    made.pollen_parent = "Sorrel";
    return made;
}

Tree tree(std::string label, std::string accession_name, const char* planted) {
    Tree made;
    made.label = std::move(label);
    made.accession = std::move(accession_name);
    made.purpose = TreePurpose::seedling;
    made.planted_on = day_of(planted);
    return made;
}

Orchard orchard() {
    Orchard made;
    made.accessions = {accession("Ember", "Malus domestica"), accession("Sorrel"), seedling("20-01-001"),
                       seedling("20-01-002")};
    CrossGoal goal;
    goal.code = "20-01";
    goal.season = {2020};
    goal.seed_parent = "Ember";
    goal.pollen_parent = "Sorrel";
    made.goals = {goal};
    made.trees = {tree("A", "20-01-001", "2022-04-10"), tree("B", "20-01-002", "2022-04-10")};
    return made;
}

FirstFruit first_of(const Orchard& book, int year, const char* as_of = "2026-03-01") {
    return first_fruits(book, year, day_of(as_of)).seedlings.at(0);
}

TEST(FirstFruit, IsCountedFromTheSpringAfterTheCross) {
    const auto fruit = first_of(orchard(), 2026);
    EXPECT_EQ(fruit.sown, 2021);
    EXPECT_EQ(fruit.sown_by, SownBy::cross);
    EXPECT_EQ(fruit.expected, 2021 + apple_years);
    EXPECT_EQ(fruit.from, 2024);
    EXPECT_EQ(fruit.to, 2031);
    EXPECT_EQ(fruit.state, FruitState::due);
}

TEST(FirstFruit, GoesThroughItsStatesAsTheYearsPass) {
    const auto book = orchard();
    EXPECT_EQ(first_of(book, 2023).state, FruitState::young);
    EXPECT_EQ(first_of(book, 2025).state, FruitState::possible);
    EXPECT_EQ(first_of(book, 2028).state, FruitState::waiting);
    EXPECT_EQ(first_of(book, 2032).state, FruitState::overdue);
}

TEST(FirstFruit, PrefersTheCountsOfTheLotsAndFallsBackOnThePlanting) {
    auto book = orchard();
    SeedLot lot;
    lot.code = "S-1";
    lot.cross = "20-01";
    lot.seeds = 50;
    book.seed_lots = {lot};
    GerminationCount count;
    count.lot = "S-1";
    count.counted_on = day_of("2022-02-20");
    count.germinated = 4;
    book.germination_counts = {count};
    EXPECT_EQ(first_of(book, 2026).sown, 2022);
    book.goals.clear();
    EXPECT_EQ(first_of(book, 2026).sown_by, SownBy::planting);
    book.trees[0].planted_on.reset();
    const auto all = first_fruits(book, 2026, day_of("2026-03-01"));
    EXPECT_EQ(all.unknown, 1);
    EXPECT_EQ(all.seedlings.size(), 1U);
}

TEST(FirstFruit, ComesSoonerOnADwarfingStockAndLaterOnAPear) {
    auto book = orchard();
    book.trees[0].rootstock = "dwarfing";
    EXPECT_EQ(first_of(book, 2026).expected, 2021 + apple_years - years_off_on_dwarfing_stock);
    book.trees[0].rootstock = "own roots";
    book.accessions[0].species = "Pyrus communis";
    EXPECT_EQ(first_of(book, 2026).expected, 2021 + pear_years);
}

TEST(FirstFruit, IsNoLongerWaitedForWhereBloomOrAScoreWasSeen) {
    auto book = orchard();
    BloomObservation remark;
    remark.tree = "A";
    remark.observed_on = day_of("2025-05-02");
    remark.bbch = Bbch{65};
    book.bloom_observations = {remark};
    EXPECT_EQ(first_of(book, 2026).state, FruitState::bloomed);
    EXPECT_EQ(first_of(book, 2026).seen, 2025);
    EXPECT_NE(first_of(book, 2026, "2025-03-01").state, FruitState::bloomed)
        << "seen after the day asked from";
    book.bloom_observations[0].bbch = Bbch{54};
    EXPECT_NE(first_of(book, 2026).state, FruitState::bloomed) << "buds are no bloom yet";
}

TEST(FirstFruit, PassesOverTreesThatAreGoneOrNoSeedlings) {
    auto book = orchard();
    book.trees[0].removed_on = day_of("2025-11-01");
    book.trees[1].purpose = TreePurpose::parent;
    EXPECT_TRUE(first_fruits(book, 2026, day_of("2026-03-01")).seedlings.empty());
}

TraitScore score(std::string tree_label, const char* day, double value) {
    TraitScore made;
    made.tree = std::move(tree_label);
    made.scored_on = day_of(day);
    made.trait = "taste";
    made.score = value;
    return made;
}

TEST(FirstFruit, IsNotSeenInANurseryScoreOfMildew) {
    auto book = orchard();
    book.trait_scores = {score("A", "2023-07-01", 4)};
    book.trait_scores[0].trait = "mildew";
    EXPECT_FALSE(first_of(book, 2026).seen);
    book.trait_scores[0].trait = "taste";
    EXPECT_EQ(first_of(book, 2026).seen, 2023);
}

TEST(FirstFruit, ComesSoonerOnANamedDwarfingStockOnly) {
    auto book = orchard();
    for (const auto& [stock, dwarfed] : {std::pair{"M 9", true}, {"non-dwarfing", false}}) {
        book.trees[0].rootstock = stock;
        EXPECT_EQ(first_of(book, 2026).dwarfed, dwarfed) << stock;
    }
}

TEST(FamilyScores, AverageEachTreeFirst) {
    auto book = orchard();
    book.trees.push_back(tree("M", "Ember", "2010-04-01"));
    book.trait_scores = {score("A", "2025-09-20", 2), score("A", "2026-09-20", 4),
                         score("A", "2026-09-21", 6), score("B", "2025-09-20", 8),
                         score("M", "2025-09-20", 5)};
    const auto families = family_scores(book, day_of("2026-12-01"));
    ASSERT_EQ(families.size(), 1U);
    const auto& family = families[0];
    EXPECT_EQ(family.seedlings, 2);
    EXPECT_EQ(family.scored, 2);
    EXPECT_DOUBLE_EQ(family.mean, 6);  // of 4 and 8
    EXPECT_NEAR(*family.spread, 2.828427, 1e-6);
    EXPECT_EQ(family.highest, "B");
    EXPECT_EQ(family.years, 2);
    EXPECT_DOUBLE_EQ(*family.seed_parent_mean, 5);
    EXPECT_FALSE(family.pollen_parent_mean);
}

TEST(FamilyScores, HaveNoSpreadOfOneTree) {
    auto book = orchard();
    book.trait_scores = {score("A", "2025-09-20", 2)};
    EXPECT_FALSE(family_scores(book, day_of("2026-12-01")).front().spread);
    EXPECT_TRUE(family_scores(book, day_of("2025-01-01")).empty());
}

TEST(FruitReason, TellsWhatTheYearsAreCalculatedFrom) {
    const auto reason = fruit_reason(first_of(orchard(), 2026)).text();
    EXPECT_NE(reason.find("The cross is of 2020, its seed was sown the year after."), std::string::npos);
    EXPECT_NE(reason.find("Apple: 5 years to the first fruit as a rule"), std::string::npos);
}

TEST(FruitState, EachHasAWord) {
    for (const auto state : {FruitState::bloomed, FruitState::young, FruitState::possible, FruitState::due,
                             FruitState::waiting, FruitState::overdue}) {
        EXPECT_FALSE(to_word(state).empty());
    }
    EXPECT_EQ(to_word(FruitState::overdue), "overdue");
}

}  // namespace
}  // namespace pipward::seed
