// SPDX-License-Identifier: MIT
#include "pipward/dress/looks.h"
#include "pipward/dress/palette.h"

namespace pipward {
namespace {

void dress_blocks(LayerDress& layer) {
    layer.rules = {
        {"Block", "", AreaLook{.fill = {120, 150, 90, 22}, .edge = {120, 150, 90, 200}, .edge_mm = 0.4}}};
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
constexpr auto row_words =
    R"(CASE WHEN regexp_match("name", '^[0-9]+$') THEN 'row ' || "name" ELSE "name" END)";

void dress_rows(LayerDress& layer) {
    layer.rules = {
        {"Row, arrow to higher numbers", "", LineLook{.ink = ink::grey, .width_mm = 0.25, .arrow = true}}};
    layer.label = LabelLook{.expression = row_words,
                            .points = 8,
                            .ink = {110, 110, 110},
                            .place = LabelPlace::at_start_of_line,
                            .distance_mm = 4.5,
                            .nearest = 1,
                            .farthest = 1500,
                            .priority = 8};
    layer.map_tip = "<b>Row [% \"name\" %]</b>, block [% \"block\" %]";
}

void dress_stations(LayerDress& layer) {
    layer.rules = {{"Weather station", "",
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
    layer.map_tip = "<b>Station [% \"name\" %]</b><br>[% \"elevation_m\" %] m above the sea";
}

}  // namespace

void dress_ground(LayerDress& layer) {
    if (layer.table == "block") {
        dress_blocks(layer);
    } else if (layer.table == "tree_row") {
        dress_rows(layer);
    } else {
        dress_stations(layer);
    }
}

}  // namespace pipward
