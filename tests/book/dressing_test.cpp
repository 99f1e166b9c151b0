// SPDX-License-Identifier: MIT
// Styles and a project in the book: ours are replaced, the user's never.
#include "pipward/book/dressing.h"

#include "book_testing.h"

namespace pipward::book {
namespace {

using namespace pipward::testing;

class Dressing : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
    }
    DressReport dress(const std::string& words) const {
        return write_dressing(book, {{"tree", "geom", "<style>" + words + "</style>"}},
                              {"Map", "504b" + words});
    }
    void sql(const std::string& statement) const { RawBook(book).run(statement); }
    std::string one(const std::string& statement) const { return RawBook(book).text(statement); }
    std::string style() const { return one("SELECT styleQML FROM layer_styles WHERE styleName = 'Pipward'"); }
};

using Names = std::vector<std::string>;

TEST_F(Dressing, IsWrittenAsTheLayersDefaultAndOnlyOnce) {
    EXPECT_FALSE(look_at_book(book).dressed);
    EXPECT_EQ(dress("1").written, (Names{"tree", "Map"}));
    EXPECT_EQ(style(), "<style>1</style>");
    EXPECT_EQ(one("SELECT useAsDefault FROM layer_styles"), "1");
    EXPECT_TRUE(look_at_book(book).dressed);
    const auto before = bytes_of(book);
    EXPECT_EQ(dress("1").unchanged, (Names{"tree", "Map"}));
    EXPECT_EQ(bytes_of(book), before);
}

TEST_F(Dressing, ReplacesWhatItWroteItself) {
    dress("1");
    EXPECT_EQ(dress("2").written, (Names{"tree", "Map"}));
    EXPECT_EQ(style(), "<style>2</style>");
    EXPECT_EQ(one("SELECT content FROM qgis_projects"), "504b2");
    EXPECT_EQ(one("SELECT count(*) FROM layer_styles"), "1");
}

TEST_F(Dressing, LeavesAStyleAndAProjectThatSomebodyChanged) {
    dress("1");
    sql("UPDATE layer_styles SET styleQML = '<style>mine</style>'");
    sql("UPDATE qgis_projects SET content = '504bff'");
    EXPECT_EQ(dress("2").changed_by_user, (Names{"tree", "Map"}));
    EXPECT_EQ(style(), "<style>mine</style>");
    EXPECT_EQ(one("SELECT content FROM qgis_projects"), "504bff");
}

TEST_F(Dressing, LeavesAProjectThatTheDesktopSavedUnderTheSameName) {
    dress("1");
    sql("UPDATE qgis_projects SET metadata = '{\"last_modified_time\":\"\",\"last_modified_user\":\"me\"}'");
    EXPECT_EQ(dress("2").changed_by_user, (Names{"Map"}));
}

TEST_F(Dressing, LeavesTheUsersDefaultTheDefault) {
    dress("1");
    sql("UPDATE layer_styles SET useAsDefault = 0");
    sql("INSERT INTO layer_styles (f_table_name, f_geometry_column, styleName, styleQML, useAsDefault) "
        "VALUES ('tree', 'geom', 'mine', '<mine/>', 1)");
    const auto report = dress("2");
    EXPECT_EQ(report.default_is_the_users, (Names{"tree"}));
    EXPECT_EQ(style(), "<style>2</style>");
    EXPECT_EQ(one("SELECT styleName FROM layer_styles WHERE useAsDefault"), "mine");
}

TEST_F(Dressing, JoinsTheStylesThatADesktopKeptBefore) {
    dress("1");
    sql("DELETE FROM layer_styles");
    sql("INSERT INTO layer_styles (f_table_name, f_geometry_column, styleName, styleQML, useAsDefault) "
        "VALUES ('tree', 'geom', 'mine', '<mine/>', 1)");
    dress("2");
    EXPECT_EQ(one("SELECT useAsDefault FROM layer_styles WHERE styleName = 'Pipward'"), "0");
}

TEST_F(Dressing, KeepsQuotesAndLineBreaks) {
    dress("it's\n\"quoted\"");
    EXPECT_EQ(style(), "<style>it's\n\"quoted\"</style>");
}

TEST_F(Dressing, LeavesTheBookConformingAndReadingTheSame) {
    add(book, "accession", {"name", "kind"}, {{{text("A"), text("cultivar")}}});
    dress("1");
    const auto reading = read_book(book);
    EXPECT_TRUE(reading.findings.empty());
    EXPECT_EQ(reading.orchard.accessions.size(), 1U);
    if (has_validator()) {
        EXPECT_EQ(complaints_about(book), "");
    }
}

TEST_F(Dressing, RefusesATriggerThatWouldChangeOtherRows) {
    dress("1");
    sql("CREATE TRIGGER sly AFTER UPDATE ON layer_styles BEGIN DELETE FROM tree; END");
    EXPECT_EQ(error_of([&] { dress("2"); }).trouble(), Trouble::access);
    EXPECT_EQ(style(), "<style>1</style>");
}

TEST_F(Dressing, TellsThatAServerKeepsNone) {
    const auto error = error_of([] { write_dressing("PG:dbname=nowhere", {}, {"Map", ""}); });
    EXPECT_EQ(error.trouble(), Trouble::access);
}

TEST_F(Dressing, SeesTheLayersTheirPlaceAndTheirSystem) {
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
