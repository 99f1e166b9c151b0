// SPDX-License-Identifier: MIT
// The form of a table that no released book has follows from its declaration.
#include <gtest/gtest.h>

#include "book/hive_table.h"
#include "pipward/style/orchard_style.h"

namespace pipward::style {
namespace {

using testing::hive_table;
using Names = std::vector<std::string>;

const FieldStyle& field(const LayerStyle& layer, std::string_view column) {
    return *std::ranges::find(layer.fields, column, &FieldStyle::column);
}

TEST(StyleOfABoundTable, OffersTheNamesThatAColumnRefersTo) {
    const auto layer = style_of_layer(hive_table());
    const auto* trees = std::get_if<ValuesFrom>(&field(layer, "tree").widget);
    ASSERT_NE(trees, nullptr);
    EXPECT_EQ(trees->table, "tree");
    EXPECT_EQ(trees->column, "label");
    const auto* either = std::get_if<PlainText>(&field(layer, "serves").widget);
    ASSERT_NE(either, nullptr) << "names of two tables cannot be harvested from one";
    EXPECT_TRUE(either->offers_known);
    EXPECT_TRUE(std::get<PlainText>(field(layer, "remark").widget).long_text);
    EXPECT_TRUE(field(layer, "name").unique);
    EXPECT_EQ(std::get<NumberBox>(field(layer, "frames").widget).low, 0);
}

TEST(StyleOfABoundTable, CutsItsFormIntoTabs) {
    const auto groups = style_of_layer(hive_table()).groups;
    ASSERT_EQ(groups.size(), 2U);
    EXPECT_EQ(groups[0].title, "Hives");
    EXPECT_EQ(groups[0].columns, (Names{"name", "placed_on", "tree", "remark", "frames"}));
    EXPECT_EQ(groups[1].title, "Work");
    EXPECT_EQ(groups[1].columns, Names{"serves"});
}

// The tabs that breeders know.
TEST(StyleOfABoundTable, TabsOfTheReleasedTables) {
    const auto groups_of = [](const char* table) {
        return style_of_layer(*book::find_book_table(table)).groups;
    };
    const auto trees = groups_of("tree");
    ASSERT_EQ(trees.size(), 2U);
    EXPECT_EQ(trees[0].columns,
              (Names{"label", "accession", "purpose", "rootstock", "planted_on", "removed_on", "remark"}));
    EXPECT_EQ(trees[1].columns,
              (Names{"block", "row", "position", "placed_by", "accuracy_m", "elevation_m"}));
    const auto accessions = groups_of("accession");
    ASSERT_EQ(accessions.size(), 2U);
    EXPECT_EQ(accessions[0].columns,
              (Names{"name", "kind", "species", "seed_parent", "pollen_parent", "sport_of", "remark"}));
    EXPECT_EQ(accessions[1].columns,
              (Names{"s_alleles", "ploidy", "seed_ripe_days", "chill_portions", "protected_until"}));
    const auto lots = groups_of("seed_lot");
    ASSERT_EQ(lots.size(), 2U);
    EXPECT_EQ(lots[0].columns, (Names{"code", "cross", "seeds", "from_tags", "remark"}));
    EXPECT_EQ(lots[1].columns, (Names{"washed_on", "stratified_from", "stratified_to", "stratification_c",
                                      "treatment", "medium"}));
}

TEST(StyleOfABoundTable, NamesRowsByTheirKeyOrTheirDay) {
    EXPECT_EQ(style_of_layer(hive_table()).row_name, R"("name")");
    EXPECT_EQ(style_of_layer(*book::find_book_table("fruit")).row_name.find(R"("tag" || ', ' || )"), 0U);
    EXPECT_EQ(style_of_layer(*book::find_book_table("weather_day")).row_name.find(R"("station" || ', ' || )"),
              0U);
}

}  // namespace
}  // namespace pipward::style
