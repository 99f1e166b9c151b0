// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_drawing.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "paper/made_up_season.h"
#include "pipward/paper/detail/chart_svg.h"

namespace pipward::paper {
namespace {

BloomChart larkfold_chart() {
    return bloom_chart_of(testing::larkfold_forecast(), testing::larkfold_plan());
}

BloomDrawing in_a_panel(double width) {
    return bloom_drawing(larkfold_chart(), panel_measures(width, 13, 17, 12));
}

std::vector<ChartMark> all_marks(const BloomDrawing& drawing) {
    auto marks = drawing.head;
    for (const auto& row : drawing.rows) {
        lay_over(marks, row.marks);
    }
    return marks;
}

std::vector<const TextMark*> texts_of(const ChartMarks& marks) {
    std::vector<const TextMark*> texts;
    for (const auto& mark : marks) {
        if (const auto* text = std::get_if<TextMark>(&mark)) {
            texts.push_back(text);
        }
    }
    return texts;
}

TEST(BloomDrawing, HasOneRowABarWithoutGapsDownToItsFoot) {
    const auto chart = larkfold_chart();
    for (const auto& measures :
         {measures_of(ChartShape::wide), measures_of(ChartShape::stacked), panel_measures(400, 13, 17, 12)}) {
        const auto drawing = bloom_drawing(chart, measures);
        ASSERT_EQ(drawing.rows.size(), chart.bars.size());
        for (std::size_t i = 1; i < drawing.rows.size(); ++i) {
            EXPECT_EQ(drawing.rows[i].top, drawing.rows[i - 1].bottom);
            EXPECT_GT(drawing.rows[i].bottom, drawing.rows[i].top);
        }
        EXPECT_EQ(drawing.rows.back().bottom, drawing.height);
    }
}

TEST(BloomDrawing, IsWhatTheSheetWrites) {
    const auto chart = larkfold_chart();
    for (const auto shape : {ChartShape::wide, ChartShape::stacked}) {
        const auto drawing = bloom_drawing(chart, measures_of(shape));
        const auto svg = bloom_chart_svg(chart, {shape, "t", false, false});
        EXPECT_NE(svg.find(detail::svg_of(drawing.head)), svg.npos);
        for (const auto& row : drawing.rows) {
            EXPECT_NE(svg.find(detail::svg_of(row.marks)), svg.npos) << row.spoken;
        }
    }
}

TEST(BloomDrawing, PutsRoleBelowTheObservationsWhereTheyDoNotFitInOneLine) {
    auto chart = larkfold_chart();
    auto& bar = chart.bars.front();
    bar.source = bloom::NeedSource::own_observations;
    bar.observations = 21;
    bar.seed_parent = true;
    bar.pollen_parent = true;
    const auto drawing = bloom_drawing(chart, measures_of(ChartShape::wide));
    std::vector<std::string> texts;
    for (const auto* text : texts_of(drawing.rows.front().marks)) {
        EXPECT_FALSE(text->text.ends_with("·")) << text->text;
        texts.push_back(text->text);
    }
    EXPECT_NE(std::ranges::find(texts, "● 21 observations"), texts.end());
    EXPECT_NE(std::ranges::find(texts, "seed, pollen"), texts.end());
}

TEST(BloomDrawing, OfAPanelStaysInsideIt) {
    for (const double width : {200.0, 420.0, 900.0}) {
        const auto drawing = in_a_panel(width);
        for (const auto& mark : all_marks(drawing)) {
            if (const auto* line = std::get_if<LineMark>(&mark)) {
                EXPECT_GE(std::min(line->from.x, line->to.x), 0);
                EXPECT_LE(std::max(line->from.x, line->to.x), width);
                EXPECT_LE(std::max(line->from.y, line->to.y), drawing.height);
            } else if (const auto* box = std::get_if<BoxMark>(&mark)) {
                EXPECT_GE(box->at.x, drawing.axis.left);
                EXPECT_LE(box->at.x + box->width, width);
            }
        }
        EXPECT_LE(drawing.axis.left, width / 3 + 8) << "names take a third at most";
    }
}

TEST(BloomDrawing, OfAPanelSaysTheNamesAloneAndThoseOfWantedCrossesInBold) {
    const auto chart = larkfold_chart();
    const auto drawing = in_a_panel(900);
    for (std::size_t i = 0; i < chart.bars.size(); ++i) {
        const auto texts = texts_of(drawing.rows[i].marks);
        ASSERT_EQ(texts.size(), 1U);
        EXPECT_EQ(texts[0]->text, chart.bars[i].name);
        EXPECT_EQ(chart_look(texts[0]->role).bold, chart.bars[i].is_wanted()) << chart.bars[i].name;
    }
}

TEST(BloomDrawing, HasALookForEveryMark) {
    const auto drawing = bloom_drawing(larkfold_chart(), measures_of(ChartShape::wide));
    int boxes = 0;
    for (const auto& mark : all_marks(drawing)) {
        const auto look = std::visit([](const auto& one) { return chart_look(one.role); }, mark);
        if (std::holds_alternative<TextMark>(mark)) {
            EXPECT_NE(look.fill, Ink::none);
        } else {
            EXPECT_NE(look.stroke, Ink::none);
            EXPECT_GT(look.width, 0);
        }
        boxes += std::holds_alternative<BoxMark>(mark) ? 1 : 0;
    }
    EXPECT_EQ(boxes, 7);
    EXPECT_NE(chart_look(MarkRole::band).dashes, chart_look(MarkRole::lent_band).dashes)
        << "not by colour alone";
}

TEST(ChartInks, AreOtherOnesOnADarkGround) {
    for (const auto ink : {Ink::paper, Ink::ink, Ink::stem, Ink::now}) {
        EXPECT_NE(colour_of(ink, chart_inks(false)), colour_of(ink, chart_inks(true)));
    }
    EXPECT_EQ(colour_of(Ink::paper, chart_inks(false)), "#fff");
}

}  // namespace
}  // namespace pipward::paper
