// SPDX-License-Identifier: MIT
#include "pipward/cross/plan.h"

#include <array>

namespace pipward::cross {

std::string_view to_text(PollenWay way) {
    switch (way) {
        case PollenWay::same_day:
            return "same day";
        case PollenWay::kept_this_spring:
            return "stored this spring";
        case PollenWay::kept_from_last_year:
            return "stored from last year";
        case PollenWay::forced_branch:
            break;
    }
    return "forced branch";
}

std::string_view to_text(Verdict verdict) {
    switch (verdict) {
        case Verdict::good:
            return "good";
        case Verdict::fair:
            return "fair";
        case Verdict::doubtful:
            return "doubtful";
        case Verdict::unlikely:
            return "unlikely";
        case Verdict::impossible:
            break;
    }
    return "impossible";
}

std::string_view to_text(Urgency urgency) {
    switch (urgency) {
        case Urgency::today:
            return "today";
        case Urgency::this_week:
            return "this week";
        case Urgency::later:
            return "later";
        case Urgency::too_late:
            break;
    }
    return "too late";
}

std::string_view to_text(PollenWork work) {
    switch (work) {
        case PollenWork::collect:
            return "collect";
        case PollenWork::cut_branch:
            return "cut branch";
        case PollenWork::test_lot:
            break;
    }
    return "test lot";
}

std::string_view to_text(FieldWork work) {
    switch (work) {
        case FieldWork::bag:
            return "bag";
        case FieldWork::pollinate:
            return "pollinate";
        case FieldWork::unbag:
            break;
    }
    return "unbag";
}

Share fruit_set_of(const CrossingAssumptions& assumptions, const std::string& genus) {
    const auto own = assumptions.fruit_set_of_genus.find(genus);
    return own == assumptions.fruit_set_of_genus.end() ? assumptions.fruit_set : own->second;
}

std::span<const Word<Urgency>> words(Urgency) {
    static constexpr std::array<Word<Urgency>, 4> all{{{Urgency::today, "today", "today"},
                                                       {Urgency::this_week, "this-week", "this week"},
                                                       {Urgency::later, "later", "later"},
                                                       {Urgency::too_late, "too-late", "too late"}}};
    return all;
}

}  // namespace pipward::cross
