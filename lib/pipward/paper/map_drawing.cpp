// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/map_drawing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "pipward/paper/detail/clipped.h"
#include "pipward/paper/detail/map_marks.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

constexpr Paint row_paint{150, 150, 150};
constexpr double number_points = 6;
constexpr double row_points = 7;
constexpr double block_points = 10;
constexpr double least_points = 5;
constexpr Millimetres row_name_width{9};

double shrunk(double points, Millimetres width, Millimetres room) {
    return width <= room ? points : std::max(least_points, points * (room / width));
}

bool says_row(const std::string& name) {
    return name.starts_with("row") || name.starts_with("Row");
}

}  // namespace

MapDrawing::MapDrawing(const FieldMap& map, const MapWindow& window, const TextRuler& ruler,
                       const Wording& wording)
    : map_(map), box_(map_box(window.page)), window_(window), ruler_(ruler), wording_(wording) {}

PaperSpot MapDrawing::spot_of(PageGround ground) const {
    const double scale = 1000.0 / window_.denominator;
    return box_.middle() + PaperSpot{{(ground.right - window_.middle.right) * scale},
                                     {(window_.middle.up - ground.up) * scale}};
}

PaperSpot MapDrawing::spot_of(math::PlanePoint ground) const {
    return spot_of(on_page(ground, map_.turned_deg));
}

std::vector<PaperSpot> MapDrawing::line_of(const MapRow& row) const {
    std::vector<PaperSpot> line;
    for (const auto& spot : row.line) {
        line.push_back(spot_of(spot));
    }
    return line;
}

bool MapDrawing::is_on_page(PaperSpot spot) const {
    return holds(inset(box_, {1.6}), {spot.x, spot.y, {}, {}});
}

void MapDrawing::put_text(const std::string& text, const Box& box, const Face& face) {
    room_.take(box);
    pieces_.push_back(TextPiece{text, box, face, Align::left, false, black_paint, true});
}

// Above the uppermost tree of each, higher where something stands there.
void MapDrawing::put_block_names() {
    std::map<std::string, PaperSpot> tops;
    for (const auto& tree : map_.trees) {
        const auto at = spot_of(tree.at);
        const auto [top, is_first] = tops.try_emplace(tree.block, at);
        if (!is_first && at.y < top->second.y) {
            top->second = at;
        }
    }
    for (const auto& [block, top] : tops) {
        if (const auto text = clean_text(block); !text.empty() && is_on_page(top)) {
            put_block_name(text, top);
        }
    }
}

void MapDrawing::put_block_name(const std::string& text, PaperSpot top) {
    const Face face{block_points, true};
    const auto size = ruler_(text, face, {});
    for (double above = 3; above <= 15; above += 1) {
        const Box box{top.x - size.width / 2, top.y - size.height - Millimetres{above}, size.width,
                      size.height};
        if (holds(box_, box) && room_.is_free(box)) {
            put_text(text, box, face);
            return;
        }
    }
    ++left_out_;
}

void MapDrawing::put_row_lines() {
    for (const auto& row : map_.rows) {
        for (auto& part : clipped(line_of(row), box_)) {
            pieces_.push_back(LinePiece{std::move(part), {0.15}, row_paint});
        }
    }
}

void MapDrawing::put_marks(Millimetres size) {
    for (const auto& tree : map_.trees) {
        const auto at = spot_of(tree.at);
        if (!is_on_page(at)) {
            continue;
        }
        ++trees_;
        std::ranges::move(tree_mark(tree.purpose, tree.removed, at, size), std::back_inserter(pieces_));
        room_.take({at.x - size / 2, at.y - size / 2, size, size});
    }
}

// Beyond the end of the row, in its direction; where a tree stands there, beside the line, nearer and nearer
// to the middle of the row.
std::optional<Box> MapDrawing::room_for_row_name(const std::string& name, const Face& face, PaperSpot end,
                                                 PaperSpot before) const {
    const double x = (end.x - before.x).value;
    const double y = (end.y - before.y).value;
    const double length = std::max(std::hypot(x, y), 1e-9);
    const auto size = ruler_(name, face, {});
    const auto reach = [&](double along, double across) {
        return std::abs(along) / length * size.width.value / 2 +
               std::abs(across) / length * size.height.value / 2;
    };
    const auto at = [&](double outwards, double aside) {
        const PaperSpot middle{end.x + Millimetres{(outwards * x - aside * y) / length},
                               end.y + Millimetres{(outwards * y + aside * x) / length}};
        return Box{middle.x - size.width / 2, middle.y - size.height / 2, size.width, size.height};
    };
    const double aside = 0.8 + reach(y, x);
    std::vector<Box> boxes{at(2.2 + reach(x, y), 0)};
    for (double inwards = 0; inwards < 20; inwards += 2) {
        boxes.push_back(at(-inwards, aside));
        boxes.push_back(at(-inwards, -aside));
    }
    const auto free = std::ranges::find_if(
        boxes, [&](const Box& box) { return holds(inset(box_, {0.5}), box) && room_.is_free(box); });
    return free == boxes.end() ? std::nullopt : std::optional{*free};
}

// The shorter and smaller writings where the longer have no room; none where not even these have.
void MapDrawing::put_row_name(const std::vector<std::string>& writings, PaperSpot end, PaperSpot before) {
    for (const auto& name : writings) {
        const double usual = shrunk(row_points, ruler_(name, {row_points, true}, {}).width, row_name_width);
        for (const double points : {usual, least_points}) {
            const Face face{points, true};
            if (const auto box = room_for_row_name(name, face, end, before)) {
                put_text(name, *box, face);
                return;
            }
        }
    }
    ++left_out_;
}

void MapDrawing::put_row_names() {
    for (const auto& row : map_.rows) {
        const auto plain = clean_text(row.name);
        const auto name = says_row(plain) ? plain : say("row {}", plain).in(wording_);
        const auto parts = clipped(line_of(row), inset(box_, row_name_width + Millimetres{1.5}));
        if (!parts.empty()) {
            const auto& first = parts.front();
            const auto& last = parts.back();
            put_row_name({name, plain}, first.front(), first[1]);
            put_row_name({name, plain}, last.back(), last[last.size() - 2]);
        }
    }
}

// Below, above, right or left of the mark: the first that is free.
bool MapDrawing::put_number(const std::string& number, PaperSpot at, Millimetres mark) {
    const Face face{number_points, false};
    const auto size = ruler_(number, face, {});
    // Lines of text have air above and below.
    const auto high = size.height * 0.72;
    const auto off = mark / 2 + Millimetres{0.25};
    const std::array<PaperSpot, 4> corners{{{at.x - size.width / 2, at.y + off},
                                            {at.x - size.width / 2, at.y - off - high},
                                            {at.x + off, at.y - high / 2},
                                            {at.x - off - size.width, at.y - high / 2}}};
    for (const auto& corner : corners) {
        const Box box{corner.x, corner.y, size.width, high};
        if (room_.is_free(box) && holds(box_, box)) {
            room_.take(box);
            pieces_.push_back(
                TextPiece{number,
                          {corner.x, corner.y - (size.height - high) / 2, size.width, size.height},
                          face,
                          Align::left,
                          false,
                          black_paint,
                          true});
            return true;
        }
    }
    return false;
}

void MapDrawing::put_numbers(Millimetres mark) {
    for (const auto& tree : map_.trees) {
        const auto at = spot_of(tree.at);
        if (is_on_page(at) && !tree.number.empty() && !put_number(clean_text(tree.number), at, mark)) {
            ++left_out_;
        }
    }
}

void MapDrawing::put_page_frames(const std::vector<MapWindow>& windows, int first_number) {
    int number = first_number;
    for (const auto& window : windows) {
        const auto core = map_core(window.page);
        const double shrink = static_cast<double>(window.denominator) / window_.denominator;
        const auto middle = spot_of(window.middle);
        const Box frame{middle.x - core.width * shrink / 2, middle.y - core.height * shrink / 2,
                        core.width * shrink, core.height * shrink};
        pieces_.push_back(outline_of(frame, {0.3}, black_paint));
        const auto text = std::to_string(number++);
        const Face face{std::clamp(to_points(frame.height) * 0.4, 6.0, 20.0), true};
        const auto size = ruler_(text, face, {});
        put_text(text, {middle.x - size.width / 2, middle.y - size.height / 2, size.width, size.height},
                 face);
    }
}

}  // namespace pipward::paper::detail
