// SPDX-License-Identifier: MIT
#include "pipward/paper/work_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "bracketed.h"
#include "paper/markup_check.h"
#include "pipward/paper/planting_sheet.h"

using namespace pipward;
using namespace pipward::paper;
using namespace pipward::testing;

namespace {

bool has(const std::string& html, std::string_view part) {
    return html.find(part) != html.npos;
}

WorkSheet made_up() {
    WorkSheet sheet;
    sheet.title = say("Work sheet");
    sheet.orchard_name = "Larkfold <Orchard>";
    sheet.from = *parse_iso_day("2026-05-04");
    sheet.to = *parse_iso_day("2026-05-10");
    sheet.at_trees = {
        {.title = say("Pollinate {} for cross {}: {}", "LO-02-08", "26-02", say("{} flowers", 40)),
         .from = sheet.from,
         .to = sheet.from + 3,
         .address = say("block {}", "Lower"),
         .label = "LO-02-08",
         .tags = say("Tags: {}.", "26-02-a"),
         .with = say("lot {}", "P-26-01"),
         .amount = say("{} flowers", 40),
         .mind = {},
         .write_down = say("flowers, tag, by whom")}};
    sheet.on_bench = {{.title = say("Test stored pollen of {}", "Wrenlea"),
                       .from = {},
                       .to = {},
                       .late = true,
                       .address = {},
                       .label = {},
                       .tags = {},
                       .with = {},
                       .amount = {},
                       .mind = {},
                       .write_down = say("lot, flowers")}};
    sheet.walk_metres = 212;
    sheet.hazards = {season::Hazard::ladders, season::Hazard::allergy};
    return sheet;
}

TEST(WorkSheet, IsOneWellFormedPageWithABoxForEachPieceOfWork) {
    const auto html = work_sheet_html(made_up());
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_EQ(count_of(html, "type=\"checkbox\""), 2);
    EXPECT_EQ(count_of(html, "<h1>"), 1);
    EXPECT_TRUE(has(html, "Larkfold &lt;Orchard&gt;"));
    EXPECT_TRUE(has(html, "about 212 m"));
    EXPECT_TRUE(has(html, "26-02-a"));
}

TEST(WorkSheet, TellsOnlyTheCautionsOfItsOwnWork) {
    const auto html = work_sheet_html(made_up());
    EXPECT_TRUE(has(html, "three points of contact"));
    EXPECT_FALSE(has(html, "amygdalin"));
    EXPECT_TRUE(has(html, "come before anything on this page"));
    auto without = made_up();
    without.hazards.clear();
    EXPECT_FALSE(has(work_sheet_html(without), "id=\"care\""));
}

TEST(WorkSheet, SaysSoWhereNothingIsToBeDone) {
    WorkSheet empty;
    empty.title = say("Work sheet");
    const auto html = work_sheet_html(empty);
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_TRUE(has(html, "Nothing is to be done at the trees."));
}

TEST(WorkSheet, SpeaksTheWordsOfTheHost) {
    const auto html = work_sheet_html(made_up(), bracketed);
    EXPECT_TRUE(has(html, "⟦At the trees⟧"));
    EXPECT_TRUE(has(html, "⟦Ladders.⟧"));
}

PlantingSheet planting(int seedlings) {
    PlantingSheet sheet{"Larkfold", "Nursery", *parse_iso_day("2027-04-12"), {}, {3, 2}};
    for (int i = 1; i <= seedlings; ++i) {
        sheet.places.push_back({i, "26-01-" + std::to_string(i), "26-01", "A × B", i <= 4 ? "1" : "2", i});
    }
    return sheet;
}

TEST(PlantingSheet, HasATableForEachRowAndAMapOfEachTray) {
    const auto html = planting_sheet_html(planting(8));
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_EQ(count_of(html, "type=\"checkbox\""), 8);
    EXPECT_EQ(count_of(html, "class=\"tray\""), 2);
    EXPECT_TRUE(has(html, "Tray 2"));
    EXPECT_TRUE(has(html, "id=\"row-2\""));
    EXPECT_FALSE(has(html, "id=\"row-3\""));
}

TEST(PlantingSheet, LeavesTraysOutWhereThereAreNone) {
    auto sheet = planting(8);
    sheet.tray.across = 0;
    EXPECT_FALSE(has(planting_sheet_html(sheet), "class=\"tray\""));
    EXPECT_EQ(MarkupCheck(planting_sheet_html(planting(0))).trouble, "");
}

}  // namespace
