// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/how.h"

#include "pipward/cross/detail/choice.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

// Days to collect by are those of the springs in which it works.
bool may_miss(const WayOutlook& way) {
    return way.row.chance.value < good_chance;
}

Sentence by_text(const CrossWay& row) {
    return row.collect_by_median ? say("about {} (a median, no safe day yet)", to_iso(*row.collect_to))
                                 : verbatim(to_iso(*row.collect_to));
}

Sentence fresh_text(const WayOutlook& way) {
    const auto by = by_text(way.row);
    const auto within = days_text(fresh_to_days);
    return may_miss(way)
               ? say("If bloom overlaps: collect at balloon stage by {}, dry for a day or two, use within {} "
                     "of collecting.",
                     by, within)
               : say("Collect at balloon stage by {}, dry for a day or two, use within {} of collecting.", by,
                     within);
}

Sentence kept_text(const WayOutlook& way) {
    const auto by = by_text(way.row);
    const auto store = store_text(*way.row.store);
    const auto until = to_iso(*way.row.use_to);
    const auto share = percent_text(way.germination);
    return may_miss(way) ? say("If bloom overlaps: collect at balloon stage by {}, dry for a day or two, "
                               "store in {} until {}: about {} should germinate then.",
                               by, store, until, share)
                         : say("Collect at balloon stage by {}, dry for a day or two, store in {} until "
                               "{}: about {} should germinate then.",
                               by, store, until, share);
}

Sentence frozen_text(const WayOutlook& way) {
    return say("Collect this spring by {}, dry for a day or two, freeze: about {} should germinate in {}.",
               by_text(way.row), percent_text(way.germination), way.row.season.year);
}

Sentence forced_text(const WayOutlook& way) {
    const auto room = days_text(way.days_in_the_room);
    const auto drying = days_text(drying_days);
    const auto success = percent_text(forcing_success);
    if (!way.row.collect_to) {
        return say(
            "A branch is cut: about {} in water at about 20 °C until the anthers open, then {} of "
            "drying. Yields pollen in about {} of cases.",
            room, drying, success);
    }
    return say(
        "Cut branches from {} to {} and force them in water at about 20 °C: about {} until the anthers "
        "open, then {} of drying. Yields pollen in about {} of cases.",
        to_iso(*way.row.collect_from), to_iso(*way.row.collect_to), room, drying, success);
}

}  // namespace

Sentence how_text(const WayOutlook& way, Share usable) {
    if (way.lot) {
        return lot_text(*way.lot, *way.row.use_to, usable);
    }
    switch (way.row.way) {
        case PollenWay::forced_branch:
            return forced_text(way);
        case PollenWay::kept_from_last_year:
            return frozen_text(way);
        case PollenWay::same_day:
        case PollenWay::kept_this_spring:
            break;
    }
    return way.row.store == Store::room ? fresh_text(way) : kept_text(way);
}

void tell_how_again(WayOutlook& way, Share usable) {
    if (way.how) {
        way.sentences[*way.how] = how_text(way, usable);
    }
}

}  // namespace pipward::cross::detail
