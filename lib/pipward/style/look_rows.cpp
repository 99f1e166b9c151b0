// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/looks.h"
#include "pipward/style/detail/palette.h"
#include "pipward/style/detail/phrase.h"

namespace pipward::style::detail {
namespace {

// Smaller than the trees, which stand on most of them.
RuleLook row_rule(std::string words, std::string when, MarkerShape shape, const Ink& fill) {
    return {std::move(words), std::move(when),
            MarkerLook{.shape = shape,
                       .fill = fill,
                       .edge = ink::dark,
                       .size = {.metres = 0.6, .least_mm = 0.8, .most_mm = 2},
                       .edge_width = {.metres = 0.1, .least_mm = 0.15, .most_mm = 0.25},
                       .aside_mm = 0,
                       .above_mm = 0},
            1500};
}

void label_at(LayerStyle& layer, std::string expression) {
    layer.label = LabelLook{.expression = std::move(expression),
                            .points = 6,
                            .ink = ink::grey,
                            .bold = false,
                            .distance_mm = 1,
                            .nearest = 1,
                            .farthest = 250,
                            .priority = 2};
}

}  // namespace

void style_positions(LayerStyle& layer, const Wording& wording) {
    layer.rules = {
        row_rule(say("Vacant").in(wording), "\"state\" = 'vacant'", MarkerShape::circle, ink::white),
        row_rule(say("Reserved").in(wording), "\"state\" = 'reserved'", MarkerShape::triangle, ink::yellow),
        row_rule(say("Taken").in(wording), "\"state\" = 'taken'", MarkerShape::square, ink::grey)};
    label_at(layer, "\"position\"");
    const auto state = code_words("state", {say("vacant"), say("reserved"), say("taken")}, wording);
    layer.map_tip = fmt::format("<b>[% \"address\" %]</b><br>[% {} %]", state);
}

void style_tree_numbers(LayerStyle& layer, const Wording& wording) {
    layer.rules = {
        row_rule(say("Decided").in(wording), "\"decided\"", MarkerShape::square, ink::sky_blue),
        row_rule(say("Left open").in(wording), "NOT \"decided\"", MarkerShape::diamond, ink::vermilion)};
    label_at(layer, R"("row" || '-' || "position")");
    const auto why = fmt::format("coalesce(\"reason\", {})", phrase(say("decided"), wording));
    layer.map_tip =
        joined({verbatim("<b>"), say("row {}, position {}", tip(column("row")), tip(column("position"))),
                verbatim("</b><br>"), tip(why)},
               {})
            .in(wording);
}

}  // namespace pipward::style::detail
