// SPDX-License-Identifier: MIT
// Labels and tags of the sample, printed and read back.
#include <gtest/gtest.h>

#include <algorithm>

#include "asked.h"
#include "operation/sample_copy.h"
#include "paper/printing.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/paper/label_contents.h"
#include "pipward/paper/label_grid.h"

namespace pipward::operation {
namespace {

using testing::value;

Outcome ran(const std::string& operation, const testing::SampleCopy& sample, Form form) {
    form["book"] = sample.book();
    return find_operation(operation)->run(form, {});
}

Outcome printed(const testing::SampleCopy& sample, Form form) {
    form.try_emplace("as-of", "2026-03-20");
    return ran("label-sheet", sample, std::move(form));
}

std::vector<std::string> values(const Table& table, const std::string& column) {
    std::vector<std::string> all;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        all.push_back(value(table, row, column));
    }
    return all;
}

Findings print_complaints(const testing::SampleCopy& sample, Form form) {
    try {
        (void)printed(sample, std::move(form));
    } catch (const Error& error) {
        return error.findings();
    }
    return {};
}

Table tree_named(const std::string& label) {
    return {{"tree",
             "",
             "",
             false,
             {{"label", CellType::text, "", "", ""}, {"purpose", CellType::text, "", "", ""}}},
            {{{label, "seedling"}}}};
}

// Print, scan, find: the way back from the paper to the record.
TEST(LabelSheet, TheCodeOfALabelLeadsBackToItsTree) {
    NEED_SAMPLE();
    NEED_PROGRAM("pdftoppm");
    NEED_PROGRAM("zbarimg");
    const testing::SampleCopy sample;
    const auto outcome = printed(sample, {{"block", "Upper"}});
    ASSERT_EQ(outcome.files.size(), 1U);
    EXPECT_EQ(outcome.files[0].name, "labels.pdf");
    const testing::PrintedFile file(outcome.files[0].content);
    const auto& table = outcome.tables[0];
    EXPECT_EQ(table.rows.size(), 56U);  // 60 trees, 4 of them removed
    for (const std::size_t row : {0U, 23U, 24U, 41U}) {
        const auto box = paper::label_box(paper::grid_of(paper::LabelSheet::a4_70x37),
                                          std::stoi(value(table, row, "place")) - 1);
        auto code = testing::codes_in(file, std::stoi(value(table, row, "page")), 300, {box});
        ASSERT_EQ(code, value(table, row, "label") + "\n");
        code.pop_back();
        const auto found = ran("tree-find", sample, {{"search", code}, {"as-of", "2026-03-20"}});
        EXPECT_EQ(value(found.tables[0], 0, "tree"), value(table, row, "label"));
    }
}

TEST(LabelSheet, SaysAccessionParentsAddressAndYear) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto orchard = book::read_book(sample.book()).orchard;
    const auto outcome = printed(sample, {{"purpose", "seedling"}});
    const auto& table = outcome.tables[0];
    bool with_blend = false;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const auto says = value(table, row, "text");
        EXPECT_NE(says.find(" × "), std::string::npos) << says;
        EXPECT_NE(says.find("block Upper, row "), std::string::npos) << says;
        EXPECT_NE(says.find("planted 20"), std::string::npos) << says;
        with_blend = with_blend || says.find("Larkfold Red × Larkfold Mix (blend)") != std::string::npos;
    }
    EXPECT_TRUE(with_blend);
}

TEST(LabelSheet, ComesInTheOrderOfTheAddressOrOfAWalkToAndFro) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto straight = values(printed(sample, {{"block", "Lower"}}).tables[0], "label");
    EXPECT_TRUE(std::ranges::is_sorted(straight));
    auto back = values(printed(sample, {{"block", "Lower"}, {"order", "to-and-fro"}}).tables[0], "label");
    const auto in_row = [](const std::string& row) {
        return [row](const std::string& label) { return label.starts_with("LO-" + row); };
    };
    EXPECT_TRUE(std::is_sorted(back.begin(), std::ranges::find_if(back, in_row("02"))));
    const auto second = std::ranges::find_if(back, in_row("02"));
    EXPECT_TRUE(std::is_sorted(second, std::ranges::find_if(back, in_row("03")), std::greater{}));
    std::ranges::sort(back);
    EXPECT_EQ(back, straight);
}

TEST(LabelSheet, TagsOfTheSeasonsCrossesTakeTheNextFreeLetters) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = printed(sample, {{"labels-of", "crosses"}, {"copies", "3"}});
    const auto tags = values(outcome.tables[0], "label");
    ASSERT_EQ(tags.size(), 14U * 3);
    EXPECT_EQ(tags[0], "26-01-a");
    EXPECT_EQ(tags[3], "26-02-a");
    EXPECT_EQ(value(outcome.tables[0], 0, "text"), "Marlside × Kettlefen");
    const auto earlier =
        values(printed(sample, {{"labels-of", "crosses"}, {"season", "2017"}}).tables[0], "label");
    ASSERT_EQ(earlier.size(), 2U);
    EXPECT_EQ(earlier[0], "17-01-d");  // a, b and c hang on trees
    const auto plain = values(
        printed(sample, {{"labels-of", "crosses"}, {"letters", "no"}, {"copies", "2"}}).tables[0], "label");
    EXPECT_EQ(plain[0], "26-01");
    EXPECT_EQ(plain[1], "26-01");
}

TEST(LabelSheet, SaysWhenTheAlphabetEndsOrASeasonHasNoCrosses) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto many = printed(sample, {{"labels-of", "crosses"}, {"copies", "30"}});
    EXPECT_EQ(many.tables[0].rows.size(), 14U * 26);
    EXPECT_TRUE(std::ranges::any_of(many.findings, [](const Finding& f) { return f.row == "26-01"; }));
    const auto none = printed(sample, {{"labels-of", "crosses"}, {"season", "2050"}});
    EXPECT_TRUE(none.files.empty());
    EXPECT_EQ(std::string(none.summary), "Nothing is to be printed.");
}

TEST(LabelSheet, AnAutumnDayBelongsToTheComingSpring) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto tags =
        values(printed(sample, {{"labels-of", "crosses"}, {"as-of", "2026-11-20"}}).tables[0], "label");
    EXPECT_EQ(tags, (std::vector<std::string>{"27-01-a", "27-02-a", "27-03-a", "27-04-a"}));
}

TEST(LabelSheet, BlankTagsFillTheRestOfTheSheet) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = printed(sample, {{"labels-of", "blank"}, {"first", "20"}, {"copies", "2"}});
    EXPECT_EQ(outcome.tables[0].rows.size(), 48U - 19);
    EXPECT_EQ(value(outcome.tables[0], 0, "place"), "20");
}

TEST(LabelSheet, AStrangeLabelIsPrintedAndItsCodeReadBack) {
    NEED_SAMPLE();
    NEED_PROGRAM("pdftoppm");
    NEED_PROGRAM("zbarimg");
    const std::string long_label = "Larkfold " + std::string(280, 'x') + " end";
    const testing::SampleCopy sample;
    const std::vector<std::string> strange{"O'Hara \"9\" <b>&amp;", "'); DROP TABLE tree; --", "🍎 りんご 12",
                                           "Яблоня № 5", long_label};
    for (const auto& label : strange) {
        book::append_rows(sample.book(), tree_named(label));
    }
    const auto outcome =
        printed(sample, {{"purpose", "seedling"}, {"order", "book"}, {"sheet", "roll-100x50"}});
    const auto& table = outcome.tables[0];
    const testing::PrintedFile file(outcome.files[0].content);
    for (std::size_t i = 0; i < strange.size(); ++i) {
        const auto row = table.rows.size() - strange.size() + i;
        EXPECT_EQ(value(table, row, "label"), strange[i]);
        EXPECT_EQ(testing::code_in(file.picture(static_cast<int>(row) + 1, 300)), strange[i]);
    }
    EXPECT_TRUE(std::ranges::any_of(outcome.findings,
                                    [&](const Finding& f) {
                                        return f.row == long_label &&
                                               std::string(f.message).find("hard to read") !=
                                                   std::string::npos;
                                    }) ||
                std::stod(value(table, table.rows.size() - 1, "x_height_mm")) >= 0.9);
}

TEST(LabelSheet, ATreeWithoutAPlaceKeepsItsLabelInTheCode) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    book::append_rows(sample.book(), tree_named("NEW-1"));
    const auto outcome = printed(sample, {{"trees", "NEW-1, UP-05-04, LO-01-03"}, {"qr-code", "place"}});
    const auto& table = outcome.tables[0];
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(value(table, 0, "code_text").substr(0, 7), "geo:48.");
    EXPECT_EQ(value(table, 1, "code_text"), "NEW-1");
    const auto about = [&](const std::string& row) {
        return std::ranges::any_of(outcome.findings, [&](const Finding& f) { return f.row == row; });
    };
    EXPECT_TRUE(about("NEW-1"));
    EXPECT_TRUE(about("LO-01-03"));  // removed
}

TEST(LabelSheet, RefusesSheetsThatCannotBe) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    EXPECT_EQ(print_complaints(sample, {{"sheet", "own"}})[0].field, "sheet");
    EXPECT_EQ(print_complaints(sample, {{"first", "25"}})[0].field, "first");
    EXPECT_NE(std::string(print_complaints(sample, {{"columns", "4"}}).at(0).message)
                  .find("280.0 mm from the left"),
              std::string::npos);
    EXPECT_FALSE(print_complaints(sample, {{"trees", "LO-99-99"}}).empty());
}

TEST(LabelSheet, TheSameBookOnTheSameDayIsTheSameFile) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto once = printed(sample, {}).files[0].content;
    EXPECT_EQ(once, printed(sample, {}).files[0].content);
    EXPECT_NE(once, printed(sample, {{"as-of", "2026-03-21"}}).files[0].content);
}

}  // namespace
}  // namespace pipward::operation
