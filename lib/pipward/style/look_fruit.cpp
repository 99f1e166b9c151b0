// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/looks.h"
#include "pipward/style/detail/palette.h"
#include "pipward/style/detail/phrase.h"

namespace pipward::style::detail {
namespace {

// Below its tree: bloom and work stand above and beside it.
constexpr double below_tree_mm = -2.2;

RuleLook state_rule(std::string words, std::string_view state, MarkerShape shape, const Ink& fill) {
    return {std::move(words), fmt::format("\"state\" = '{}'", state),
            MarkerLook{.shape = shape,
                       .fill = fill,
                       .edge = ink::dark,
                       .size = {.metres = 1.2, .least_mm = 1.2, .most_mm = 2.6},
                       .edge_width = {.metres = 0.1, .least_mm = 0.15, .most_mm = 0.25},
                       .aside_mm = 0,
                       .above_mm = below_tree_mm},
            1500};
}

}  // namespace

void style_first_fruiting(LayerStyle& layer, const Wording& wording) {
    layer.rules = {
        state_rule(say("Should fruit this year").in(wording), "due", MarkerShape::star, ink::vermilion),
        state_rule(say("Fruit was expected").in(wording), "waiting", MarkerShape::triangle, ink::orange),
        state_rule(say("Longer than most").in(wording), "overdue", MarkerShape::cross, ink::grey),
        state_rule(say("May fruit").in(wording), "possible", MarkerShape::diamond, ink::yellow),
        state_rule(say("Too young").in(wording), "young", MarkerShape::circle, ink::white),
        state_rule(say("Has bloomed").in(wording), "bloomed", MarkerShape::square, ink::green)};
    layer.map_tip = joined({verbatim("<b>"), tip(column("tree")), verbatim("</b><br>"),
                            say("sown {}, fruit expected {} ({} to {})", tip(column("sown")),
                                tip(column("expected")), tip(column("earliest")), tip(column("latest")))},
                           {})
                        .in(wording);
}

}  // namespace pipward::style::detail
