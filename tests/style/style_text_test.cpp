// SPDX-License-Identifier: MIT
// The texts of styles: readable XML that leaves no column of the schema without words.
#include "pipward/style/style_text.h"

#include <gtest/gtest.h>

#include <pugixml.hpp>
#include <set>

#include "pipward/style/detail/palette.h"
#include "pipward/style/orchard_style.h"

namespace pipward::style {
namespace {

pugi::xml_document parsed_style(const std::string& text) {
    pugi::xml_document document;
    const auto result = document.load_string(text.c_str(), pugi::parse_default | pugi::parse_doctype);
    EXPECT_TRUE(result) << result.description();
    return document;
}

TableShape window_shape() {
    TableShape shape{.name = "bloom_window",
                     .title = "Bloom windows",
                     .description = {},
                     .has_points = true,
                     .columns = {}};
    shape.columns.push_back({"tree", CellType::text, "", "Tree", ""});
    for (const auto* name : {"first_p50", "full_p50", "end_p50"}) {
        shape.columns.push_back({name, CellType::day, "", name, ""});
    }
    return shape;
}

Day day(const char* text) {
    return parse_iso_day(text).value();
}

std::string attribute(const pugi::xml_node& root, const std::string& path) {
    return root.select_node(path.c_str()).attribute().value();
}

std::string widget(const pugi::xml_node& root, const std::string& column) {
    return attribute(root, "/qgis/fieldConfiguration/field[@name='" + column + "']/editWidget/@type");
}

TEST(StyleText, GivesEveryColumnOfTheSchemaAnAliasAndAWidget) {
    for (const auto& table : book::book_tables()) {
        const auto root = parsed_style(style_text(style_of_layer(table)));
        for (const auto& column : table.columns) {
            const auto alias =
                attribute(root, "/qgis/aliases/alias[@field='" + std::string(column.name) + "']/@name");
            EXPECT_TRUE(alias.starts_with(column.label)) << table.name << "." << column.name << ": " << alias;
            EXPECT_EQ(alias.find('_'), std::string::npos) << alias;
            EXPECT_FALSE(widget(root, std::string(column.name)).empty()) << table.name << "." << column.name;
        }
    }
}

TEST(StyleText, ShowsEveryColumnOnceInTheFormAndTheRowNumberNowhere) {
    for (const auto& table : book::book_tables()) {
        const auto root = parsed_style(style_text(style_of_layer(table)));
        std::multiset<std::string> shown;
        for (const auto& field : root.select_nodes("//attributeEditorField/@name")) {
            shown.insert(field.attribute().value());
        }
        EXPECT_EQ(shown.size(), table.columns.size()) << table.name;
        for (const auto& column : table.columns) {
            EXPECT_EQ(shown.count(std::string(column.name)), 1U) << table.name << "." << column.name;
        }
        EXPECT_EQ(widget(root, "fid"), "Hidden");
    }
}

TEST(StyleText, OffersEveryChoiceOfAClosedListInWords) {
    for (const auto& table : book::book_tables()) {
        const auto root = parsed_style(style_text(style_of_layer(table)));
        for (const auto& column : table.columns) {
            const auto* domain = column.domain.empty() ? nullptr : book::find_domain(column.domain);
            if (domain == nullptr || domain->choices.empty()) {
                continue;
            }
            ASSERT_EQ(widget(root, std::string(column.name)), "ValueMap");
            const auto offered = root.select_nodes(
                ("/qgis/fieldConfiguration/field[@name='" + std::string(column.name) + "']//Option[@value]")
                    .c_str());
            ASSERT_EQ(offered.size(), domain->choices.size());
            for (std::size_t i = 0; i < offered.size(); ++i) {
                EXPECT_EQ(offered[i].node().attribute("value").value(), domain->choices[i].value);
                EXPECT_EQ(std::string(offered[i].node().attribute("name").value()).find('_'),
                          std::string::npos);
            }
        }
    }
}

TEST(StyleText, TellsInWordsWhatANeededColumnNeeds) {
    for (const auto& table : book::book_tables()) {
        const auto root = parsed_style(style_text(style_of_layer(table)));
        for (const auto& column : table.columns) {
            if (column.required) {
                const auto path =
                    "/qgis/constraintExpressions/constraint[@field='" + std::string(column.name) + "']";
                EXPECT_NE(attribute(root, path + "/@desc").find("is needed"), std::string::npos)
                    << column.name;
                EXPECT_NE(attribute(root, path + "/@exp").find("IS NOT NULL"), std::string::npos)
                    << column.name;
            }
        }
    }
}

TEST(StyleText, TellsEveryPurposeOfATreeByShapeAndByColour) {
    const auto root = parsed_style(style_text(style_of_layer(*book::find_book_table("tree"))));
    std::set<std::string> shapes;
    std::set<std::string> colours;
    std::string filters;
    for (const auto& layer : root.select_nodes("//symbol/layer[@class='SimpleMarker']")) {
        shapes.insert(layer.node().select_node("Option/Option[@name='name']/@value").attribute().value());
        colours.insert(layer.node().select_node("Option/Option[@name='color']/@value").attribute().value());
    }
    for (const auto& rule : root.select_nodes("//rule/@filter")) {
        filters += rule.attribute().value();
    }
    const auto& purposes = book::find_domain("tree_purpose")->choices;
    EXPECT_EQ(shapes.size(), purposes.size() + 1) << "and one for trees that were removed";
    EXPECT_EQ(colours.size(), purposes.size() + 1);
    for (const auto& purpose : purposes) {
        EXPECT_NE(filters.find("'" + purpose.value + "'"), std::string::npos) << purpose.value;
    }
    EXPECT_EQ(attribute(root, "/qgis/temporal/@startField"), "planted_on");
    EXPECT_EQ(attribute(root, "/qgis/temporal/@endField"), "removed_on");
}

TEST(StyleText, ColoursBloomByTheWeekOfMedianFullBloomFromMondayToSunday) {
    const BloomSpan span{day("2026-04-14"), day("2026-04-22"), day("2026-05-10"), day("2026-05-20")};
    const auto root = parsed_style(style_text(style_of_layer(window_shape(), span)));
    std::vector<std::string> words;
    for (const auto& rule : root.select_nodes("//rule/@label")) {
        words.emplace_back(rule.attribute().value());
    }
    EXPECT_EQ(words, (std::vector<std::string>{"week of 20 Apr", "week of 27 Apr", "week of 4 May"}));
    EXPECT_EQ(attribute(root, "//rule[3]/@filter"),
              "\"full_p50\" >= '2026-05-04' AND \"full_p50\" < '2026-05-11'");
    EXPECT_EQ(attribute(root, "/qgis/temporal/@enabled"), "1");
    EXPECT_EQ(attribute(root, "/qgis/@readOnly"), "1");
}

TEST(StyleText, ShowsBloomWithoutDaysInOneColour) {
    const auto root = parsed_style(style_text(style_of_layer(window_shape(), std::nullopt)));
    EXPECT_EQ(root.select_nodes("//rule").size(), 1U);
}

TEST(StyleText, KeepsWhatXmlGivesAMeaning) {
    LayerStyle style = style_of_layer(*book::find_book_table("block"));
    style.map_tip = "<b>a & b</b> \"c\"";
    EXPECT_STREQ(parsed_style(style_text(style)).child("qgis").child("mapTip").text().get(),
                 style.map_tip.c_str());
}

TEST(StyleText, IsTheSameTextForTheSameTable) {
    for (const auto& table : book::book_tables()) {
        EXPECT_EQ(style_text(style_of_layer(table)), style_text(style_of_layer(table)));
    }
}

TEST(Palette, GoesFromDarkToLight) {
    int last = -1;
    for (int step = 0; step <= 20; ++step) {
        const auto ink = ink::ordered(step / 20.0);
        const int lightness = 2126 * ink.red + 7152 * ink.green + 722 * ink.blue;
        EXPECT_GT(lightness, last) << step;
        last = lightness;
    }
}

TEST(BloomSpan, SpansTheRowsThatHaveAllTheirDays) {
    Table table{window_shape(), {}};
    table.rows.push_back({{Cell{}, day("2026-04-14"), day("2026-04-22"), day("2026-05-01")}});
    table.rows.push_back({{Cell{}, day("2026-04-10"), day("2026-04-25"), day("2026-05-09")}});
    table.rows.push_back({{Cell{}, day("2026-01-01"), Cell{}, Cell{}}});
    const auto span = bloom_span(table);
    ASSERT_TRUE(span);
    EXPECT_EQ(to_iso(span->first_bloom), "2026-04-10");
    EXPECT_EQ(to_iso(span->first_full), "2026-04-22");
    EXPECT_EQ(to_iso(span->last_full), "2026-04-25");
    EXPECT_EQ(to_iso(span->end_of_bloom), "2026-05-09");
    EXPECT_FALSE(bloom_span({window_shape(), {}}));
}

}  // namespace
}  // namespace pipward::style
