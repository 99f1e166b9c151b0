// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/chart_svg.h"

#include <fmt/format.h>

#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

std::string_view class_of(MarkRole role) {
    switch (role) {
        case MarkRole::name:
            return "name";
        case MarkRole::days:
            return "days";
        case MarkRole::quiet:
            return "quiet";
        case MarkRole::as_of:
            return "as-of";
        case MarkRole::grid:
            return "grid";
        case MarkRole::month:
            return "month";
        case MarkRole::life:
            return "life";
        case MarkRole::band:
            return "band";
        case MarkRole::lent_band:
            return "band lent";
        case MarkRole::median:
            return "median";
    }
    return "";
}

std::string_view word_of(Anchor anchor) {
    return anchor == Anchor::start ? "start" : anchor == Anchor::middle ? "middle" : "end";
}

struct Writer {
    std::string operator()(const TextMark& mark) const {
        return fmt::format(R"(<text class="{}{}" x="{:.1f}" y="{:.1f}" text-anchor="{}"{}>{}</text>)",
                           class_of(mark.role), mark.over ? " over" : "", mark.at.x, mark.at.y,
                           word_of(mark.anchor), mark.over ? R"( paint-order="stroke")" : "",
                           escape_markup(mark.text));
    }
    std::string operator()(const LineMark& mark) const {
        return fmt::format(R"(<line class="{}" x1="{:.1f}" y1="{:.1f}" x2="{:.1f}" y2="{:.1f}"/>)",
                           class_of(mark.role), mark.from.x, mark.from.y, mark.to.x, mark.to.y);
    }
    std::string operator()(const BoxMark& mark) const {
        return fmt::format(
            R"(<rect class="{}" x="{:.1f}" y="{:.1f}" width="{:.1f}" height="{:.1f}" rx="{}"/>)",
            class_of(mark.role), mark.at.x, mark.at.y, mark.width, mark.height, box_corner);
    }
};

}  // namespace

std::string svg_of(const ChartMarks& marks) {
    std::string svg;
    for (const auto& mark : marks) {
        svg += std::visit(Writer{}, mark);
    }
    return svg;
}

}  // namespace pipward::paper::detail
