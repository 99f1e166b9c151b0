// SPDX-License-Identifier: MIT
#include "pipward/place/match.h"

#include <fmt/format.h>

namespace pipward {
namespace {

std::string thing_of(const Match& match) {
    switch (match.kind) {
        case MatchKind::label:
            return match.extent == Extent::whole ? "label" : fmt::format("label {}", match.what);
        case MatchKind::accession:
            return fmt::format("accession {}", match.what);
        case MatchKind::tag:
            return fmt::format("tag {}", match.what);
        case MatchKind::cross_child:
            return fmt::format("seedling of cross {}", match.what);
        case MatchKind::cross_worked:
            return fmt::format("worked for cross {}", match.what);
        case MatchKind::cross_parent:
            return fmt::format("seed parent of cross {}", match.what);
        case MatchKind::parents:
            return fmt::format("seedling of {}", match.what);
        case MatchKind::address:
            return match.what;
        case MatchKind::note:
            return fmt::format("note: {}", match.what);
        case MatchKind::nearness:
            return "nearest";
    }
    return {};
}

}  // namespace

std::string to_text(const Match& match) {
    const auto thing = thing_of(match);
    if (match.slips > 0) {
        return fmt::format("{}, {} letter{} off", thing, match.slips, match.slips == 1 ? "" : "s");
    }
    const bool name = match.kind != MatchKind::parents && match.kind != MatchKind::note;
    return match.extent == Extent::part && name ? "part of " + thing : thing;
}

}  // namespace pipward
