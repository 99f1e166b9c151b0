// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_chart.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <regex>

#include "paper/made_up_season.h"
#include "paper/markup_check.h"
#include "pipward/paper/bloom_drawing.h"

using namespace pipward;
using namespace pipward::paper;
using namespace pipward::testing;

namespace {

BloomChart larkfold_chart() {
    return bloom_chart_of(larkfold_forecast(), larkfold_plan());
}

std::vector<std::string> names_of(const BloomChart& chart) {
    std::vector<std::string> names;
    for (const auto& bar : chart.bars) {
        names.push_back(bar.name);
    }
    return names;
}

// The first number after `attribute` in each match of `element` of the drawing, in order.
std::vector<double> numbers_in(const std::string& svg, const std::string& element,
                               const std::string& attribute) {
    const std::regex pattern(element + "[^>]* " + attribute + "=\"([-0-9.]+)\"");
    std::vector<double> numbers;
    for (std::sregex_iterator at(svg.begin(), svg.end(), pattern), end; at != end; ++at) {
        numbers.push_back(std::stod((*at)[1]));
    }
    return numbers;
}

BloomChart chart_of_medians(const std::vector<int>& days_of_april) {
    auto forecast = empty_forecast();
    for (const int of_month : days_of_april) {
        add_window(forecast, window_about(fmt::format("Tree {:02}", of_month), april(of_month)));
    }
    cross::SeasonPlan plan;
    return bloom_chart_of(forecast, plan);
}

TEST(BloomChart, PutsParentsOfWantedCrossesFirstThenGoesByMedianFullBloom) {
    EXPECT_EQ(names_of(larkfold_chart()),
              (std::vector<std::string>{"Tansy Gold", "Ember", "Larkfold Red", "Wold Russet", "Mill Crab",
                                        "Quarry Pear 7", "LF 12-047"}));
}

TEST(BloomChart, KnowsWhichPartEachAccessionPlays) {
    const auto chart = larkfold_chart();
    EXPECT_TRUE(chart.bars[1].seed_parent && chart.bars[1].pollen_parent) << "Ember";
    EXPECT_TRUE(chart.bars[2].seed_parent && !chart.bars[2].pollen_parent) << "Larkfold Red";
    EXPECT_FALSE(chart.bars[4].is_wanted()) << "Mill Crab";
}

TEST(BloomChart, SpansWholeWeeksAroundEveryBarAndTheDayOfTheForecast) {
    const auto chart = larkfold_chart();
    EXPECT_EQ(weekday_of(chart.from), 1);
    EXPECT_EQ(weekday_of(chart.to), 0);
    EXPECT_LE(chart.from, chart.as_of);
    for (const auto& bar : chart.bars) {
        EXPECT_LE(chart.from, std::min(bar.first, bar.full.p10)) << bar.name;
        EXPECT_GE(chart.to, std::max(bar.end, bar.full.p90)) << bar.name;
    }
}

TEST(BloomChart, LeavesOutADayOfTheForecastFarFromBloomButNamesIt) {
    auto forecast = larkfold_forecast();
    forecast.as_of = day(2026, 1, 15);
    const auto chart = bloom_chart_of(forecast, larkfold_plan());
    EXPECT_GT(chart.from, day(2026, 3, 1));
    const auto svg = bloom_chart_svg(chart);
    EXPECT_NE(svg.find("← as of Thu 15 Jan"), svg.npos);
    EXPECT_EQ(svg.find("line class=\"as-of\" x1=\"-"), svg.npos);
}

TEST(BloomChart, DrawsLaterDaysFartherRight) {
    const auto svg =
        bloom_chart_svg(chart_of_medians({3, 9, 15, 21, 30}), {ChartShape::wide, "t", true, false});
    for (const auto& [element, attribute] :
         {std::pair{"rect class=\"band", "x"}, std::pair{"line class=\"median\"", "x1"}}) {
        const auto x = numbers_in(svg, element, attribute);
        ASSERT_EQ(x.size(), 5u) << element;
        EXPECT_TRUE(std::ranges::is_sorted(x));
        EXPECT_EQ(std::ranges::adjacent_find(x), x.end()) << "no two on one spot";
    }
}

TEST(BloomChart, DrawsEveryMarkWhereItsDayStandsOnTheAxis) {
    const auto chart = larkfold_chart();
    for (const auto shape : {ChartShape::wide, ChartShape::stacked}) {
        const auto axis = plot_axis(chart, measures_of(shape));
        const auto svg = bloom_chart_svg(chart, {shape, "t", true, false});
        const auto left = numbers_in(svg, "rect class=\"band", "x");
        const auto width = numbers_in(svg, "rect class=\"band", "width");
        const auto tick = numbers_in(svg, "line class=\"median\"", "x1");
        ASSERT_EQ(left.size(), chart.bars.size());
        for (std::size_t i = 0; i < chart.bars.size(); ++i) {
            const auto& bar = chart.bars[i];
            EXPECT_NEAR(left[i], axis.start_of(bar.full.p10), 0.06);
            EXPECT_NEAR(left[i] + width[i], axis.end_of(bar.full.p90), 0.11);
            EXPECT_NEAR(tick[i], axis.middle_of(bar.full.p50), 0.06);
            EXPECT_NEAR(numbers_in(svg, "line class=\"life\"", "x1")[3 * i], axis.start_of(bar.first), 0.06);
            EXPECT_NEAR(numbers_in(svg, "line class=\"life\"", "x2")[3 * i], axis.end_of(bar.end), 0.06);
        }
    }
}

TEST(BloomChart, KeepsAWindowOfOneDayVisible) {
    const auto svg = bloom_chart_svg(bloom_chart_of(
                                         [] {
                                             auto forecast = empty_forecast();
                                             auto window = window_about("Sure", april(20), 0);
                                             window.first = window.end = window.full;
                                             add_window(forecast, window);
                                             return forecast;
                                         }(),
                                         cross::SeasonPlan{}),
                                     {ChartShape::wide, "t", true, false});
    EXPECT_GT(numbers_in(svg, "rect class=\"band", "width").front(), 3);
}

TEST(BloomChart, StaysInsideItsPicture) {
    for (const auto shape : {ChartShape::wide, ChartShape::stacked}) {
        const auto svg = bloom_chart_svg(larkfold_chart(), {shape, "t", false, true});
        const double width = measures_of(shape).width;
        const double height = std::stod(svg.substr(svg.find("height=\"") + 8));
        for (const auto& attribute : {"x", "x1", "x2"}) {
            for (const double x : numbers_in(svg, "<(?:line|rect|text)", attribute)) {
                EXPECT_GE(x, 0);
                EXPECT_LE(x, width);
            }
        }
        for (const double y : numbers_in(svg, "<(?:line|rect|text)", "y")) {
            EXPECT_LE(y, height);
        }
    }
}

TEST(BloomChart, SaysItsNumbersInWordsBesideTheBar) {
    const auto svg = bloom_chart_svg(larkfold_chart());
    EXPECT_NE(svg.find(">24 Apr</text>"), svg.npos);
    EXPECT_NE(svg.find(">20–28 Apr</text>"), svg.npos);
    EXPECT_NE(svg.find(">27 Apr – 5 May</text>"), svg.npos);
    EXPECT_NE(svg.find(">Apr 2026</text>"), svg.npos);
    EXPECT_NE(svg.find(">as of Thu 9 Apr</text>"), svg.npos);
}

TEST(BloomChart, MarksEstimatedWindowsByShapeAndWord) {
    const auto svg = bloom_chart_svg(larkfold_chart(), {ChartShape::wide, "t", false, false});
    EXPECT_EQ(count_of(svg, "class=\"band lent\""), 2);
    EXPECT_EQ(count_of(svg, "○ estimated"), 2);
    EXPECT_EQ(count_of(svg, "● 6 observations"), 5);
}

TEST(BloomChart, IsWellFormedForNamesMadeOfMarkup) {
    auto forecast = larkfold_forecast();
    add_window(forecast, window_about("<script>\"&amp;'</script> \x01\xFF 🍎", april(20)));
    add_window(forecast, window_about(std::string(300, 'W'), april(21)));
    for (const auto shape : {ChartShape::wide, ChartShape::stacked}) {
        const auto svg = bloom_chart_svg(bloom_chart_of(forecast, larkfold_plan()), {shape});
        EXPECT_EQ(MarkupCheck(svg).trouble, "");
        EXPECT_EQ(svg.find("<script"), svg.npos);
        EXPECT_EQ(svg.find('\x01'), svg.npos);
    }
}

TEST(BloomChart, ShowsTheBeginningOfAnEndlessNameAndKeepsItWholeForWhoeverAsks) {
    auto forecast = empty_forecast();
    add_window(forecast, window_about(std::string(300, 'W'), april(21)));
    const auto svg = bloom_chart_svg(bloom_chart_of(forecast, cross::SeasonPlan{}));
    EXPECT_EQ(count_of(svg, std::string(300, 'W')), 3) << "twice described, once in the row's title";
    EXPECT_EQ(count_of(svg, "W…</text>"), 1);
}

TEST(BloomChart, SaysSoWhenThereIsNothingToShow) {
    auto forecast = empty_forecast();
    const auto chart = bloom_chart_of(forecast, cross::SeasonPlan{});
    EXPECT_TRUE(chart.bars.empty());
    const auto svg = bloom_chart_svg(chart);
    EXPECT_EQ(MarkupCheck(svg).trouble, "");
    EXPECT_NE(svg.find("No accession has a bloom window."), svg.npos);
}

TEST(BloomChart, TellsWhoeverCannotSeeItWhatItShows) {
    const auto svg = bloom_chart_svg(larkfold_chart(), {ChartShape::wide, "here"});
    EXPECT_NE(svg.find("role=\"img\" aria-labelledby=\"here-title here-desc\""), svg.npos);
    EXPECT_NE(
        svg.find("<desc id=\"here-desc\">7 accessions, Mon 30 Mar to Sun 10 May. Earliest median full bloom: "
                 "Mill Crab, Fri 10 Apr. Latest: Wold Russet, Fri 1 May.</desc>"),
        svg.npos);
}

TEST(BloomChart, IsTheSameEveryTime) {
    EXPECT_EQ(bloom_chart_svg(larkfold_chart()), bloom_chart_svg(larkfold_chart()));
}

TEST(BloomChart, NeedsNothingFromOutside) {
    const auto svg = bloom_chart_svg(larkfold_chart());
    EXPECT_EQ(count_of(svg, "http"), 1) << "only the name of the SVG language";
    EXPECT_EQ(svg.find("url("), svg.npos);
    EXPECT_EQ(svg.find("href"), svg.npos);
}

TEST(BloomChart, ReadsAsXmlByAnOutsideReader) {
    if (std::system("xmllint --version >/dev/null 2>&1") != 0) {
        GTEST_SKIP() << "xmllint is not installed";
    }
    FILE* reader = popen("xmllint --noout - 2>&1", "w");
    ASSERT_NE(reader, nullptr);
    const auto svg = bloom_chart_svg(larkfold_chart());
    std::fwrite(svg.data(), 1, svg.size(), reader);
    EXPECT_EQ(pclose(reader), 0);
}

TEST(DayRangeText, NamesAMonthOnceAndASingleDayAlone) {
    EXPECT_EQ(day_range_text(april(12), april(25)), "12–25 Apr");
    EXPECT_EQ(day_range_text(april(28), april(33)), "28 Apr – 3 May");
    EXPECT_EQ(day_range_text(april(12), april(12)), "12 Apr");
    EXPECT_EQ(day_range_text(day(2025, 4, 1), day(2026, 4, 2)), "1 Apr – 2 Apr");
}

}  // namespace
