// SPDX-License-Identifier: MIT
#include "pipward/season/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pipward::season {

Sentence way_words(cross::PollenWay value) {
    switch (value) {
        case cross::PollenWay::same_day:
            return say("collect and use fresh, the same day");
        case cross::PollenWay::kept_this_spring:
            return say("collect this spring, dry and store");
        case cross::PollenWay::kept_from_last_year:
            return say("pollen stored from last year");
        case cross::PollenWay::forced_branch:
            break;
    }
    return say("force a cut branch");
}

Sentence verdict_words(cross::Verdict value) {
    switch (value) {
        case cross::Verdict::good:
            return say("good");
        case cross::Verdict::fair:
            return say("fair");
        case cross::Verdict::doubtful:
            return say("doubtful");
        case cross::Verdict::unlikely:
            return say("unlikely");
        case cross::Verdict::impossible:
            break;
    }
    return say("impossible");
}

Sentence s_match_words(lineage::SMatch value) {
    switch (value) {
        case lineage::SMatch::full:
            return say("fully compatible");
        case lineage::SMatch::half:
            return say("semi-compatible");
        case lineage::SMatch::none:
            return say("incompatible");
        case lineage::SMatch::unknown:
            break;
    }
    return say("unknown: S-alleles missing");
}

Sentence urgency_words(cross::Urgency value) {
    switch (value) {
        case cross::Urgency::today:
            return say("today");
        case cross::Urgency::this_week:
            return say("this week");
        case cross::Urgency::later:
            return say("later");
        case cross::Urgency::too_late:
            break;
    }
    return say("too late");
}

Sentence source_words(bloom::NeedSource value) {
    switch (value) {
        case bloom::NeedSource::own_observations:
            return say("own observations");
        case bloom::NeedSource::mid_parent:
            return say("from both parents");
        case bloom::NeedSource::one_parent:
            return say("from one parent and the orchard");
        case bloom::NeedSource::orchard_mean:
            break;
    }
    return say("from the orchard's mean");
}

Sentence store_words(Store value) {
    switch (value) {
        case Store::room:
            return say("room");
        case Store::refrigerator:
            return say("refrigerator");
        case Store::freezer:
            return say("freezer");
        case Store::deep_freezer:
            break;
    }
    return say("deep freezer");
}

Sentence in_store_words(Store value) {
    switch (value) {
        case Store::room:
            return say("in room");
        case Store::refrigerator:
            return say("in refrigerator");
        case Store::freezer:
            return say("in freezer");
        case Store::deep_freezer:
            break;
    }
    return say("in deep freezer");
}

Sentence method_words(bloom::BloomMethod value) {
    switch (value) {
        case bloom::BloomMethod::averaged:
            return say("average of many chill and heat models");
        case bloom::BloomMethod::mean_day:
            return say("long-term mean date");
        case bloom::BloomMethod::recent_mean:
            return say("mean date of the last 15 springs");
        case bloom::BloomMethod::degree_days:
            return say("degree-days from a fixed day");
        case bloom::BloomMethod::chill_then_heat:
            break;
    }
    return say("chill first, then heat");
}

Sentence chance_words(Share chance) {
    const double p = chance.value;
    if (std::isnan(p)) {
        return say("not known");
    }
    if (p <= 0) {
        return say("impossible");
    }
    if (p < 0.05) {
        return say("under 5 %");
    }
    return p > 0.95 ? say("over 95 %") : say("{} in 10", std::clamp(chance_tenths(chance), 1, 9));
}

int chance_tenths(Share chance) {
    return std::isnan(chance.value) ? 0
                                    : static_cast<int>(std::lround(std::clamp(chance.value, 0.0, 1.0) * 10));
}

Sentence of_hundred(double share) {
    return say("{:.0f} of 100", share * 100);
}

Sentence kinship_words(const std::optional<double>& kinship) {
    if (!kinship) {
        return say("kinship not known");
    }
    return *kinship > 0 ? say("kinship {:.3f}", *kinship) : say("no kinship in the pedigree");
}

Sentence milligram_words(Milligrams mass) {
    if (!(mass.value > 0)) {
        return {};
    }
    return verbatim(mass.value < 10 ? fmt::format("{:.1f} mg", mass.value)
                                    : fmt::format("{:.0f} mg", mass.value));
}

Sentence flowers_words(int number) {
    return number == 1 ? say("1 flower") : say("{} flowers", number);
}

}  // namespace pipward::season
