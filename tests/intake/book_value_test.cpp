// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/book_value.h"

#include <gtest/gtest.h>

namespace pipward::intake {
namespace {

detail::ReadValue read(const std::string& table, const std::string& column, const std::string& text) {
    return detail::read_value(*book::find_column(*book::find_book_table(table), column), text);
}

TEST(detail::ReadValue, TakesTheWaysOfSayingNothingForUnknown) {
    for (const auto* text : {"", "  ", "-", "?", "n/a", "NA", "NULL", "None", "--"}) {
        const auto value = read("tree", "rootstock", text);
        EXPECT_TRUE(std::holds_alternative<std::monostate>(value.cell)) << text;
        EXPECT_FALSE(value.wrong) << text;
    }
    EXPECT_EQ(read("tree", "rootstock", "0").cell, Cell{std::string("0")});
}

TEST(detail::ReadValue, ReadsNumbersWithAPointOrACommaAndTheirUnit) {
    EXPECT_EQ(read("tree", "elevation_m", "446,5").cell, Cell{446.5});
    EXPECT_EQ(read("tree", "elevation_m", " 446.5 m").cell, Cell{446.5});
    EXPECT_EQ(read("tree", "position", "12.0").cell, Cell{std::int64_t{12}});
    EXPECT_TRUE(read("tree", "position", "12.5").wrong);
    EXPECT_TRUE(read("tree", "position", "1e99").wrong);
    EXPECT_TRUE(read("tree", "elevation_m", "1,234,5").wrong);
    EXPECT_TRUE(read("tree", "elevation_m", "99999").wrong) << "no such height on the earth";
}

TEST(detail::ReadValue, KnowsTheWordsOfClosedListsAndWhatElseTheyAreCalled) {
    EXPECT_EQ(read("tree", "purpose", "Parent").cell, Cell{std::string("parent")});
    EXPECT_EQ(read("tree", "purpose", "Befruchter").cell, Cell{std::string("pollinizer")});
    EXPECT_EQ(read("accession", "kind", "Variety").cell, Cell{std::string("cultivar")});
    EXPECT_EQ(read("accession", "ploidy", "3x").cell, Cell{std::int64_t{3}});
    EXPECT_EQ(read("accession", "species", "Apfel").cell, Cell{std::string("Malus domestica")});
    EXPECT_EQ(read("accession", "species", "Malus sieversii").cell, Cell{std::string("Malus sieversii")});
    EXPECT_TRUE(read("tree", "purpose", "grazing").wrong);
}

TEST(detail::ReadValue, TakesTextAsItIsButForBlanksAroundIt) {
    const std::string odd = "O'Brien \"x\"; DROP TABLE tree;-- \xF0\x9F\x8D\x90";
    EXPECT_EQ(read("tree", "label", "  " + odd + " ").cell, Cell{odd});
    EXPECT_EQ(read("tree", "planted_on", "2020-02-29").cell, Cell{parse_iso_day("2020-02-29").value()});
    EXPECT_TRUE(read("tree", "planted_on", "2021-02-29").wrong);
}

}  // namespace
}  // namespace pipward::intake
