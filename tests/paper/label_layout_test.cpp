// SPDX-License-Identifier: MIT
// Layout with a made-up ruler: every character is half an em wide, a line is 1.2 em high.
#include "pipward/paper/label_layout.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace pipward::paper {
namespace {

TextSize half_an_em(const std::string& text, const Face& face, std::optional<Millimetres> wrap) {
    const auto em = from_points(face.points);
    const auto width = em * (0.5 * static_cast<double>(text.size()));
    if (!wrap || width <= *wrap) {
        return {width, em * 1.2, 1};
    }
    const double a_line = std::max(1.0, std::floor(*wrap / (em * 0.5)));
    const int lines = static_cast<int>(std::ceil(static_cast<double>(text.size()) / a_line));
    return {em * (0.5 * a_line), em * (1.2 * lines), lines};
}

const Box room{{10}, {20}, {66}, {33}};

std::vector<TextPiece> texts(const LaidLabel& laid) {
    std::vector<TextPiece> found;
    for (const auto& piece : laid.pieces) {
        if (const auto* text = std::get_if<TextPiece>(&piece)) {
            found.push_back(*text);
        }
    }
    return found;
}

void expect_inside_without_overlap(const LaidLabel& laid, const Box& outer) {
    std::vector<Box> boxes;
    for (const auto& piece : laid.pieces) {
        if (const auto* text = std::get_if<TextPiece>(&piece)) {
            boxes.push_back(text->box);
        } else if (const auto* code = std::get_if<QrPiece>(&piece)) {
            boxes.push_back(code->box);
        } else if (const auto* line = std::get_if<LinePiece>(&piece)) {
            for (const auto& spot : line->through) {
                EXPECT_TRUE(holds(inset(outer, {-0.001}), {spot.x, spot.y, {}, {}}));
            }
        }
    }
    for (std::size_t a = 0; a < boxes.size(); ++a) {
        EXPECT_TRUE(holds(inset(outer, {-0.001}), boxes[a])) << a;
        for (std::size_t b = 0; b < a; ++b) {
            EXPECT_FALSE(overlap(inset(boxes[a], {0.001}), boxes[b])) << a << " " << b;
        }
    }
}

TEST(LabelLayout, TheHeadlineIsTheLargestAndTheLinesFollowInTheirOrder) {
    const auto laid =
        lay_label({"UP-05-04", {"16-01-04", "Tansy Lane x Wrenlea"}, {}, "UP-05-04"}, room, half_an_em);
    const auto found = texts(laid);
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].text, "UP-05-04");
    EXPECT_TRUE(found[0].face.bold);
    EXPECT_GT(found[0].face.points, 2 * found[1].face.points);
    EXPECT_LT(found[1].box.top, found[2].box.top);
    EXPECT_EQ(laid.headline_points, found[0].face.points);
    expect_inside_without_overlap(laid, room);
}

TEST(LabelLayout, KeepsAllTextInsideForAnyLengthAndAnyLabel) {
    for (const auto& outer :
         {room, Box{{0}, {0}, {45}, {22}}, Box{{0}, {0}, {25}, {100}}, Box{{5}, {5}, {97}, {60}}}) {
        for (const std::size_t length : {1U, 8U, 30U, 80U, 300U, 1000U}) {
            const LabelText label{std::string(length, 'W'),
                                  {std::string(length, 'a'), "Larkfold Mix (blend)"},
                                  {},
                                  std::string(length, 'W')};
            const auto laid = lay_label(label, outer, half_an_em);
            ASSERT_TRUE(laid.fits) << length;
            expect_inside_without_overlap(laid, outer);
            EXPECT_EQ(texts(laid)[0].text, label.headline);
            EXPECT_EQ(texts(laid)[1].text, label.lines[0]);
        }
    }
}

TEST(LabelLayout, TextIsShrunkFirstThenWrapped) {
    const auto points = [&](std::size_t length) {
        const auto laid = lay_label({std::string(length, 'W'), {}, {}, {}}, room, half_an_em);
        return texts(laid)[0];
    };
    const auto shortest = points(4);
    const auto longer = points(16);
    const auto longest = points(60);
    EXPECT_LT(longer.face.points, shortest.face.points);
    EXPECT_EQ(half_an_em(longer.text, longer.face, longer.box.width).lines, 1);
    EXPECT_GT(half_an_em(longest.text, longest.face, longest.box.width).lines, 1);
    EXPECT_NEAR(longest.face.points, shortest.face.points / 2, 0.1);
}

TEST(LabelLayout, OneLongLineDoesNotShrinkTheHeadline) {
    const auto plain = lay_label({"A-1", {"short"}, {}, {}}, room, half_an_em);
    const auto with_long = lay_label({"A-1", {std::string(60, 'a')}, {}, {}}, room, half_an_em);
    EXPECT_EQ(plain.headline_points, with_long.headline_points);
}

TEST(LabelLayout, SaysWhenALabelHoldsTooMuchInsteadOfCutting) {
    const auto laid = lay_label({std::string(20000, 'W'), {}, {}, {}}, {{0}, {0}, {20}, {10}}, half_an_em);
    EXPECT_FALSE(laid.fits);
    EXPECT_TRUE(laid.pieces.empty());
}

TEST(LabelLayout, SaysWhenATextIsTooLongForACodeAndHowLargeItsDotsAre) {
    const auto none = lay_label({"A", {}, {}, std::string(3000, 'q')}, room, half_an_em);
    EXPECT_FALSE(none.qr_fits);
    EXPECT_FALSE(none.qr_module);
    const auto small = lay_label({"A", {}, {}, std::string(500, 'q')}, room, half_an_em);
    const auto large = lay_label({"A", {}, {}, "A"}, room, half_an_em);
    ASSERT_TRUE(small.qr_module && large.qr_module);
    EXPECT_LT(*small.qr_module, least_qr_module);
    EXPECT_NEAR(large.qr_module->value, 0.75, 1e-9);  // more would help nobody
}

TEST(LabelLayout, ATagHasLinesToWriteOn) {
    const auto laid =
        lay_label({"26-01-a", {"Marlside x Kettlefen"}, {{"Day"}, {"Flowers"}, {"Initials"}}, "26-01-a"},
                  room, half_an_em);
    expect_inside_without_overlap(laid, room);
    int lines = 0;
    for (const auto& piece : laid.pieces) {
        if (const auto* line = std::get_if<LinePiece>(&piece)) {
            ++lines;
            EXPECT_GT((line->through[1].x - line->through[0].x).value, 8);
        }
    }
    EXPECT_EQ(lines, 3);
}

TEST(LabelLayout, LegibleIsWhatTheRuleForFoodLabelsAsksFor) {
    EXPECT_EQ(least_small_letters({{70}, {37}}), (Millimetres{0.9}));
    EXPECT_EQ(least_small_letters({{100}, {80}}), (Millimetres{1.2}));
}

}  // namespace
}  // namespace pipward::paper
