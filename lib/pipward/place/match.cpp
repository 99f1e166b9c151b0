// SPDX-License-Identifier: MIT
#include "pipward/place/match.h"

namespace pipward::place {
namespace {

Sentence thing_of(const Match& match) {
    switch (match.kind) {
        case MatchKind::label:
            return match.extent == Extent::whole ? say("label") : say("label {}", match.what);
        case MatchKind::accession:
            return say("accession {}", match.what);
        case MatchKind::tag:
            return say("tag {}", match.what);
        case MatchKind::cross_child:
            return say("seedling of cross {}", match.what);
        case MatchKind::cross_pollinated:
            return say("pollinated for cross {}", match.what);
        case MatchKind::cross_parent:
            return say("seed parent of cross {}", match.what);
        case MatchKind::pollen_lot:
            return say("pollen lot {}", match.what);
        case MatchKind::seed_lot:
            return say("seed lot {}", match.what);
        case MatchKind::record:
            return match.what;
        case MatchKind::parents:
            return say("seedling of {}", match.what);
        case MatchKind::address:
            return match.what;
        case MatchKind::remark:
            return say("remark: {}", match.what);
        case MatchKind::nearness:
            return say("nearest");
    }
    return {};
}

}  // namespace

Sentence to_text(const Match& match) {
    const auto thing = thing_of(match);
    if (match.slips > 0) {
        return match.slips == 1 ? say("{}, 1 letter differs", thing)
                                : say("{}, {} letters differ", thing, match.slips);
    }
    const bool name = match.kind != MatchKind::parents && match.kind != MatchKind::record &&
                      match.kind != MatchKind::remark;
    return match.extent == Extent::part && name ? say("part of {}", thing) : thing;
}

}  // namespace pipward::place
