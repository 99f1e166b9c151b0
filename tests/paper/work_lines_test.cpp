// SPDX-License-Identifier: MIT
#include "pipward/paper/work_lines.h"

#include <gtest/gtest.h>

#include "pipward/paper/field_calendar.h"
#include "pipward/paper/paper_size.h"
#include "pipward/paper/planting_sheet.h"

namespace pipward::paper {
namespace {

season::FieldWorkItem pollinating() {
    season::FieldWorkItem item;
    item.kind = season::WorkKind::flowers;
    item.key = "field 26-01 T1";
    item.from = *parse_iso_day("2026-05-01");
    item.to = *parse_iso_day("2026-05-04");
    item.tree = "T1";
    item.title = say("Pollinate {}", "T1");
    item.tags = "26-01-a";
    item.with = say("lot {}", "P-1");
    item.hazards = {season::Hazard::ladders};
    return item;
}

TEST(WorkLine, TellsWhatToWriteDownByTheKindOfWork) {
    season::WorkStop stop;
    stop.item = pollinating();
    EXPECT_EQ(work_line(stop).write_down.text(), "flowers, tag, by whom");
    EXPECT_EQ(work_line(stop).tags.text(), "Tags: 26-01-a.");
    stop.item.kind = season::WorkKind::seed;
    stop.item.tags.clear();
    EXPECT_EQ(work_line(stop).write_down.text(), "count, day");
    EXPECT_TRUE(work_line(stop).tags.empty());
}

TEST(WorkLine, OfAHarvestingHasItsTagAndItsDays) {
    Pollination work;
    work.tag = "26-01-a";
    work.cross = "26-01";
    work.tree = "T1";
    work.flowers = 1;
    season::Harvest harvest;
    harvest.tag.work = &work;
    harvest.tag.days.from = *parse_iso_day("2026-09-20");
    harvest.tag.days.to = *parse_iso_day("2026-10-10");
    const auto line = work_line(harvest);
    EXPECT_EQ(line.title.text(), "Cross 26-01: harvest the fruit");
    EXPECT_EQ(line.amount.text(), "1 flower pollinated");
    EXPECT_EQ(line.to, harvest.tag.days.to);
    EXPECT_FALSE(line.late);
}

TEST(CalendarEvent, HasPollenTagsHazardsAndTheTreesPlace) {
    Orchard orchard;
    Tree tree;
    tree.label = "T1";
    tree.block = "Upper";
    orchard.trees = {tree};
    const auto event = calendar_event(pollinating(), OrchardIndex(orchard));
    EXPECT_EQ(event.key, "field 26-01 T1");
    EXPECT_EQ(event.place.text(), "block Upper");
    EXPECT_EQ(event.text.text().find("Tags: 26-01-a. Pollen: lot P-1."), 0U);
    EXPECT_NE(event.text.text().find("Caution: "), std::string::npos);
}

TEST(PlantingPlaces, OfACheckTellItsAccessionOnly) {
    place::RowPosition place;
    place.row = "3";
    place.position = 12;
    CrossGoal goal;
    goal.code = "25-01";
    goal.seed_parent = "A";
    goal.pollen_parent = "B";
    seed::Planted seedling{1, "25-01-001", "25-01-001", &goal, &place};
    seed::Planted check{2, "check-1", "Wrenlea", nullptr, &place};
    const auto places = planting_places({seedling, check});
    EXPECT_EQ(places[0].family, "A × B");
    EXPECT_EQ(places[0].cross, "25-01");
    EXPECT_EQ(places[1].family, "Wrenlea");
    EXPECT_TRUE(places[1].cross.empty());
    EXPECT_EQ(places[1].position, 12);
}

TEST(PaperSize, EachHasItsPage) {
    EXPECT_EQ(size_of(PaperSize::a3).width, a4_page.height);
    EXPECT_EQ(size_of(PaperSize::letter).height, letter_page.height);
    EXPECT_EQ(to_word(PaperSize::a4), "a4");
}

}  // namespace
}  // namespace pipward::paper
