// SPDX-License-Identifier: MIT
#include "pipward/intake/field_mapping.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "pipward/book/heading.h"
#include "pipward/book/schema.h"
#include "pipward/intake/layer_columns.h"

namespace pipward::intake {
namespace {

FieldSample field(const std::string& name, std::vector<std::string> texts = {"7"}) {
    return {name, std::move(texts)};
}

FieldGoal guessed(const std::string& name, std::vector<std::string> texts = {"7"},
                  const std::string& table = "tree") {
    return guess_mapping(table, {field(name, std::move(texts))}, {}, true).goals.at(0);
}

TEST(FieldWord, LooksPastCapitalsBlanksAndAccents) {
    EXPECT_EQ(book::field_word("Tree_No."), "treeno");
    EXPECT_EQ(book::field_word("planted on"), "plantedon");
    EXPECT_EQ(book::field_word("H\u00f6he (m)"), "hohem");
    EXPECT_EQ(book::field_word("Vari\u00e9t\u00e9"), "variete");
    EXPECT_EQ(book::field_word("__"), "");
}

TEST(AdoptWords, AreFoldedAndNameColumnsOfTheSchema) {
    for (const auto& column : layer_columns()) {
        for (const auto word : column.words) {
            EXPECT_EQ(book::field_word(word), word);
        }
        if (column.table != place_table) {
            const auto* table = book::find_book_table(column.table);
            ASSERT_NE(table, nullptr) << column.table;
            EXPECT_NE(book::find_column(*table, column.name), nullptr) << column.name;
        }
    }
}

TEST(AdoptWords, NameEveryColumnOfTheTablesThatAreAdopted) {
    for (const auto table : imported_tables()) {
        for (const auto& column : book::find_book_table(table)->columns) {
            EXPECT_EQ(column_meant(std::string(table), column.name),
                      std::string(table) + "." + std::string(column.name));
        }
    }
}

TEST(GuessMapping, KnowsTradeWordsInAnyWriting) {
    for (const auto* name : {"label", "Tag", "TREE_NUMBER", "Tree no."}) {
        EXPECT_EQ(guessed(name).column, "tree.label") << name;
    }
    for (const auto* name : {"variety", "Cultivar", "ACCESSION", "Sorte"}) {
        EXPECT_EQ(guessed(name).column, "tree.accession") << name;
    }
    EXPECT_EQ(guessed("Planting date", {"2020-01-02"}).column, "tree.planted_on");
    EXPECT_EQ(guessed("S alleles", {"S2 S3"}).column, "accession.s_alleles");
    EXPECT_EQ(guessed("Elevation").column, "tree.elevation_m");
    EXPECT_EQ(guessed("row").by, GuessedBy::same_name);
    EXPECT_EQ(guessed("Row No").by, GuessedBy::word);
}

TEST(GuessMapping, TakesNamesThatAreCutShortOrSomeLettersOff) {
    const auto cut = guessed("PLANTING_D", {"2020-01-02"});
    EXPECT_EQ(cut.column, "tree.planted_on");
    EXPECT_EQ(cut.by, GuessedBy::cut_short);
    const auto near = guessed("Rootstok", {"M9"});
    EXPECT_EQ(near.column, "tree.rootstock");
    EXPECT_EQ(near.by, GuessedBy::near_word);
    EXPECT_EQ(near.letters_off, 1);
    EXPECT_EQ(guessed("Rxxtstxk", {"M9"}).column, "");
    EXPECT_EQ(guessed("raw").column, "") << "a word of three letters is never guessed from another";
}

TEST(GuessMapping, LeavesANameThatStandsAsNearToTwoColumns) {
    EXPECT_EQ(guessed("plant", {"2020-01-02"}).column, "") << "plant id, or planted";
}

TEST(GuessMapping, LeavesAFieldMostOfWhoseValuesTheColumnCannotHold) {
    EXPECT_EQ(guessed("position", {"gate end", "middle", "3"}).column, "");
    EXPECT_EQ(guessed("position", {"1", "2", "by the gate"}).column, "tree.position");
    EXPECT_EQ(guessed("status", {"alive", "dead"}).column, "");
}

TEST(GuessMapping, GivesAColumnToOneFieldAndSaysToWhich) {
    const auto mapping = guess_mapping("tree", {field("id"), field("Tree label"), field("tag")}, {}, false);
    EXPECT_EQ(mapping.goals[1].column, "tree.label");
    EXPECT_EQ(mapping.goals[0].column, "");
    EXPECT_EQ(mapping.goals[0].instead, "Tree label");
    EXPECT_EQ(mapping.goals[2].instead, "Tree label");
}

TEST(GuessMapping, KnowsAccessionsByTheirValues) {
    const auto mapping =
        guess_mapping("tree", {field("label", {"a", "b"}), field("what", {"Wrenlea", "owlcombe", "Wrenlea"})},
                      {"wrenlea", "owlcombe"}, false);
    EXPECT_EQ(mapping.goals[1].column, "tree.accession");
    EXPECT_EQ(mapping.goals[1].by, GuessedBy::values);
}

TEST(GuessMapping, LooksForCoordinatesOnlyWhereALayerHasNoGeometry) {
    const std::vector<FieldSample> fields{field("label", {"a"}), field("lon", {"9,3"}),
                                          field("lat", {"48.1"})};
    EXPECT_NE(guess_mapping("tree", fields, {}, true).to("place.x"), nullptr);
    EXPECT_EQ(guess_mapping("tree", fields, {}, false).to("place.x"), nullptr);
}

TEST(GuessTable, SeesWhatALayerIsFor) {
    EXPECT_EQ(guess_table({field("name")}, LayerShape::lines), "tree_row");
    EXPECT_EQ(guess_table({field("name")}, LayerShape::areas), "block");
    EXPECT_EQ(guess_table({field("name")}, LayerShape::points), "tree");
    EXPECT_EQ(guess_table({field("variety"), field("s_alleles", {"S2"}), field("mother")}, LayerShape::none),
              "accession");
    EXPECT_EQ(guess_table({field("tag"), field("variety"), field("row"), field("lat"), field("lon")},
                          LayerShape::none),
              "tree");
}

FieldMapping corrected(const Corrections& corrections, Findings& findings) {
    auto mapping =
        guess_mapping("tree", {field("tag"), field("id"), field("Site"), field("Memo", {"x"})}, {}, false);
    correct(mapping, corrections, "map", findings);
    return mapping;
}

TEST(CorrectMapping, PutsTheUsersWordFirst) {
    Findings findings;
    const auto mapping = corrected({{"ID", "Label"}, {"Site", "tree.remark"}, {"memo", "-"}}, findings);
    EXPECT_TRUE(findings.empty());
    EXPECT_EQ(mapping.goals[1].column, "tree.label");
    EXPECT_EQ(mapping.goals[1].by, GuessedBy::given);
    EXPECT_EQ(mapping.goals[0].column, "") << "the guessed one gives way";
    EXPECT_EQ(mapping.goals[0].instead, "id");
    EXPECT_EQ(mapping.goals[2].column, "tree.remark");
    EXPECT_EQ(mapping.goals[3].column, "");
}

TEST(CorrectMapping, LetsSeveralFieldsGoToTheRemark) {
    Findings findings;
    const auto mapping = corrected({{"Site", "remark"}, {"Memo", "remark"}}, findings);
    EXPECT_TRUE(findings.empty());
    EXPECT_EQ(mapping.goals[2].column, "tree.remark");
    EXPECT_EQ(mapping.goals[3].column, "tree.remark");
}

TEST(CorrectMapping, TellsEverythingThatCannotBe) {
    Findings findings;
    corrected({{"Tagg", "label"}, {"id", "colour"}, {"tag", "row"}, {"Site", "row"}}, findings);
    ASSERT_EQ(findings.size(), 3U);
    EXPECT_EQ(to_text(findings[0]),
              "error: map = Tagg: The layer has no field of this name. Did you mean \"tag\"?");
    EXPECT_EQ(findings[1].value, "colour");
    EXPECT_EQ(findings[2].value, "Site");
}

}  // namespace
}  // namespace pipward::intake
