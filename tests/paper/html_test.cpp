// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/html.h"

#include <gtest/gtest.h>

#include "paper/made_up_season.h"
#include "paper/markup_check.h"

using namespace pipward;
using namespace pipward::paper;
using namespace pipward::testing;

namespace {

const Wording english_words = in_english;
const Speech english{english_words};

TEST(MarkupCheck, RefusesWhatBrowsersWouldForgive) {
    EXPECT_EQ(MarkupCheck("<p class=\"a\">x &amp; y<br></p>").trouble, "");
    for (const auto* broken :
         {"<p>", "</p>", "<p><b></p></b>", "<p>a & b</p>", "<p>a > b</p>", "<p id=\"a\" id=\"b\"></p>",
          "<p id=\"a\"></p><p id=\"a\"></p>", "<p class=\"a></p>", "<p>\x01</p>", "<p"}) {
        EXPECT_NE(MarkupCheck(broken).trouble, "") << broken;
    }
}

TEST(NameHtml, EscapesAndKeepsShortCodesInOnePiece) {
    EXPECT_EQ(detail::name_html("B-11"), "<bdi class=\"short\">B-11</bdi>");
    EXPECT_EQ(detail::name_html("Larkfold <Red> & Sons"), "<bdi>Larkfold &lt;Red&gt; &amp; Sons</bdi>");
}

TEST(DayHtml, SaysTheDayForPeopleAndMachines) {
    EXPECT_EQ(detail::day_html(april(12), Speech(in_english, 2026)),
              "<time datetime=\"2026-04-12\">Sun 12 Apr</time>");
    EXPECT_EQ(detail::day_html(april(12), Speech(in_english, 2027)),
              "<time datetime=\"2026-04-12\">Sun 12 Apr 2026</time>");
}

TEST(SheetTable, SaysTheScopeOfEveryHeading) {
    const auto html =
        detail::sheet_table(verbatim("Trees & rows"), {{say("Tree"), 40, true}, {say("Row"), 60}},
                            {{{"A-01", "3"}, "<p>below</p>"}, {{"A-02", ""}, ""}}, english);
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_EQ(count_of(html, "scope=\"col\""), 2);
    EXPECT_EQ(count_of(html, "scope=\"row\""), 2);
    EXPECT_NE(html.find("<caption>Trees &amp; rows</caption>"), html.npos);
    EXPECT_NE(html.find("<td colspan=\"2\"><p>below</p></td>"), html.npos);
    EXPECT_EQ(count_of(html, "colspan"), 1) << "a row with nothing below gets no second line";
}

TEST(SheetTable, NamesEveryValueForPagesTooNarrowForColumns) {
    const auto html = detail::sheet_table({}, {{say("Tree"), 40, true}, {say("Row"), 60}},
                                          {{{"A-01", "3"}, ""}, {{"A-02", ""}, ""}}, english);
    EXPECT_NE(html.find("<td data-label=\"Row\"><div>3</div></td>"), html.npos);
    EXPECT_NE(html.find("<td class=\"empty\" data-label=\"Row\">"), html.npos);
}

TEST(SheetTable, RefusesARowWithTooFewCells) {
    EXPECT_THROW(
        detail::sheet_table({}, {{say("Tree"), 40, true}, {say("Row"), 60}}, {{{"A-01"}, ""}}, english),
        std::out_of_range);
}

}  // namespace
