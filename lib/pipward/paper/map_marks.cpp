// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/map_marks.h"

namespace pipward::paper::detail {
namespace {

constexpr Paint mark_edge{40, 40, 40};

struct MarkLook {
    TreePurpose purpose;
    Paint fill;
    double size = 1;                 // so that all shapes look equally large
    std::vector<PaperSpot> corners;  // in sizes from the middle; none: a disc
};

const std::vector<MarkLook>& looks() {
    static const std::vector<MarkLook> all{
        {TreePurpose::parent,
         {0, 114, 178},
         0.9,
         {{{-.5}, {-.5}}, {{.5}, {-.5}}, {{.5}, {.5}}, {{-.5}, {.5}}}},
        {TreePurpose::seedling, {0, 158, 115}, 1, {}},
        {TreePurpose::pollinizer, {204, 121, 167}, 1.15, {{{0}, {-.58}}, {{.5}, {.29}}, {{-.5}, {.29}}}},
        {TreePurpose::other, {240, 228, 66}, 1.15, {{{0}, {-.5}}, {{.5}, {0}}, {{0}, {.5}}, {{-.5}, {0}}}}};
    return all;
}

const MarkLook& look_of(TreePurpose purpose) {
    for (const auto& look : looks()) {
        if (look.purpose == purpose) {
            return look;
        }
    }
    return looks().back();
}

PaperSpot around(PaperSpot middle, PaperSpot corner, Millimetres size) {
    return {middle.x + size * corner.x.value, middle.y + size * corner.y.value};
}

std::vector<PagePiece> cross(PaperSpot middle, Millimetres size) {
    const auto arm = [&](double x) {
        return LinePiece{
            {around(middle, {{-x}, {-.35}}, size), around(middle, {{x}, {.35}}, size)}, {0.3}, grey_paint};
    };
    return {arm(.35), arm(-.35)};
}

}  // namespace

Paint fill_of(TreePurpose purpose) {
    return look_of(purpose).fill;
}

std::vector<PagePiece> tree_mark(TreePurpose purpose, bool removed, PaperSpot middle, Millimetres size) {
    if (removed) {
        return cross(middle, size);
    }
    const auto& look = look_of(purpose);
    if (look.corners.empty()) {
        return {DiscPiece{middle, size * look.size, look.fill, mark_edge}};
    }
    ShapePiece shape{{}, look.fill, mark_edge};
    for (const auto& corner : look.corners) {
        shape.corners.push_back(around(middle, corner, size * look.size));
    }
    return {shape};
}

}  // namespace pipward::paper::detail
