// SPDX-License-Identifier: MIT
// Whole sheets, printed and looked at.
#include "pipward/paper/label_pages.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "paper/printing.h"
#include "pipward/paper/pdf.h"

namespace pipward::paper {
namespace {

NamedLabel tree(const std::string& label, const std::string& code) {
    return {"tree",
            label,
            {label, {"Tansy Lane × Wrenlea", "block Upper, row 5, position 4", "planted 2018"}, {}, code}};
}

std::vector<NamedLabel> trees(int count) {
    std::vector<NamedLabel> labels;
    for (int i = 1; i <= count; ++i) {
        const auto label = "UP-05-" + std::to_string(100 + i);
        labels.push_back(tree(label, label));
    }
    return labels;
}

struct Printed {
    LabelPages pages;
    Findings findings;
    std::string pdf;
};

Printed printed(const std::vector<NamedLabel>& labels, const LabelJob& job) {
    const Typesetter typesetter;
    Printed made;
    made.pages = label_pages(labels, job, typesetter, in_english, made.findings);
    made.pdf = pdf_of(made.pages.pages, {"Labels", {20000}}, typesetter);
    return made;
}

void expect_every_code_is_read(const std::vector<NamedLabel>& labels, const LabelJob& job, int dots) {
    const auto made = printed(labels, job);
    const testing::PrintedFile file(made.pdf);
    std::vector<Box> boxes;
    std::string wanted;
    for (const auto& placed : made.pages.labels) {
        boxes.push_back(label_box(job.grid, placed.place));
        wanted += *labels[placed.label].text.qr + "\n";
    }
    EXPECT_EQ(testing::codes_in(file, 1, dots, boxes), wanted) << dots;
}

TEST(LabelPages, EveryCodeOfASheetIsReadAtThePrintedSize) {
    NEED_PROGRAM("pdftoppm");
    NEED_PROGRAM("zbarimg");
    for (const auto sheet : {LabelSheet::a4_70x37, LabelSheet::letter_67x25}) {
        for (const int dots : {300, 203}) {
            expect_every_code_is_read(trees(grid_of(sheet).labels_a_page()), {grid_of(sheet)}, dots);
        }
    }
    expect_every_code_is_read({tree("UP-05-04", "geo:48.1363812,9.3002512;u=0.05")},
                              {grid_of(LabelSheet::roll_57x32)}, 203);
}

// The outline of a label against where the sheet has it, in a picture of 600 dots an inch.
TEST(LabelPages, LabelsLieWhereTheSheetHasThemToATenthOfAMillimetre) {
    NEED_PROGRAM("pdftoppm");
    constexpr int dots = 600;
    const auto grid = grid_of(LabelSheet::a4_63x38);
    const testing::PrintedFile file(printed(trees(21), {grid, 0, 1, true}).pdf);
    const auto page = testing::read_picture(file.picture(1, dots));
    EXPECT_NEAR(page.width * 25.4 / dots, 210, 0.1);
    EXPECT_NEAR(page.height * 25.4 / dots, 297, 0.1);
    const auto dot = [&](Millimetres length) { return static_cast<int>(length.value / 25.4 * dots); };
    for (const int place : {0, 1, 2, 10, 20}) {
        const auto box = label_box(grid, place);
        const int tolerance = dot({0.1});
        const auto has_line = [&](int x, int y, bool upright) {
            for (int off = -tolerance; off <= tolerance; ++off) {
                if (page.is_dark(upright ? x + off : x, upright ? y : y + off)) {
                    return true;
                }
            }
            return false;
        };
        const int inside = dot({0.8});
        EXPECT_TRUE(has_line(dot(box.left), dot(box.top) + inside, true)) << place;
        EXPECT_TRUE(has_line(dot(box.right()), dot(box.top) + inside, true)) << place;
        EXPECT_TRUE(has_line(dot(box.left) + inside, dot(box.top), false)) << place;
        EXPECT_TRUE(has_line(dot(box.left) + inside, dot(box.bottom()), false)) << place;
    }
}

TEST(LabelPages, TheCheckLineIsFiftyMillimetresLong) {
    NEED_PROGRAM("pdftoppm");
    constexpr int dots = 600;
    const auto grid = grid_of(LabelSheet::a4_63x38);
    const testing::PrintedFile file(printed(trees(1), {grid}).pdf);
    const auto page = testing::read_picture(file.picture(1, dots));
    const int row = static_cast<int>((15.1 + 5) / 2 / 25.4 * dots);
    int longest = 0;
    int run = 0;
    for (int y = row - 3; y <= row + 3; ++y) {
        for (int x = 0; x < page.width; ++x) {
            run = page.is_dark(x, y) ? run + 1 : 0;
            longest = std::max(longest, run);
        }
    }
    EXPECT_NEAR(longest * 25.4 / dots, 50.2, 0.1);  // the ticks at its ends are 0.2 mm wide
}

TEST(LabelPages, TheHeadlineStandsOnItsOwnLabelInEmbeddedLetters) {
    NEED_PROGRAM("pdftotext");
    const auto labels = trees(24);
    const auto grid = grid_of(LabelSheet::a4_70x37);
    const testing::PrintedFile file(printed(labels, {grid}).pdf);
    const auto words = testing::words_of(file);
    for (int place = 0; place < 24; ++place) {
        const auto word = std::ranges::find(words, labels[static_cast<std::size_t>(place)].text.headline,
                                            &testing::PrintedWord::text);
        ASSERT_NE(word, words.end()) << place;
        EXPECT_TRUE(holds(label_box(grid, place), word->box)) << place;
    }
    NEED_PROGRAM("pdffonts");
    const auto fonts = testing::output_of("pdffonts " + file.pdf());
    EXPECT_NE(fonts.find("DejaVuSans"), std::string::npos) << fonts;
    EXPECT_EQ(fonts.find(" no  "), std::string::npos) << fonts;  // not embedded
}

TEST(LabelPages, TheSameLabelsAreTheSameBytes) {
    const auto labels = trees(30);
    const LabelJob job{grid_of(LabelSheet::a4_99x68)};
    const auto once = printed(labels, job);
    EXPECT_EQ(once.pdf, printed(labels, job).pdf);
    EXPECT_EQ(once.pages.pages.size(), 4U);
}

TEST(LabelPages, BeginsOnAPartUsedSheetAndGivesEveryCopy) {
    const auto made = printed(trees(3), {grid_of(LabelSheet::a4_70x37), 22, 2, false});
    std::vector<std::pair<int, int>> places;
    std::vector<std::size_t> labels;
    for (const auto& placed : made.pages.labels) {
        places.emplace_back(placed.page, placed.place);
        labels.push_back(placed.label);
    }
    EXPECT_EQ(places, (std::vector<std::pair<int, int>>{{0, 22}, {0, 23}, {1, 0}, {1, 1}, {1, 2}, {1, 3}}));
    EXPECT_EQ(labels, (std::vector<std::size_t>{0, 0, 1, 1, 2, 2}));
    EXPECT_EQ(made.pages.pages.size(), 2U);
    EXPECT_EQ(printed(trees(3), {grid_of(LabelSheet::roll_57x32)}).pages.pages.size(), 3U);
}

TEST(LabelPages, StrangeLabelsArePrintedWholeOrTold) {
    NEED_PROGRAM("pdftotext");
    const std::string quotes = "O'Hara \"9\" & <b>";
    const std::string sql = "x'); DROP TABLE tree;--";
    const std::string greek = "Μηλιά-12";
    const std::string long_name(300, 'm');
    const std::string unknown = "𒀀𒀁";  // cuneiform: no font of a plain machine has it
    const std::string hidden =
        "A\n\x01"
        "B";
    std::vector<NamedLabel> labels;
    for (const auto& label : {quotes, sql, greek, long_name, unknown, hidden}) {
        labels.push_back(tree(label, label));
    }
    const auto made = printed(labels, {grid_of(LabelSheet::roll_57x32)});
    const testing::PrintedFile file(made.pdf);
    const auto text = testing::output_of("pdftotext -enc UTF-8 " + file.pdf() + " -");
    EXPECT_NE(text.find(greek), std::string::npos);
    EXPECT_NE(text.find("DROP"), std::string::npos);
    EXPECT_EQ(std::ranges::count(text, 'm'), 300);
    const auto told = [&](const std::string& row, const std::string& words) {
        return std::ranges::any_of(made.findings, [&](const Finding& finding) {
            return finding.row == row && std::string(finding.message).find(words) != std::string::npos;
        });
    };
    EXPECT_FALSE(has_errors(made.findings));
    EXPECT_TRUE(told(long_name, "below 0.9 mm"));
    EXPECT_TRUE(told(long_name, "smaller than 0.33 mm"));
    EXPECT_TRUE(told(unknown, "No font on this machine"));
    EXPECT_TRUE(told(hidden, "invisible characters"));
    EXPECT_TRUE(std::ranges::none_of(made.findings, [&](const Finding& finding) {
        return finding.row == quotes || finding.row == sql || finding.row == greek;
    }));
}

TEST(LabelPages, ALabelThatCannotFitIsAnErrorThatNamesIt) {
    const std::string endless(9000, 'W');
    const auto made = printed({tree(endless, "A")}, {grid_of(LabelSheet::a4_48x25)});
    ASSERT_TRUE(has_errors(made.findings));
    EXPECT_EQ(made.findings[0].row, endless);
    EXPECT_EQ(std::string(made.findings[0].message), "The text does not fit on a label of this size.");
}

}  // namespace
}  // namespace pipward::paper
