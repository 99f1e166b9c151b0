// SPDX-License-Identifier: MIT
#include "pipward/paper/field_plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "pipward/paper/detail/clipped.h"
#include "pipward/paper/detail/map_furniture.h"
#include "pipward/paper/field_pages.h"

namespace pipward::paper {
namespace {

// Rows from west to east, 4 m apart.
FieldMap block(int rows, int positions, double spacing) {
    FieldMap map;
    map.title = "Block";
    for (int row = 0; row < rows; ++row) {
        MapRow line{std::to_string(row + 1), {{0, -4.0 * row}, {spacing * (positions - 1), -4.0 * row}}};
        for (int position = 0; position < positions; ++position) {
            map.trees.push_back({{spacing * position, -4.0 * row}, std::to_string(position + 1)});
        }
        map.rows.push_back(line);
    }
    return map;
}

TextSize half_an_em(const std::string& text, const Face& face, std::optional<Millimetres>) {
    const auto em = from_points(face.points);
    return {em * (0.5 * static_cast<double>(text.size())), em * 1.2, 1};
}

FieldPages drawn(const FieldMap& map, const FieldPlan& plan) {
    return field_pages(map, plan, half_an_em, in_english);
}

TEST(FieldPlan, TakesTheLargestRoundScaleThatFitsOnePage) {
    const auto plan = plan_map(block(5, 12, 3.5), a4_page, {});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->windows.size(), 1U);
    EXPECT_FALSE(plan->overview);
    EXPECT_EQ(plan->windows[0].denominator, 200);  // 38.5 m: 192 mm of the 255 on an A4 page on its side
    EXPECT_GT(plan->windows[0].page.width, plan->windows[0].page.height);
    EXPECT_TRUE(plan->is_legible);
    const auto upright = plan_map(block(12, 5, 2), a4_page, {});
    EXPECT_GT(upright->windows[0].page.height, upright->windows[0].page.width);
}

TEST(FieldPlan, TakesSeveralPagesWhereOneWouldBeTooSmall) {
    const auto map = block(40, 150, 1.0);
    const auto plan = plan_map(map, a4_page, {});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->windows[0].denominator, 250);  // 1 m is 4 mm; at 1:500 it would be 2
    EXPECT_GT(plan->windows.size(), 1U);
    ASSERT_TRUE(plan->overview);
    EXPECT_EQ(plan_map(map, a3_page, {})->windows[0].denominator, 250);
    EXPECT_LT(plan_map(map, a3_page, {})->windows.size(), plan->windows.size());
}

TEST(FieldPlan, EveryTreeLiesInTheCoreOfSomePage) {
    auto map = block(40, 150, 1.0);
    for (const double turned : {0.0, 30.0, -75.0}) {
        map.turned_deg = turned;
        const auto plan = plan_map(map, a4_page, {});
        ASSERT_TRUE(plan);
        const auto core = map_core(plan->windows[0].page);
        for (const auto& tree : map.trees) {
            const auto at = on_page(tree.at, turned);
            EXPECT_TRUE(std::ranges::any_of(plan->windows, [&](const MapWindow& window) {
                return std::abs(at.right - window.middle.right) * 1000 / plan->windows[0].denominator <=
                           core.width.value / 2 + 0.01 &&
                       std::abs(at.up - window.middle.up) * 1000 / plan->windows[0].denominator <=
                           core.height.value / 2 + 0.01;
            }));
        }
    }
}

TEST(FieldPlan, BlocksThatLieFarApartHavePagesOfTheirOwn) {
    auto map = block(5, 12, 3.5);
    const auto second = block(3, 30, 1.2);
    const auto add = [&](double north) {
        for (auto tree : second.trees) {
            tree.at.north += north;
            tree.block = "Nursery";
            map.trees.push_back(tree);
        }
    };
    add(25);
    EXPECT_EQ(plan_map(map, a4_page, {})->windows.size(), 1U);
    map = block(5, 12, 3.5);
    add(900);
    const auto plan = plan_map(map, a4_page, {});
    ASSERT_EQ(plan->windows.size(), 2U);
    EXPECT_EQ(plan->windows[0].denominator, 200);
    EXPECT_EQ(plan->windows[1].block, "Nursery");
    ASSERT_TRUE(plan->overview);
    EXPECT_EQ(plan->overview->denominator, 5000);
}

TEST(FieldPlan, GivesUpWhereATreeStandsOnAnotherContinent) {
    auto map = block(5, 10, 2);
    EXPECT_TRUE(plan_map(map, a4_page, {}));
    map.trees.push_back({{9e6, 2e6}, "lost"});
    const auto plan = plan_map(map, a4_page, {});
    EXPECT_FALSE(plan && plan->windows.size() < 2);
    EXPECT_FALSE(plan_map(FieldMap{}, a4_page, {}));
}

TEST(FieldPlan, SaysWhenAScaleOfOnesOwnIsTooSmallToRead) {
    const auto plan = plan_map(block(5, 12, 1), a4_page, 2000);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->windows[0].denominator, 2000);
    EXPECT_FALSE(plan->is_legible);
}

TEST(FieldPlan, TheUsualSpacingIsNotMisledByTwoTreesOnOneSpot) {
    auto map = block(5, 20, 2.5);
    map.trees.push_back(map.trees.front());
    EXPECT_NEAR(usual_spacing(map.trees), 2.5, 1e-9);
    EXPECT_TRUE(std::isinf(usual_spacing(std::vector<MapTree>(1))));
}

TEST(FieldPlan, TurnsRowsAcrossThePage) {
    for (const double angle : {0.0, 16.0, 80.0, -45.0}) {
        const double r = angle * 3.14159265358979 / 180;
        const std::vector<MapRow> rows{{"1", {{0, 0}, {50 * std::cos(r), 50 * std::sin(r)}}},
                                       {"2", {{60 * std::cos(r), 60 * std::sin(r)}, {0, 0}}}};
        const double turned = turn_to_rows_deg(rows);
        EXPECT_NEAR(turned, angle, 1e-6);
        EXPECT_NEAR(on_page(rows[0].line[1], turned).up, 0, 1e-6);
        EXPECT_NEAR(on_page(rows[0].line[1], turned).right, 50, 1e-6);
    }
}

TEST(FieldPages, DrawsATreeWhereTheScaleSaysItIs) {
    const auto map = block(1, 12, 3.5);
    const auto plan = plan_map(map, a4_page, 250);
    const auto pages = drawn(map, *plan);
    std::vector<Millimetres> marks;
    for (const auto& piece : pages.pages[0].pieces) {
        if (const auto* shape = std::get_if<ShapePiece>(&piece);
            shape && shape->corners.size() == 4 && shape->fill == Paint{240, 228, 66}) {
            marks.push_back(shape->corners[0].x);
        }
    }
    std::ranges::sort(marks);
    ASSERT_GE(marks.size(), 12U);
    const std::set<double> places = [&] {
        std::set<double> all;
        for (const auto& mark : marks) {
            all.insert(std::round(mark.value * 1000));
        }
        return all;
    }();
    EXPECT_GE(places.size(), 12U);
    const auto last = *std::prev(places.end());
    EXPECT_NEAR((last - *std::prev(places.end(), 2)) / 1000, 14.0, 0.01);  // 3.5 m at 1:250
}

TEST(FieldPages, TextsDoNotLieOnOneAnother) {
    const auto map = block(8, 12, 3.5);
    const auto pages = drawn(map, *plan_map(map, a4_page, {}));
    EXPECT_EQ(pages.numbers_left_out, 0U);
    std::vector<Box> boxes;
    for (const auto& piece : pages.pages[0].pieces) {
        if (const auto* text = std::get_if<TextPiece>(&piece)) {
            boxes.push_back(inset(text->box, {0.35}));
        }
    }
    EXPECT_GT(boxes.size(), 96U);
    for (std::size_t a = 0; a < boxes.size(); ++a) {
        EXPECT_TRUE(holds({{0}, {0}, pages.pages[0].size.width, pages.pages[0].size.height}, boxes[a]));
        for (std::size_t b = 0; b < a; ++b) {
            EXPECT_FALSE(overlap(boxes[a], boxes[b])) << a << " " << b;
        }
    }
}

TEST(FieldPages, NamesOfManyRowsNeitherCollideNorHideTrees) {
    auto map = block(100, 100, 1.0);
    for (auto& tree : map.trees) {
        tree.number.clear();
    }
    const auto pages = drawn(map, *plan_map(map, a4_page, 2000));
    ASSERT_EQ(pages.pages.size(), 1U);
    std::vector<Box> names;
    for (const auto& piece : pages.pages[0].pieces) {
        if (const auto* text = std::get_if<TextPiece>(&piece); text != nullptr && text->face.bold) {
            names.push_back(inset(text->box, {0.1}));
        }
    }
    EXPECT_GT(names.size(), 20U);
    for (std::size_t a = 0; a < names.size(); ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            EXPECT_FALSE(overlap(names[a], names[b])) << a << " " << b;
        }
        for (const auto& piece : pages.pages[0].pieces) {
            if (const auto* mark = std::get_if<ShapePiece>(&piece);
                mark != nullptr && !mark->corners.empty()) {
                const auto& corner = mark->corners.front();
                EXPECT_FALSE(overlap(names[a], {corner.x, corner.y, {0.01}, {0.01}})) << a;
            }
        }
    }
}

TEST(FieldPages, NoTextHidesATreeOrAnotherTextOnAnyPageOfAHundredRows) {
    auto map = block(100, 100, 1.0);
    // A second block behind the first, so that the name of the first has trees above it.
    for (const auto& tree : block(10, 100, 1.0).trees) {
        map.trees.push_back({tree.at + math::PlanePoint{0, 44}, tree.number, {}, false, "Behind"});
    }
    for (std::size_t i = 0; i < 10000; ++i) {
        map.trees[i].block = "Before";
    }
    for (const double turned : {0.0, 35.0}) {
        map.turned_deg = turned;
        const auto pages = drawn(map, *plan_map(map, a3_page, {}));
        std::size_t all_texts = 0;
        for (std::size_t page = pages.pages.size() > 1 ? 1 : 0; page < pages.pages.size(); ++page) {
            const auto frame = map_box(pages.pages[page].size);
            std::vector<Box> texts;
            std::vector<PaperSpot> marks;
            for (const auto& piece : pages.pages[page].pieces) {
                const auto* text = std::get_if<TextPiece>(&piece);
                if (text != nullptr && holds(frame, inset(text->box, {0.5}))) {
                    texts.push_back(inset(text->box, {0.4}));
                }
                if (const auto* mark = std::get_if<ShapePiece>(&piece);
                    mark != nullptr && mark->fill == Paint{240, 228, 66}) {
                    marks.push_back(mark->corners.front());
                }
            }
            all_texts += texts.size();
            std::ranges::sort(texts, {}, [](const Box& box) { return box.left.value; });
            for (std::size_t a = 0; a < texts.size(); ++a) {
                for (std::size_t b = a + 1; b < texts.size() && texts[b].left < texts[a].right(); ++b) {
                    EXPECT_FALSE(overlap(texts[a], texts[b])) << page << " " << a << " " << b;
                }
                EXPECT_TRUE(std::ranges::none_of(marks,
                                                 [&](PaperSpot at) {
                                                     return overlap(texts[a], {at.x, at.y, {0.01}, {0.01}});
                                                 }))
                    << page << " " << a;
            }
        }
        // An outermost page may have hardly any; most trees have their number on some page.
        EXPECT_GT(all_texts, map.trees.size() / 2);
    }
}

TEST(FieldPages, EveryTreeStandsOnSomePageHoweverTheMapIsTurned) {
    auto map = block(40, 40, 1.0);
    for (auto& tree : map.trees) {
        tree.number.clear();
    }
    for (const double turned : {0.0, 35.0, 80.0}) {
        map.turned_deg = turned;
        const auto plan = *plan_map(map, a4_page, 100);
        const auto pages = drawn(map, plan);
        std::size_t shown = 0;
        for (std::size_t page = plan.overview ? 1 : 0; page < pages.trees.size(); ++page) {
            shown += pages.trees[page];
        }
        EXPECT_GE(shown, map.trees.size()) << turned;
    }
}

TEST(FieldPages, CountsTheNumbersForWhichThereIsNoRoom) {
    const auto map = block(8, 40, 0.3);
    const auto pages = drawn(map, *plan_map(map, a4_page, 500));
    EXPECT_GT(pages.numbers_left_out, 100U);
}

TEST(FieldPages, TheOverviewComesFirst) {
    const auto map = block(40, 150, 1.0);
    const auto plan = plan_map(map, a4_page, {});
    const auto pages = drawn(map, *plan);
    ASSERT_EQ(pages.pages.size(), plan->windows.size() + 1);
    EXPECT_EQ(pages.denominators[0], plan->overview->denominator);
    EXPECT_EQ(pages.trees[0], 6000);
    EXPECT_EQ(pages.denominators[1], plan->windows[0].denominator);
}

TEST(ScaleBar, IsOfRoundLengthAndFitsThePage) {
    for (const int scale : {50, 100, 123, 200, 250, 500, 750, 1000, 2500, 10000, 99999}) {
        const auto bar = detail::scale_bar(scale);
        EXPECT_GE(bar.length.value, 30 - 1e-6) << scale;
        EXPECT_LE(bar.length.value, 75 + 1e-6) << scale;
        EXPECT_NEAR(bar.length.value, bar.metres * 1000 / scale, 1e-9);
        const double lead = bar.metres / std::pow(10, std::floor(std::log10(bar.metres) + 1e-9));
        EXPECT_TRUE(std::abs(lead - 1) < 1e-6 || std::abs(lead - 2) < 1e-6 || std::abs(lead - 5) < 1e-6)
            << lead;
    }
    EXPECT_EQ(detail::scale_bar(250).metres, 10);
    EXPECT_EQ(detail::scale_bar(500).metres, 20);
}

TEST(Clipped, KeepsThePartsOfALineThatLieInABox) {
    const Box box{{0}, {0}, {10}, {10}};
    const auto through = detail::clipped({{{-5}, {5}}, {{15}, {5}}}, box);
    ASSERT_EQ(through.size(), 1U);
    EXPECT_NEAR(through[0].front().x.value, 0, 1e-12);
    EXPECT_NEAR(through[0].back().x.value, 10, 1e-12);
    const auto twice = detail::clipped({{{1}, {1}}, {{1}, {20}}, {{9}, {20}}, {{9}, {1}}}, box);
    EXPECT_EQ(twice.size(), 2U);
    EXPECT_EQ(detail::clipped({{{1}, {1}}, {{5}, {5}}, {{9}, {1}}}, box).size(), 1U);
    EXPECT_TRUE(detail::clipped({{{20}, {0}}, {{20}, {10}}}, box).empty());
}

}  // namespace
}  // namespace pipward::paper
