// SPDX-License-Identifier: MIT
#include "pipward/record/table.h"

#include <gtest/gtest.h>

#include "pipward/record/words.h"

namespace pipward {
namespace {

TEST(Cell, WritesUnknownAsNothingAndNumbersSoThatTheyReadBack) {
    EXPECT_EQ(to_text(Cell{}), "");
    EXPECT_EQ(to_text(Cell{0.1}), "0.1");
    EXPECT_EQ(to_text(Cell{1e21}), "1e+21");
    EXPECT_EQ(to_text(Cell{std::int64_t{-3}}), "-3");
    EXPECT_EQ(to_text(Cell{*make_day({2026, 4, 12})}), "2026-04-12");
    EXPECT_EQ(to_text(Cell{true}), "yes");
    EXPECT_EQ(to_text(cell(std::optional<double>{})), "");
    EXPECT_EQ(to_text(cell(std::optional<double>{2.5})), "2.5");
}

TEST(Lines, BecomeAColumnOfTextForHostsThatHaveNoMap) {
    const Table table{
        {"way", "", "", false, {{"leg", CellType::whole, "", "", ""}}, true},
        {{{std::int64_t{1}}, {}, {{1, 2.5, {}}, {3, 4, {}}}}, {{std::int64_t{2}}, {}, {{1, 2, {}}}}}};
    const auto wider = with_lines_as_text(table);
    EXPECT_EQ(wider.shape.columns.back().name, line_column);
    EXPECT_EQ(to_text(wider.rows[0].cells.back()), "LINESTRING (1 2.5,3 4)");
    EXPECT_EQ(to_text(wider.rows[1].cells.back()), "");
    EXPECT_EQ(with_lines_as_text({{"plain", "", "", false, {}}, {}}).shape.columns.size(), 0U);
}

template <class Enum>
void expect_words_read_back(Enum any) {
    for (const auto& entry : words(any)) {
        EXPECT_EQ(from_word<Enum>(entry.word), entry.value) << entry.word;
        EXPECT_EQ(to_word(entry.value), entry.word);
        EXPECT_FALSE(entry.meaning.empty());
    }
    EXPECT_FALSE(from_word<Enum>("no such word"));
    EXPECT_FALSE(from_word<Enum>(""));
}

TEST(Words, EveryWordReadsBackAsItsValue) {
    expect_words_read_back(TreePurpose{});
    expect_words_read_back(PlacedBy{});
    expect_words_read_back(AccessionKind{});
    expect_words_read_back(WeatherSource{});
    expect_words_read_back(Store{});
}

TEST(Cell, ShowsPeopleThePlainWordsOfAClosedListOnly) {
    const Column method{"method", CellType::text, "",
                        "Method", "A way.",       {{"mean_day", "mean date"}, {"mid_parent", "mid-parent"}}};
    EXPECT_EQ(to_plain_text(method, std::string("mean_day")), "mean date");
    EXPECT_EQ(to_plain_text(method, std::string("mean_day, mid_parent")), "mean date, mid-parent");
    EXPECT_EQ(to_plain_text(method, std::string("of_another_day")), "of_another_day");
    EXPECT_EQ(to_plain_text(method, {}), "");
    const Column label{"label", CellType::text, "", "Tree", "Its label."};
    EXPECT_EQ(to_plain_text(label, std::string("mean_day")), "mean_day");
}

}  // namespace
}  // namespace pipward
