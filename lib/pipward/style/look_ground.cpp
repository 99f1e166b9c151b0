// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/looks.h"
#include "pipward/style/detail/palette.h"
#include "pipward/style/detail/phrase.h"

namespace pipward::style::detail {
namespace {

void style_blocks(LayerStyle& layer, const Wording& wording) {
    layer.rules = {{say("Block").in(wording), "",
                    AreaLook{.fill = {120, 150, 90, 22}, .edge = {120, 150, 90, 200}, .edge_mm = 0.4}}};
    layer.label = LabelLook{.expression = "\"name\"",
                            .points = 11,
                            .ink = {80, 105, 60},
                            .bold = true,
                            .place = LabelPlace::inside_area,
                            .nearest = 1500,
                            .farthest = 50000,
                            .priority = 9};
    layer.map_tip = "<b>[% \"name\" %]</b>";
}

// A bare number would not tell what it counts.
std::string row_words(const Wording& wording) {
    return fmt::format(R"(CASE WHEN regexp_match("name", '^[0-9]+$') THEN {} ELSE "name" END)",
                       phrase(say("row {}", computed(column("name"))), wording));
}

void style_stamps(LayerStyle& layer, const Wording& wording) {
    layer.rules = {{say("Row, arrow to higher numbers").in(wording), "",
                    LineLook{.ink = ink::grey, .width_mm = 0.25, .arrow = true}}};
    layer.label = LabelLook{.expression = row_words(wording),
                            .points = 8,
                            .ink = {110, 110, 110},
                            .place = LabelPlace::at_start_of_line,
                            .distance_mm = 4.5,
                            .nearest = 1,
                            .farthest = 1500,
                            .priority = 8};
    layer.map_tip = joined({verbatim("<b>"), say("Row {}", tip(column("name"))), verbatim("</b>, "),
                            say("block {}", tip(column("block")))},
                           {})
                        .in(wording);
}

void style_stations(LayerStyle& layer, const Wording& wording) {
    layer.rules = {{say("Weather station").in(wording), "",
                    MarkerLook{.shape = MarkerShape::pentagon,
                               .fill = ink::white,
                               .edge = ink::dark,
                               .size = {.metres = 4, .least_mm = 2.6, .most_mm = 4},
                               .edge_width = {.metres = 0.6, .least_mm = 0.5, .most_mm = 0.6}}}};
    layer.label = LabelLook{.expression = "\"name\"",
                            .points = 8,
                            .ink = ink::dark,
                            .distance_mm = 0.5,
                            .nearest = 1,
                            .farthest = 25000,
                            .priority = 7};
    layer.map_tip = joined({verbatim("<b>"), say("Station {}", tip(column("name"))), verbatim("</b><br>"),
                            say("{} m above the sea", tip(column("elevation_m")))},
                           {})
                        .in(wording);
}

}  // namespace

void style_ground(LayerStyle& layer, const Wording& wording) {
    if (layer.table == "block") {
        style_blocks(layer, wording);
    } else if (layer.table == "tree_row") {
        style_stamps(layer, wording);
    } else {
        style_stations(layer, wording);
    }
}

}  // namespace pipward::style::detail
