// SPDX-License-Identifier: MIT
// A book dressed in another language: its words change, its columns and codes do not.
#include <gtest/gtest.h>

#include "bracketed.h"
#include "pipward/book/dressing.h"
#include "pipward/book/schema_words.h"
#include "pipward/dress/detail/phrase.h"
#include "pipward/dress/orchard_dress.h"
#include "pipward/dress/project_dress.h"

namespace pipward::dress {
namespace {

using testing::bracketed;
using testing::has_letters;
using testing::outside_brackets;

// Gathering and cutting, turned round and with an apostrophe.
std::string made_up(std::string_view form) {
    if (form == "row {}") {
        return "l'ordo {}";
    }
    if (form == "{} for {}") {
        return "{1}: {0}";
    }
    return form == "bag" ? "saco" : std::string(form);
}

TableShape task_shape() {
    return {"field_task", "Field work", "", true, {{"work", CellType::text, "", "Work", ""}}};
}

void expect_in_brackets(const std::string& text) {
    EXPECT_FALSE(has_letters(outside_brackets(text))) << text;
}

// A code, and units that stand beside it, may be the same in every language.
void expect_some_brackets(const std::string& text) {
    EXPECT_NE(text.find("⟦"), std::string::npos) << text;
}

TEST(DressInAnotherLanguage, SaysTitlesAliasesTabsLegendsAndRulesInIt) {
    for (const auto& table : book::book_tables()) {
        const auto dress = dress_of(table, bracketed);
        expect_in_brackets(dress.title);
        for (const auto& field : dress.fields) {
            expect_in_brackets(field.alias);
            expect_in_brackets(field.rule_words);
        }
        for (const auto& group : dress.groups) {
            expect_in_brackets(group.title);
        }
        for (const auto& rule : dress.rules) {
            expect_in_brackets(rule.words);
        }
    }
}

TEST(DressInAnotherLanguage, KeepsColumnsFiltersAndStoredValues) {
    for (const auto& table : book::book_tables()) {
        const auto english = dress_of(table);
        const auto other = dress_of(table, bracketed);
        ASSERT_EQ(other.fields.size(), english.fields.size());
        for (std::size_t i = 0; i < english.fields.size(); ++i) {
            EXPECT_EQ(other.fields[i].column, english.fields[i].column);
            EXPECT_EQ(other.fields[i].rule, english.fields[i].rule);
        }
        for (std::size_t i = 0; i < english.rules.size(); ++i) {
            EXPECT_EQ(other.rules[i].filter, english.rules[i].filter);
        }
    }
}

TEST(DressInAnotherLanguage, SaysChoicesInItAndStoresTheirCodes) {
    const auto dress = dress_of(*book::find_book_table("tree"), bracketed);
    const auto purpose = std::ranges::find(dress.fields, "purpose", &FieldDress::column);
    const auto& choices = std::get<PickList>(purpose->widget).choices;
    ASSERT_FALSE(choices.empty());
    EXPECT_EQ(choices.front().value, "parent");
    for (const auto& choice : choices) {
        expect_some_brackets(choice.meaning);
    }
}

TEST(DressInAnotherLanguage, NamesTheGroupsAndTheTitleOfTheMap) {
    book::BookLook look;
    std::vector<LayerDress> layers;
    for (const auto& table : book::book_tables()) {
        look.layers.push_back({std::string(table.name), ""});
        layers.push_back(dress_of(table, bracketed));
    }
    const auto map = season_map(look, layers, std::nullopt, "book.gpkg", bracketed);
    expect_in_brackets(map.title);
    for (const auto& group : map.groups) {
        expect_in_brackets(group.title);
    }
    for (const auto& relation : map.relations) {
        expect_in_brackets(relation.title);
    }
}

TEST(Phrase, IsWordsAndColumnsPutTogether) {
    const auto row = say("row {}", detail::computed(detail::column("name")));
    EXPECT_EQ(detail::phrase(row, in_english), R"('row ' || "name")");
    EXPECT_EQ(detail::phrase(row, made_up), R"('l''ordo ' || "name")");
    EXPECT_EQ(detail::phrase(say("decided"), in_english), "'decided'");
    EXPECT_EQ(detail::phrase({}, in_english), "''");
}

TEST(Phrase, FollowsALanguageThatTurnsItsPartsRound) {
    const auto words =
        say("{} for {}", detail::computed(detail::column("work")), detail::computed(detail::column("donor")));
    EXPECT_EQ(detail::phrase(words, in_english), R"("work" || ' for ' || "donor")");
    EXPECT_EQ(detail::phrase(words, made_up), R"("donor" || ': ' || "work")");
}

TEST(CodeWords, AreTheColumnWhereTheWordsAreTheCodes) {
    const std::vector<Sentence> codes{say("bag"), say("unbag")};
    EXPECT_EQ(detail::code_words("work", codes, in_english), R"("work")");
    EXPECT_EQ(detail::code_words("work", codes, made_up),
              R"(CASE WHEN "work" = 'bag' THEN 'saco' ELSE "work" END)");
}

TEST(CodeWords, StandInTheLabelsOfWork) {
    const auto label = dress_of(task_shape(), std::nullopt, made_up).label->expression;
    EXPECT_NE(label.find(R"("donor" || ': ' || CASE WHEN "work" = 'bag' THEN 'saco')"), std::string::npos)
        << label;
}

TEST(SchemaTexts, HoldEveryLabelAsItStandsInASentence) {
    const auto texts = book::schema_texts();
    for (const auto& table : book::book_tables()) {
        EXPECT_TRUE(texts.contains(std::string(table.title))) << table.title;
        for (const auto& column : table.columns) {
            EXPECT_TRUE(texts.contains(std::string(column.label))) << column.label;
            EXPECT_TRUE(texts.contains(book::inside_label(column))) << book::inside_label(column).text();
        }
    }
    EXPECT_EQ(book::inside_label(*book::find_column(*book::find_book_table("bloom_note"), "noted_on")),
              "noted on");
    EXPECT_EQ(book::inside_label(*book::find_column(*book::find_book_table("bloom_note"), "bbch")),
              "BBCH stage");
}

}  // namespace
}  // namespace pipward::dress
