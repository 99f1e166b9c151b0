// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/map_furniture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "pipward/paper/detail/map_marks.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

constexpr Millimetres frame_edge{10};
constexpr double small_points = 8;

class Furniture {
  public:
    Furniture(const PageSize& page, const TextRuler& ruler, const Wording& wording)
        : page_(page), ruler_(ruler), wording_(wording) {}

    std::string words(const Sentence& sentence) const { return sentence.in(wording_); }

    TextSize size_of(const std::string& text, const Face& face) const { return ruler_(text, face, {}); }

    /// One line that begins at a spot.
    void put(const std::string& text, PaperSpot at, const Face& face) {
        const auto size = size_of(text, face);
        pieces_.push_back(TextPiece{text, {at.x, at.y, size.width, size.height}, face});
    }
    /// One line that ends, or whose middle is, at a spot.
    void put_back(const std::string& text, PaperSpot at, const Face& face, double share) {
        put(text, {at.x - size_of(text, face).width * share, at.y}, face);
    }
    void add(std::vector<PagePiece> pieces) { std::ranges::move(pieces, std::back_inserter(pieces_)); }

    void put_title(const FieldMap& map, const MapWindow& window, const PageNumber& number);
    void put_legend(const FieldMap& map);
    void put_scale_bar(int denominator);
    void put_north(const FieldMap& map);

    std::vector<PagePiece> take() { return std::move(pieces_); }

  private:
    Millimetres foot() const { return map_box(page_).bottom(); }

    PageSize page_;
    const TextRuler& ruler_;
    const Wording& wording_;
    std::vector<PagePiece> pieces_;
};

// The title shrinks, rather than run into the scale.
void Furniture::put_title(const FieldMap& map, const MapWindow& window, const PageNumber& number) {
    const auto scale = fmt::format("1 : {}", window.denominator);
    const auto right = page_.width - frame_edge;
    put_back(scale, {right, frame_edge}, {14, true}, 1);
    const auto page = number.is_index ? words(say("Overview of pages 2 to {}", number.of))
                                      : words(say("Page {} of {}", number.page, number.of));
    put_back(page, {right, frame_edge + Millimetres{7}}, {small_points, false}, 1);
    const bool names_both = !map.title.empty() && !window.block.empty();
    const auto title = clean_text(map.title + (names_both ? ": " : "") + window.block);
    const auto room = page_.width - frame_edge * 2 - Millimetres{45};
    const double share = std::min(1.0, room / std::max(size_of(title, {14, true}).width, Millimetres{1}));
    put(title, {frame_edge, frame_edge}, {14 * share, true});
    put(map.made_on, {frame_edge, frame_edge + Millimetres{7}}, {small_points, false});
}

void Furniture::put_legend(const FieldMap& map) {
    struct Entry {
        TreePurpose purpose;
        bool removed;
        Sentence words;
    };
    const std::vector<Entry> entries{{TreePurpose::parent, false, say("Parent")},
                                     {TreePurpose::seedling, false, say("Seedling")},
                                     {TreePurpose::pollinizer, false, say("Pollinizer")},
                                     {TreePurpose::other, false, say("Other tree")},
                                     {TreePurpose::other, true, say("Removed tree")}};
    auto left = frame_edge;
    const auto middle = foot() + Millimetres{5};
    for (const auto& entry : entries) {
        const bool is_there = std::ranges::any_of(map.trees, [&](const MapTree& tree) {
            return tree.removed == entry.removed && (tree.removed || tree.purpose == entry.purpose);
        });
        if (!is_there) {
            continue;
        }
        add(tree_mark(entry.purpose, entry.removed, {left + Millimetres{1.5}, middle}, {2.6}));
        const auto text = words(entry.words);
        const auto size = size_of(text, {small_points, false});
        put(text, {left + Millimetres{4}, middle - size.height / 2}, {small_points, false});
        left = left + Millimetres{9} + size.width;
    }
}

void Furniture::put_scale_bar(int denominator) {
    const auto bar = scale_bar(denominator);
    const auto top = foot() + Millimetres{15};
    const auto part = bar.length / bar.parts;
    const Millimetres height{1.6};
    for (int i = 0; i < bar.parts; ++i) {
        const auto left = frame_edge + part * i;
        pieces_.push_back(
            ShapePiece{{{left, top}, {left + part, top}, {left + part, top + height}, {left, top + height}},
                       i % 2 == 0 ? black_paint : white_paint,
                       black_paint,
                       {0.15}});
    }
    for (int i = 0; i <= bar.parts; ++i) {
        const auto number = fmt::format("{:g}", bar.metres * i / bar.parts);
        put_back(number, {frame_edge + part * i, top - Millimetres{3.8}}, {small_points, false}, 0.5);
    }
    put("m", {frame_edge + bar.length + Millimetres{3.5}, top - Millimetres{3.8}}, {small_points, false});
    put(words(say("The bar is {:g} mm long: print at 100 %, then measure it.", bar.length.value)),
        {frame_edge, top + Millimetres{3}}, {small_points, false});
    const auto made = words(say("Distances are those on the ground, level."));
    put(made, {frame_edge, top + Millimetres{7}}, {small_points, false});
}

void Furniture::put_north(const FieldMap& map) {
    const PaperSpot middle{page_.width - frame_edge - Millimetres{14}, foot() + Millimetres{13}};
    const double angle = map.turned_deg * std::numbers::pi / 180;
    const auto at = [&](double across, double up) {
        return PaperSpot{middle.x + Millimetres{across * std::cos(angle) + up * std::sin(angle)},
                         middle.y + Millimetres{across * std::sin(angle) - up * std::cos(angle)}};
    };
    const auto half = [&](double side, const Paint& fill) {
        pieces_.push_back(ShapePiece{{at(0, 7), at(side, -5), at(0, -2.5)}, fill, black_paint, {0.2}});
    };
    half(-2.5, black_paint);
    half(2.5, white_paint);
    const Face face{9, true};
    const auto size = size_of("N", face);
    const auto tip = at(0, 9.2);
    put_back("N", {tip.x, tip.y - size.height / 2}, face, 0.5);
    const auto north = words(map.true_north ? say("true north") : say("grid north"));
    put_back(north, {middle.x, foot() + Millimetres{24}}, {small_points, false}, 0.5);
}

}  // namespace

ScaleBar scale_bar(int denominator) {
    constexpr double least_mm = 30;
    const double least = least_mm * denominator / 1000;
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const int step : {1, 2, 5, 10}) {
        const double metres = step * power;
        if (metres >= least * (1 - 1e-9)) {
            return {metres, step == 5 ? 5 : 4, {metres * 1000 / denominator}};
        }
    }
    return {20 * power, 4, {20 * power * 1000 / denominator}};
}

std::vector<PagePiece> map_furniture(const FieldMap& map, const MapWindow& window, const PageNumber& number,
                                     const TextRuler& ruler, const Wording& wording) {
    Furniture furniture(window.page, ruler, wording);
    furniture.put_title(map, window, number);
    furniture.put_legend(map);
    furniture.put_scale_bar(window.denominator);
    furniture.put_north(map);
    furniture.add({outline_of(map_box(window.page), {0.2}, black_paint)});
    return furniture.take();
}

}  // namespace pipward::paper::detail
