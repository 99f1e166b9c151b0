// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/looks.h"
#include "pipward/style/detail/palette.h"
#include "pipward/style/detail/phrase.h"

namespace pipward::style::detail {
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

struct UrgencyLook {
    std::string_view urgency;
    MarkerShape shape;
    Ink fill;
    bool presses = false;  ///< its disc hides the marks that can wait
    int farthest = 0;
};

RuleLook rule_of(std::string words, const UrgencyLook& look, const Side& side) {
    return {std::move(words), fmt::format("\"urgency\" = '{}'", look.urgency),
            MarkerLook{.shape = look.shape,
                       .fill = look.fill,
                       .edge = ink::dark,
                       .size = {.metres = 2.4, .least_mm = 1.8, .most_mm = 3.6},
                       .edge_width = {.metres = 0.15, .least_mm = 0.2, .most_mm = 0.3},
                       .aside_mm = side.aside_mm,
                       .above_mm = side.above_mm,
                       .on_disc = look.presses},
            look.farthest};
}

std::vector<RuleLook> by_urgency(const Side& side, const Wording& wording) {
    return {
        rule_of(say("Today").in(wording), {"today", MarkerShape::star, ink::vermilion, true}, side),
        rule_of(say("This week").in(wording), {"this week", MarkerShape::triangle, ink::orange, true}, side),
        rule_of(say("Later").in(wording), {"later", MarkerShape::circle, ink::white, false, near_enough},
                side),
        rule_of(say("Too late").in(wording), {"too late", MarkerShape::cross, ink::grey, false, near_enough},
                side)};
}

std::string field_words(const Wording& wording) {
    const auto donor = computed(column("donor"));
    const auto work = computed(code_words("work", {say("bag"), say("unbag")}, wording));
    return fmt::format("CASE WHEN \"work\" = 'pollinate' THEN {} ELSE {} END",
                       phrase(say("pollinate with {}", donor), wording),
                       phrase(say("{} for {}", work, donor), wording));
}

std::string pollen_words(const Wording& wording) {
    const auto donor = computed(column("donor"));
    const auto work = computed(code_words("work", {say("test lot")}, wording));
    return fmt::format(
        "CASE WHEN \"work\" = 'collect' THEN {} WHEN \"work\" = 'cut branch' THEN {} ELSE {} END",
        phrase(say("collect {}", donor), wording), phrase(say("cut branch of {}", donor), wording),
        phrase(say("{} of {}", work, donor), wording));
}

std::string written_out(const std::string& words) {
    return fmt::format("CASE WHEN \"urgency\" IN ('today', 'this week') THEN {} END", words);
}

Sentence work_tip(const std::string& words, const Wording& wording) {
    const auto urgency =
        code_words("urgency", {say("today"), say("this week"), say("later"), say("too late")}, wording);
    return joined({verbatim("<b>"), tip(words), verbatim("</b><br>"),
                   say("tree {}, {} flowers", tip(column("tree")), tip(column("flowers"))), verbatim("<br>"),
                   say("{} to {}", tip(day_words("do_from", say("d MMMM"), wording)),
                       tip(day_words("do_to", say("d MMMM yyyy"), wording))),
                   verbatim(": "), tip(urgency)},
                  {});
}

}  // namespace

void style_work(LayerStyle& layer, const Wording& wording) {
    const bool field = layer.table == "field_task";
    const auto words = field ? field_words(wording) : pollen_words(wording);
    layer.rules = by_urgency(field ? field_side : pollen_side, wording);
    // One mark a tree and side: what presses most lies above the rest, and it alone is written out.
    layer.weight =
        "CASE \"urgency\" WHEN 'today' THEN 3 WHEN 'this week' THEN 2 WHEN 'later' THEN 1 ELSE 0 END";
    layer.label = LabelLook{.expression = written_out(words),
                            .points = 7,
                            .ink = ink::dark,
                            .bold = true,
                            .distance_mm = 3,
                            .nearest = 1,
                            .farthest = 300,
                            .priority = 6};
    layer.lasting = Lasting{"do_from", "do_to"};
    layer.map_tip = work_tip(words, wording).in(wording);
}

}  // namespace pipward::style::detail
