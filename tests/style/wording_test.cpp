// SPDX-License-Identifier: MIT
// A book styled in another language: its words change, its columns and codes do not.
#include <gtest/gtest.h>

#include "bracketed.h"
#include "pipward/book/map_style.h"
#include "pipward/book/schema_words.h"
#include "pipward/style/detail/field_style.h"
#include "pipward/style/detail/phrase.h"
#include "pipward/style/orchard_style.h"
#include "pipward/style/project_style.h"

namespace pipward::style {
namespace {

using testing::bracketed;
using testing::has_letters;
using testing::outside_brackets;

// Collecting and cutting, turned round and with an apostrophe.
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

TEST(StyleInAnotherLanguage, SaysTitlesAliasesTabsLegendsAndRulesInIt) {
    for (const auto& table : book::book_tables()) {
        const auto style = style_of_layer(table, bracketed);
        expect_in_brackets(style.title);
        for (const auto& field : style.fields) {
            expect_in_brackets(field.alias);
            expect_in_brackets(field.rule_words);
        }
        for (const auto& group : style.groups) {
            expect_in_brackets(group.title);
        }
        for (const auto& rule : style.rules) {
            expect_in_brackets(rule.words);
        }
    }
}

TEST(StyleInAnotherLanguage, KeepsColumnsFiltersAndStoredValues) {
    for (const auto& table : book::book_tables()) {
        const auto english = style_of_layer(table);
        const auto other = style_of_layer(table, bracketed);
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

TEST(StyleInAnotherLanguage, SaysChoicesInItAndStoresTheirCodes) {
    const auto style = style_of_layer(*book::find_book_table("tree"), bracketed);
    const auto purpose = std::ranges::find(style.fields, "purpose", &FieldStyle::column);
    const auto& choices = std::get<ValueList>(purpose->widget).choices;
    ASSERT_FALSE(choices.empty());
    EXPECT_EQ(choices.front().value, "parent");
    for (const auto& choice : choices) {
        expect_some_brackets(choice.meaning);
    }
}

const std::vector<CodeWord> words_of_methods{{"mean_day", "mean date"}, {"own_observations", "own"}};

std::vector<book::Choice> choices_of(const std::string& column) {
    TableShape shape;
    shape.columns = {{column, CellType::text, "", "Label", "What.", words_of_methods}};
    const auto fields = detail::field_styles(shape, bracketed);
    return std::get<ValueList>(fields.back().widget).choices;
}

TEST(StyleInAnotherLanguage, SaysTheCodesOfResultsInTheWordsTheyAreDeclaredWith) {
    const auto choices = choices_of("method");
    ASSERT_EQ(choices.size(), 2U);
    EXPECT_EQ(choices.front().value, "mean_day");
    EXPECT_EQ(choices.front().meaning, bracketed("mean date"));
}

TEST(StyleInAnotherLanguage, SaysBothWordsOfAModel) {
    const auto choices = choices_of("model");
    ASSERT_EQ(choices.size(), 1U);
    EXPECT_EQ(choices.front().value, "mean_day, own_observations");
    EXPECT_EQ(choices.front().meaning, bracketed("mean date") + ", " + bracketed("own"));
}

TEST(StyleInAnotherLanguage, NamesTheGroupsAndTheTitleOfTheMap) {
    book::BookLook look;
    std::vector<LayerStyle> layers;
    for (const auto& table : book::book_tables()) {
        look.layers.push_back({std::string(table.name), ""});
        layers.push_back(style_of_layer(table, bracketed));
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
    const auto label = style_of_layer(task_shape(), std::nullopt, made_up).label->expression;
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
    EXPECT_EQ(
        book::inside_label(*book::find_column(*book::find_book_table("bloom_observation"), "observed_on")),
        "observed on");
    EXPECT_EQ(book::inside_label(*book::find_column(*book::find_book_table("bloom_observation"), "bbch")),
              "BBCH stage");
}

}  // namespace
}  // namespace pipward::style
