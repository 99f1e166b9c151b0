// SPDX-License-Identifier: MIT
#include "pipward/paper/pedigree_drawing.h"

#include <algorithm>
#include <array>

#include "pipward/paper/detail/pedigree_marks.h"

#include "pipward/value/complaint.h"

namespace pipward::paper {
namespace {

constexpr double margin = 10;       // millimetres, all of them
constexpr double title_room = 14;   // above the boxes
constexpr double legend_room = 15;  // below them
constexpr std::array sizes{11.0, 10.0, 9.0, 8.0, 7.0, 6.5, 6.0, 5.5};
constexpr std::array gaps{8.0, 4.0, 2.0, 1.0, 0.6};  // between boxes
constexpr std::size_t most_boxes = 400;              // more never come on a page
constexpr double narrowest_in_em = 9;                // a box narrower than that cannot be read
constexpr double wide_in_em = 12;  // few lines have to be broken in it; for text that could be smaller
constexpr double small_text = 7;
constexpr double nearest_lines = 0.8;  // millimetres; nearer ones could not be followed

// Few columns stand wider apart.
lineage::PedigreeSpace space_of(PageSize size, int columns) {
    return {.width = size.width.value - 2 * margin,
            .height = size.height.value - 2 * margin - title_room - legend_room,
            .between_columns = columns > 4 ? 9.0 : 14.0};
}

struct FittedTree {
    lineage::PedigreeLayout layout;
    std::vector<std::vector<BoxLine>> texts;
    double points = 0;
};

std::optional<FittedTree> fitted_at(const lineage::PedigreeView& view, const PedigreeFacts& facts,
                                    lineage::PedigreeSpace space, const BoxFace& face,
                                    const Wording& wording) {
    const double narrowest = face.points > small_text ? wide_in_em : narrowest_in_em;
    if (face.width < narrowest * from_points(face.points).value) {
        return std::nullopt;
    }
    FittedTree fitted{{}, {}, face.points};
    std::vector<double> heights;
    for (const auto& box : view.boxes) {
        fitted.texts.push_back(box_lines(box, view, facts, face, wording));
        heights.push_back(box_height(fitted.texts.back(), face.points));
    }
    for (const double gap : gaps) {
        space.between_boxes = gap;
        auto layout = lineage::pedigree_layout(view, heights, space);
        if (layout && layout->between_tracks >= nearest_lines) {
            fitted.layout = std::move(*layout);
            return fitted;
        }
    }
    return std::nullopt;
}

std::optional<FittedTree> fitted(const lineage::PedigreeView& view, const PedigreeFacts& facts, PageSize size,
                                 const Wording& wording) {
    if (view.boxes.size() > most_boxes) {
        return std::nullopt;
    }
    const auto space = space_of(size, view.column_count);
    const double width = lineage::column_width(view, space);
    for (const double points : sizes) {
        for (const bool is_compact : {false, true}) {
            if (auto found = fitted_at(view, facts, space, {points, width, is_compact}, wording)) {
                return found;
            }
        }
    }
    return std::nullopt;
}

int farthest(const lineage::PedigreeView& view, lineage::PedigreeSide side) {
    int generation = 0;
    for (const auto& box : view.boxes) {
        generation = box.side == side ? std::max(generation, box.generation) : generation;
    }
    return generation;
}

// The side whose fullest column has more boxes has to give way.
bool ancestors_are_more(const lineage::PedigreeView& view) {
    std::vector<int> boxes(static_cast<std::size_t>(view.column_count));
    for (const int column : view.columns) {
        ++boxes[column];
    }
    const auto subject = boxes.begin() + view.columns.front();
    const int younger = *std::max_element(boxes.begin(), subject + 1);
    return *std::max_element(subject, boxes.end()) >= younger;
}

void give_way(const lineage::PedigreeView& view, lineage::PedigreeLimits& limits) {
    const int up = farthest(view, lineage::PedigreeSide::ancestor);
    const int down = farthest(view, lineage::PedigreeSide::descendant);
    const auto children = static_cast<int>(
        std::ranges::count(view.boxes, lineage::PedigreeSide::descendant, &lineage::PedigreeBox::side));
    if (up > 0 && (ancestors_are_more(view) || children == 0)) {
        limits.up = up - 1;
    } else if (down > 1) {
        limits.down = down - 1;
    } else if (children > 2) {
        limits.most_children = 2 * children / 3;
    } else {
        limits.down = 0;
    }
}

}  // namespace

PedigreeDrawing pedigree_drawing(const PedigreeFacts& facts, const PedigreeSheet& sheet,
                                 const Wording& wording) {
    auto limits = sheet.limits;
    auto view = lineage::pedigree_view(*facts.graph, facts.subject, limits);
    auto found = fitted(view, facts, sheet.size, wording);
    while (!found && view.boxes.size() > 1) {
        give_way(view, limits);
        view = lineage::pedigree_view(*facts.graph, facts.subject, limits);
        found = fitted(view, facts, sheet.size, wording);
    }
    PedigreeDrawing drawing{{sheet.size, {}}, std::move(view), {}, limits, 0};
    if (found) {
        drawing.layout = std::move(found->layout);
        drawing.points = found->points;
        detail::move_layout(drawing.layout, {margin, margin + title_room});
        const detail::PedigreeInk ink{drawing.view, drawing.layout, facts, drawing.points, wording};
        detail::put_links(ink, drawing.page);
        detail::put_boxes(ink, found->texts, drawing.page);
    }
    detail::put_words(sheet, drawing.view, facts, wording, drawing.page);
    return drawing;
}

Findings left_out_of(const PedigreeDrawing& drawing, const lineage::PedigreeLimits& wanted) {
    Findings findings;
    const auto& view = drawing.view;
    if (view.ancestors_left_out > 0) {
        findings.push_back(about_table(
            Level::notice, "accession",
            say("Ancestors farther back than generation {} are not drawn: {}.", drawing.limits.up,
                view.ancestors_left_out),
            drawing.limits.up < wanted.up
                ? say("The page is full: choose larger paper, or draw the pedigree of one of the ancestors.")
                : say("Set more generations up.")));
    }
    if (view.descendants_left_out > 0) {
        const bool page_is_full = drawing.limits.down < wanted.down || drawing.limits.most_children > 0;
        findings.push_back(about_table(
            Level::notice, "accession", say("Descendants that are not drawn: {}.", view.descendants_left_out),
            page_is_full
                ? say("The page is full: choose larger paper; the table of descendants has them all.")
                : say("Set more generations down; the table of descendants has them all.")));
    }
    return findings;
}

}  // namespace pipward::paper
