// SPDX-License-Identifier: MIT
#include "pipward/season/suggestion_words.h"

#include <algorithm>
#include <cmath>

namespace pipward::season {
namespace {

Sentence seedlings_words(const cross::SuggestedCross& cross, const SuggestionParents& parents,
                         const cross::SuggestionRules& rules) {
    if (!cross.mean) {
        return say("No trait weights were given, so only kinship, alleles and bloom decide.");
    }
    if (!cross.plants) {
        return say("Hardly a seedling surpasses {}: more than {} would have to be grown.", parents.bar_name,
                   cross::most_plants);
    }
    return say(
        "Of {} seedlings at least {} should surpass {} with {:.0f} % confidence: the mean of the parents is "
        "{:.2f}, {} has {:.2f}.",
        *cross.plants, rules.wanted, parents.bar_name, 100 * rules.confidence, *cross.mean, parents.bar_name,
        rules.bar.value_or(0));
}

Sentence shown_words(const WeighedCross& weighed) {
    return weighed.shown_by_one && weighed.shown_by_other
               ? say("Shown in both parents: by {} and by {}.", *weighed.shown_by_one,
                     *weighed.shown_by_other)
               : Sentence{};
}

Sentence sentences(std::vector<Sentence> parts) {
    std::erase_if(parts, [](const Sentence& part) { return part.empty(); });
    return joined(parts, verbatim(" "));
}

Sentence why_of(const Suggestion& s, const SuggestionParents& parents, const cross::SuggestionRules& rules) {
    const auto& way = s.way();
    return sentences({seedlings_words(s.weighed->cross, parents, rules), shown_words(*s.weighed),
                      way ? way->why : Sentence{}});
}

Sentence doubts_of(const Suggestion& s, const WeighedCross* next) {
    std::vector<Sentence> doubts;
    const auto& cross = s.weighed->cross;
    if (!cross.kinship) {
        doubts.push_back(say("Kinship of the parents is not known."));
    }
    if (s.alleles.match == lineage::SMatch::unknown) {
        doubts.push_back(say("Their S-alleles are not both known."));
    }
    if (!s.way()) {
        doubts.push_back(say("Whether their bloom overlaps was not calculated."));
    }
    if (next != nullptr && cross.mean && next->cross.mean &&
        *cross.mean - *next->cross.mean < std::hypot(*cross.doubt, *next->cross.doubt)) {
        doubts.push_back(say(
            "Not significantly better than the next: the means differ by less than their standard error."));
    }
    return joined(doubts, verbatim(" "));
}

Suggestion suggested(const WeighedCross& weighed, const SuggestionParents& parents) {
    const auto& one = parents.candidates[weighed.cross.one].name;
    const auto& other = parents.candidates[weighed.cross.other].name;
    Suggestion s;
    s.weighed = &weighed;
    s.seed_parent = weighed.meeting ? weighed.meeting->seed_parent : one;
    s.pollen_parent = weighed.meeting ? weighed.meeting->pollen_parent : other;
    s.alleles = s.seed_parent == one ? weighed.cross.by_one : weighed.cross.by_other;
    return s;
}

}  // namespace

const std::optional<cross::CrossWay>& Suggestion::way() const {
    static const std::optional<cross::CrossWay> none;
    return weighed->meeting ? weighed->meeting->way : none;
}

std::vector<Suggestion> suggested_crosses(const std::vector<WeighedCross>& crosses,
                                          const SuggestionParents& parents,
                                          const cross::SuggestionRules& rules) {
    std::vector<const WeighedCross*> chosen;
    for (const auto& cross : crosses) {
        if (cross.rank) {
            chosen.push_back(&cross);
        }
    }
    std::vector<Suggestion> all;
    for (std::size_t i = 0; i < chosen.size(); ++i) {
        auto& s = all.emplace_back(suggested(*chosen[i], parents));
        s.why = why_of(s, parents, rules);
        s.doubts = doubts_of(s, i + 1 < chosen.size() ? chosen[i + 1] : nullptr);
    }
    return all;
}

Sentence suggestion_summary(const std::vector<WeighedCross>& crosses, const SuggestionParents& parents,
                            const cross::SuggestionRules& rules) {
    const auto chosen =
        std::ranges::count_if(crosses, [](const auto& cross) { return cross.rank.has_value(); });
    auto summary =
        say("Of {} pairs of {} parents {} are suggested.", crosses.size(), parents.candidates.size(), chosen);
    if (rules.additive_variance > 0) {
        summary += verbatim(" ");
        summary +=
            say("Wanted seedlings exceed {}. Traits are assumed to be inherited independently, and the "
                "heritability is an assumption.",
                parents.bar_name);
    }
    return summary;
}

}  // namespace pipward::season
