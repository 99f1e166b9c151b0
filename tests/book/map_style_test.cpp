// SPDX-License-Identifier: MIT
// Styles and a project in the book: ours are replaced, the user's never.
#include "pipward/book/map_style.h"

#include "book_testing.h"

namespace pipward::book {
namespace {

using namespace pipward::testing;

class MapStyle : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
    }
    StyleReport style(const std::string& words) const {
        return write_map_style(book, {{"tree", "geom", "<style>" + words + "</style>"}},
                               {"Map", "504b" + words});
    }
    void sql(const std::string& statement) const { RawBook(book).run(statement); }
    std::string one(const std::string& statement) const { return RawBook(book).text(statement); }
    std::string style() const { return one("SELECT styleQML FROM layer_styles WHERE styleName = 'Pipward'"); }
};

using Names = std::vector<std::string>;

TEST_F(MapStyle, IsWrittenAsTheLayersDefaultAndOnlyOnce) {
    EXPECT_FALSE(look_at_book(book).styled);
    EXPECT_EQ(style("1").written, (Names{"tree", "Map"}));
    EXPECT_EQ(style(), "<style>1</style>");
    EXPECT_EQ(one("SELECT useAsDefault FROM layer_styles"), "1");
    EXPECT_TRUE(look_at_book(book).styled);
    const auto before = bytes_of(book);
    EXPECT_EQ(style("1").unchanged, (Names{"tree", "Map"}));
    EXPECT_EQ(bytes_of(book), before);
}

TEST_F(MapStyle, ReplacesWhatItWroteItself) {
    style("1");
    EXPECT_EQ(style("2").written, (Names{"tree", "Map"}));
    EXPECT_EQ(style(), "<style>2</style>");
    EXPECT_EQ(one("SELECT content FROM qgis_projects"), "504b2");
    EXPECT_EQ(one("SELECT count(*) FROM layer_styles"), "1");
}

TEST_F(MapStyle, LeavesAStyleAndAProjectThatSomebodyChanged) {
    style("1");
    sql("UPDATE layer_styles SET styleQML = '<style>mine</style>'");
    sql("UPDATE qgis_projects SET content = '504bff'");
    EXPECT_EQ(style("2").changed_by_user, (Names{"tree", "Map"}));
    EXPECT_EQ(style(), "<style>mine</style>");
    EXPECT_EQ(one("SELECT content FROM qgis_projects"), "504bff");
}

TEST_F(MapStyle, LeavesAProjectThatTheDesktopSavedUnderTheSameName) {
    style("1");
    sql("UPDATE qgis_projects SET metadata = '{\"last_modified_time\":\"\",\"last_modified_user\":\"me\"}'");
    EXPECT_EQ(style("2").changed_by_user, (Names{"Map"}));
}

TEST_F(MapStyle, LeavesTheUsersDefaultTheDefault) {
    style("1");
    sql("UPDATE layer_styles SET useAsDefault = 0");
    sql("INSERT INTO layer_styles (f_table_name, f_geometry_column, styleName, styleQML, useAsDefault) "
        "VALUES ('tree', 'geom', 'mine', '<mine/>', 1)");
    const auto report = style("2");
    EXPECT_EQ(report.default_is_the_users, (Names{"tree"}));
    EXPECT_EQ(style(), "<style>2</style>");
    EXPECT_EQ(one("SELECT styleName FROM layer_styles WHERE useAsDefault"), "mine");
}

TEST_F(MapStyle, JoinsTheStylesThatADesktopKeptBefore) {
    style("1");
    sql("DELETE FROM layer_styles");
    sql("INSERT INTO layer_styles (f_table_name, f_geometry_column, styleName, styleQML, useAsDefault) "
        "VALUES ('tree', 'geom', 'mine', '<mine/>', 1)");
    style("2");
    EXPECT_EQ(one("SELECT useAsDefault FROM layer_styles WHERE styleName = 'Pipward'"), "0");
}

TEST_F(MapStyle, KeepsQuotesAndLineBreaks) {
    style("it's\n\"quoted\"");
    EXPECT_EQ(style(), "<style>it's\n\"quoted\"</style>");
}

TEST_F(MapStyle, LeavesTheBookConformingAndReadingTheSame) {
    add(book, "accession", {"name", "kind"}, {{{text("A"), text("cultivar")}}});
    style("1");
    const auto reading = read_book(book);
    EXPECT_TRUE(reading.findings.empty());
    EXPECT_EQ(reading.orchard.accessions.size(), 1U);
    if (has_validator()) {
        EXPECT_EQ(complaints_about(book), "");
    }
}

TEST_F(MapStyle, RefusesATriggerThatWouldChangeOtherRows) {
    style("1");
    sql("CREATE TRIGGER sly AFTER UPDATE ON layer_styles BEGIN DELETE FROM tree; END");
    EXPECT_EQ(error_of([&] { style("2"); }).trouble(), Trouble::access);
    EXPECT_EQ(style(), "<style>1</style>");
}

TEST_F(MapStyle, TellsThatAServerKeepsNone) {
    const auto error = error_of([] { write_map_style("PG:dbname=nowhere", {}, {"Map", ""}); });
    EXPECT_EQ(error.trouble(), Trouble::access);
}

TEST_F(MapStyle, SeesTheLayersTheirPlaceAndTheirSystem) {
    Row row{{text("T1"), text("parent")}, at(500010, 5300020)};
    add(book, "tree", {"label", "purpose"}, {row});
    const auto look = look_at_book(book);
    EXPECT_EQ(look.crs_code, "EPSG:32632");
    EXPECT_FALSE(look.geographic);
    for (const auto& layer : look.layers) {
        EXPECT_EQ(layer.extent.has_value(), layer.table == "tree") << layer.table;
        if (layer.table == "tree") {
            EXPECT_DOUBLE_EQ(layer.extent->left, 500010);
            EXPECT_EQ(layer.geometry_column, "geom");
        }
        if (layer.table == "accession") {
            EXPECT_EQ(layer.geometry_column, "");
        }
    }
}

}  // namespace
}  // namespace pipward::book
