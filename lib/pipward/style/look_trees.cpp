// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/looks.h"
#include "pipward/style/detail/palette.h"
#include "pipward/style/detail/phrase.h"

namespace pipward::style::detail {
namespace {

// Today, or the frame that is shown while the map plays through time.
constexpr auto gone =
    "(\"removed_on\" IS NOT NULL AND \"removed_on\" <= coalesce(to_date(@map_end_time), to_date(now())))";

RuleLook standing(std::string words, std::string_view purpose, MarkerShape shape, const Ink& fill,
                  double metres) {
    return {std::move(words), fmt::format("\"purpose\" = '{}' AND NOT {}", purpose, gone),
            MarkerLook{.shape = shape,
                       .fill = fill,
                       .edge = ink::dark,
                       .size = {.metres = metres, .least_mm = 1.2, .most_mm = 2.8},
                       .edge_width = {.metres = 0.1, .least_mm = 0.1, .most_mm = 0.25}}};
}

RuleLook removed(const Wording& wording) {
    return {say("Removed tree").in(wording), gone,
            MarkerLook{.shape = MarkerShape::cross,
                       .fill = ink::grey,
                       .edge = ink::grey,
                       .size = {.metres = 1.4, .least_mm = 1, .most_mm = 2},
                       .edge_width = {.metres = 0.2, .least_mm = 0.2, .most_mm = 0.4}}};
}

// "row 4, place 7, block North", as far as it is known.
std::string address(const Wording& wording) {
    const auto part = [&](const Sentence& words) {
        return fmt::format("coalesce({}, '')", phrase(words, wording));
    };
    const auto comma = verbatim(", ");
    return fmt::format("concat({}, {}, {})", part(say("row {}", computed(column("row")))),
                       part(comma + say("location {}", computed(column("position")))),
                       part(comma + say("block {}", computed(column("block")))));
}

std::string tree_tip(const Wording& wording) {
    const auto removed_on = computed(day_words("removed_on", say("d MMMM yyyy"), wording));
    return fmt::format(
        "<b>[% \"label\" %]</b><br>[% coalesce(\"accession\", {}) %]<br>[% {} %][% coalesce({}, '') %]",
        phrase(say("accession not known"), wording), address(wording),
        phrase(verbatim("<br>") + say("removed on {}", removed_on), wording));
}

}  // namespace

void style_trees(LayerStyle& layer, const Wording& wording) {
    layer.rules = {
        standing(say("Parent").in(wording), "parent", MarkerShape::square, ink::blue, 2.0),
        standing(say("Seedling").in(wording), "seedling", MarkerShape::circle, ink::green, 1.6),
        standing(say("Pollinizer").in(wording), "pollinizer", MarkerShape::triangle, ink::purple, 2.2),
        standing(say("Other tree").in(wording), "other", MarkerShape::diamond, ink::yellow, 2.2),
        removed(wording)};
    layer.label = LabelLook{.expression = "\"label\"",
                            .points = 6.5,
                            .ink = ink::dark,
                            .place = LabelPlace::below_point,  // work stands above
                            .distance_mm = 0.6,
                            .nearest = 1,
                            .farthest = 500,
                            .priority = 4};
    layer.lasting = Lasting{"planted_on", "removed_on"};
    layer.map_tip = tree_tip(wording);
}

}  // namespace pipward::style::detail
