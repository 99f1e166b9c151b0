// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/dress/looks.h"
#include "pipward/dress/palette.h"

namespace pipward {
namespace {

/// Field work stands to the upper left of its tree, pollen work to the upper right: one tree may have both.
struct Side {
    double aside_mm;
    double above_mm;
};
constexpr Side field_side{-1.8, 1.8};
constexpr Side pollen_side{1.8, 1.8};

// Work that does not press would hide the bloom on a map of the whole orchard.
constexpr int near_enough = 800;

RuleLook urgency(std::string words, std::string_view urgency, MarkerShape shape, const Ink& fill,
                 const Side& side, int farthest = 0) {
    return {std::move(words), fmt::format("\"urgency\" = '{}'", urgency),
            MarkerLook{.shape = shape,
                       .fill = fill,
                       .edge = ink::dark,
                       .size = {.metres = 2.4, .least_mm = 1.8, .most_mm = 3.6},
                       .edge_width = {.metres = 0.15, .least_mm = 0.2, .most_mm = 0.3},
                       .aside_mm = side.aside_mm,
                       .above_mm = side.above_mm},
            farthest};
}

std::vector<RuleLook> by_urgency(const Side& side) {
    return {urgency("Today", "today", MarkerShape::star, ink::vermilion, side),
            urgency("This week", "this week", MarkerShape::triangle, ink::orange, side),
            urgency("Later", "later", MarkerShape::circle, ink::white, side, near_enough),
            urgency("Too late", "too late", MarkerShape::cross, ink::grey, side, near_enough)};
}

constexpr auto field_words =
    "CASE WHEN \"work\" = 'pollinate' THEN 'pollinate with ' || \"donor\" ELSE \"work\" || ' for ' || "
    "\"donor\" END";
constexpr auto pollen_words =
    "CASE WHEN \"work\" = 'gather' THEN 'gather ' || \"donor\" WHEN \"work\" = 'cut branch' THEN 'cut branch "
    "of ' || "
    "\"donor\" ELSE \"work\" || ' of ' || \"donor\" END";

}  // namespace

void dress_work(LayerDress& layer) {
    const bool field = layer.table == "field_task";
    const auto* const words = field ? field_words : pollen_words;
    layer.rules = by_urgency(field ? field_side : pollen_side);
    layer.label = LabelLook{.expression = words,
                            .points = 7,
                            .ink = ink::dark,
                            .bold = true,
                            .distance_mm = 3,
                            .nearest = 1,
                            .farthest = 300,
                            .priority = 6};
    layer.lasting = Lasting{"do_from", "do_to"};
    layer.map_tip = fmt::format(
        "<b>[% {} %]</b><br>tree [% \"label\" %], [% \"flowers\" %] flowers<br>[% format_date(\"do_from\", "
        "'d MMMM') "
        "%] to [% format_date(\"do_to\", 'd MMMM yyyy') %]: [% \"urgency\" %]",
        words);
}

}  // namespace pipward
