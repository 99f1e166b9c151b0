// SPDX-License-Identifier: MIT
#include "pipward/record/screen_table.h"
#include "days.h"

#include <gtest/gtest.h>

#include <sstream>

#include "pipward/record/screen_cell.h"
#include "pipward/record/terminal_text.h"

namespace pipward {
namespace {

using enum CellType;

Column share_column() {
    return {"chance", number, "share", "Chance", "The chance."};
}

using testing::day_of;

/// Two pieces of work, with all that a view can ask for.
Table work() {
    Table table{{"work",
                 "Work",
                 "Some work.",
                 false,
                 {{"as_of", day, "", "As of", "When."},
                  {"tree", text, "", "Tree", "Where."},
                  {"do_to", day, "", "To", "Last day."},
                  share_column(),
                  {"lot", text, "", "Lot", "Its lot."},
                  {"mass_mg", number, "mg", "Pollen", "How much."},
                  {"why", text, "", "Why", "The reasons."}},
                 false},
                {}};
    const Day today = day_of("2026-03-20");
    table.rows = {{{today, "UP-01", day_of("2026-04-07"), 0.959, {}, 1.5, "It blooms."}},
                  {{today, "UP-02", day_of("2027-04-08"), 0.031, {}, 2.5, {}}}};
    return table;
}

const TableView view{.first = {"do_to", "tree", "chance", "lot"}, .below = {"why"}, .once = {"as_of"}};

int widest_line(const std::string& text) {
    std::istringstream lines(text);
    int widest = 0;
    for (std::string line; std::getline(lines, line);) {
        widest = std::max(widest, terminal_width(line));
    }
    return widest;
}

TEST(ScreenCell, SaysDaysShortAndTheirYearOnlyWhereItIsAnother) {
    Column column;
    column.type = CellType::day;
    // 7 April 2026 is a Tuesday (ISO 8601 week dates).
    EXPECT_EQ(cell_on_screen(column, Cell{day_of("2026-04-07")}, 2026), "Tue 7 Apr");
    EXPECT_EQ(cell_on_screen(column, Cell{day_of("2026-04-07")}, 2025), "Tue 7 Apr 2026");
}

TEST(ScreenCell, SaysSharesInPerCent) {
    EXPECT_EQ(per_cent(0.959), "96 %");
    EXPECT_EQ(per_cent(0.0625), "6.25 %");
    EXPECT_EQ(per_cent(0.031), "3.1 %");
    EXPECT_EQ(per_cent(0.126), "13 %");
    EXPECT_EQ(per_cent(0.05), "5 %");
    EXPECT_EQ(per_cent(0.125), "12.5 %");  // half sibs (Wright 1922)
    EXPECT_EQ(per_cent(0.25), "25 %");
    EXPECT_EQ(per_cent(0), "0 %");
    EXPECT_EQ(per_cent(1), "100 %");
    EXPECT_EQ(cell_on_screen({"p", number, "%", "P", "P."}, 25.0, {}), "25 %");
    EXPECT_EQ(cell_on_screen({"m", number, "mg", "M", "M."}, 0.25, {}), "0.25");
}

TEST(ScreenCell, ClaimsNoFalseNoneOrAll) {
    EXPECT_EQ(per_cent(0.0001), "<0.1 %");
    EXPECT_EQ(per_cent(0.999), ">99 %");
}

TEST(ScreenTable, ShowsWhatMattersInItsOrderAndTheConstantOnce) {
    EXPECT_EQ(screen_table(work(), view, {.width = 80, .year = 2026}, Extent::part),
              "Work\n"
              "As of: Fri 20 Mar\n"
              "To              Tree   Chance\n"
              "Tue 7 Apr       UP-01    96 %\n"
              "    It blooms.\n"
              "Thu 8 Apr 2027  UP-02   3.1 %\n");
    EXPECT_TRUE(leaves_out(work(), view, {.width = 80}));
}

TEST(ScreenTable, PutsUnderTheRowWhatHasNoRoomBesideIt) {
    EXPECT_EQ(screen_table(work(), view, {.width = 30, .year = 2026}, Extent::whole),
              "Work\n"
              "As of: Fri 20 Mar\n"
              "To              Tree   Chance\n"
              "Tue 7 Apr       UP-01    96 %\n"
              "    Pollen (mg): 1.5\n"
              "    It blooms.\n"
              "Thu 8 Apr 2027  UP-02   3.1 %\n"
              "    Pollen (mg): 2.5\n");
}

TEST(ScreenTable, DoesNotSayOnceWhatDiffers) {
    auto table = work();
    table.rows.back().cells.front() = day_of("2026-03-21");
    EXPECT_EQ(screen_table(table, view, {.width = 80}, Extent::part).find("As of:"), std::string::npos);
}

TEST(ScreenTable, SaysWhereThereIsNothing) {
    auto table = work();
    table.rows.clear();
    EXPECT_EQ(screen_table(table, view, {.width = 80}, Extent::part), "Work\n(nothing)\n");
    EXPECT_FALSE(leaves_out(table, view, {.width = 80}));
}

TEST(ScreenTable, IsPlainUnlessTheScreenShowsStyles) {
    EXPECT_EQ(screen_table(work(), view, {.width = 80}, Extent::part).find('\x1B'), std::string::npos);
    EXPECT_EQ(
        screen_table(work(), view, {.width = 80, .styled = true}, Extent::part).find("\x1B[1mWork\x1B[0m\n"),
        0U);
}

TEST(ScreenTable, ShowsMarksForControlCharacters) {
    auto table = work();
    table.rows.front().cells[1] = std::string("UP\x1B[31m\n1");
    const auto text = screen_table(table, view, {.width = 80}, Extent::whole);
    EXPECT_EQ(text.find('\x1B'), std::string::npos);
    EXPECT_NE(text.find("UP\uFFFD[31m 1"), std::string::npos) << text;
}

TEST(ScreenTable, HasNoLineWiderThanTheScreenAndLosesNothingWhole) {
    auto table = work();
    table.rows.front().cells[1] =
        std::string("\u6797\u6A94\u6D77 of the upper block, e\u0301tage two, by the gate");
    table.rows.back().cells.back() = std::string(300, 'x') + " and words after it";
    for (int width = 20; width <= 160; ++width) {
        for (const auto extent : {Extent::part, Extent::whole}) {
            EXPECT_LE(widest_line(screen_table(table, view, {.width = width}, extent)), width);
        }
        auto whole = screen_table(table, view, {.width = width}, Extent::whole);
        std::erase_if(whole, [](char c) { return c == ' ' || c == '\n'; });
        EXPECT_NE(whole.find("2.5"), std::string::npos) << whole;
        EXPECT_NE(whole.find("UP-02"), std::string::npos) << whole;
    }
}

TEST(ScreenTable, ColumnsStandInTheOrderOfTheTableWhereTheViewSaysSo) {
    auto ordered = view;
    ordered.in_order = true;
    const auto wide = screen_table(work(), ordered, {.width = 80, .year = 2026}, Extent::part);
    EXPECT_LT(wide.find("Tree"), wide.find("To"));
    const auto weighed = screen_table(work(), view, {.width = 80, .year = 2026}, Extent::part);
    EXPECT_LT(weighed.find("To"), weighed.find("Tree"));
}

}  // namespace
}  // namespace pipward
