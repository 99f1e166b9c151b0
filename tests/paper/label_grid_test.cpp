// SPDX-License-Identifier: MIT
#include "pipward/paper/label_grid.h"

#include <gtest/gtest.h>

namespace pipward::paper {
namespace {

TEST(LabelGrid, EveryKnownSheetLiesOnItsPageWithoutLabelsOnOneAnother) {
    for (const auto& word : words(LabelSheet{})) {
        if (word.value == LabelSheet::own) {
            continue;
        }
        SCOPED_TRACE(word.meaning);
        const auto grid = grid_of(word.value);
        EXPECT_TRUE(problems_of(grid).empty());
        const Box page{
            {-0.05}, {-0.05}, grid.page.width + Millimetres{0.1}, grid.page.height + Millimetres{0.1}};
        for (int a = 0; a < grid.labels_a_page(); ++a) {
            EXPECT_TRUE(holds(page, label_box(grid, a)));
            for (int b = 0; b < a; ++b) {
                EXPECT_FALSE(overlap(inset(label_box(grid, a), {0.01}), label_box(grid, b)));
            }
        }
    }
}

TEST(LabelGrid, KnownSheetsAreNamedByTheirDimensions) {
    EXPECT_EQ(grid_of(LabelSheet::a4_70x37).labels_a_page(), 24);
    EXPECT_EQ(grid_of(LabelSheet::letter_67x25).labels_a_page(), 30);
    EXPECT_EQ(to_word(LabelSheet::roll_57x32), "roll-57x32");
    EXPECT_TRUE(grid_of(LabelSheet::roll_57x32).is_roll());
    EXPECT_FALSE(grid_of(LabelSheet::a4_99x68).is_roll());
}

TEST(LabelGrid, LabelsAreCountedRowByRowFromTheUpperLeft) {
    const auto grid = grid_of(LabelSheet::a4_63x38);
    EXPECT_EQ(label_box(grid, 0).left, (Millimetres{7.2}));
    EXPECT_NEAR(label_box(grid, 1).left.value, 7.2 + 63.5 + 2.5, 1e-9);
    EXPECT_EQ(label_box(grid, 1).top, label_box(grid, 0).top);
    EXPECT_NEAR(label_box(grid, 3).top.value, 15.1 + 38.1, 1e-9);
}

TEST(LabelGrid, NothingIsPrintedWhereMostPrintersDoNot) {
    for (const auto& word : words(LabelSheet{})) {
        const auto grid = grid_of(word.value);
        if (word.value == LabelSheet::own || grid.is_roll()) {
            continue;
        }
        const auto sheet = inset({{0}, {0}, grid.page.width, grid.page.height}, {4.999});
        for (int place = 0; place < grid.labels_a_page(); ++place) {
            EXPECT_TRUE(holds(sheet, printable_box(grid, place))) << word.word << " " << place;
            EXPECT_TRUE(holds(label_box(grid, place), printable_box(grid, place)));
        }
    }
}

TEST(LabelGrid, TellsEverythingThatIsWrongWithASheetOfOnesOwn) {
    const LabelGrid grid{a4_page, {110}, {8}, 2, 40, {0}, {0}, {0}, {0}};
    const auto problems = problems_of(grid);
    ASSERT_EQ(problems.size(), 3U);
    EXPECT_NE(std::string(problems[0].message).find("8.0 mm is too small"), std::string::npos);
    EXPECT_NE(
        std::string(problems[1].message).find("end 220.0 mm from the left, but the page is 210.0 mm wide"),
        std::string::npos);
    EXPECT_NE(std::string(problems[2].message).find("320.0 mm from the top"), std::string::npos);
}

TEST(SheetWish, ChangesOfANamedSheetWhatItNames) {
    SheetWish wish;
    wish.sheet = LabelSheet::a4_70x37;
    wish.top = 3.5;
    wish.rows = 7;
    auto expected = grid_of(LabelSheet::a4_70x37);
    EXPECT_EQ(grid_of(wish).top, (Millimetres{3.5}));
    EXPECT_EQ(grid_of(wish).rows, 7);
    EXPECT_EQ(grid_of(wish).width, expected.width);
    EXPECT_EQ(grid_of(wish).columns, expected.columns);
}

TEST(SheetWish, OfOnesOwnLiesOnA4AndNeedsTheSizeOfItsLabels) {
    SheetWish wish;
    wish.sheet = LabelSheet::own;
    EXPECT_EQ(grid_of(wish).page.width, a4_page.width);
    ASSERT_EQ(problems_of(wish).size(), 1U);
    EXPECT_EQ(problems_of(wish)[0].field, "sheet");
    wish.label_width = 90;
    wish.label_height = 50;
    EXPECT_TRUE(problems_of(wish).empty());
}

}  // namespace
}  // namespace pipward::paper
