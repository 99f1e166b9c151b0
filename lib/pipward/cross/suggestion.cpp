// SPDX-License-Identifier: MIT
#include "pipward/cross/suggestion.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

#include "pipward/cross/detail/flowers_needed.h"
#include "pipward/math/distributions.h"

namespace pipward::cross {
namespace {

/// Below this share the wanted seedlings are more than can be grown, and the binomial need not be asked.
constexpr double least_share = 1e-6;

// Seedlings vary about the mean of their parents by half the additive variance, less what inbred parents no
// longer segregate: V (1 - mean F) / 2 (Falconer & Mackay 1996, ch. 15, from memory). The doubt is that of a
// mean of two merits whose errors are taken as independent.
void make_forecast(SuggestedCross& cross, const ParentCandidate& one, const ParentCandidate& other,
                   const SuggestionRules& rules) {
    if (!one.merit || !other.merit || rules.additive_variance <= 0) {
        return;
    }
    cross.mean = (*one.merit + *other.merit) / 2;
    cross.doubt = std::hypot(one.doubt, other.doubt) / 2;
    const double kept = 1 - (one.inbreeding + other.inbreeding) / 2;
    cross.spread = std::sqrt(rules.additive_variance * kept / 2);
    if (!rules.bar) {
        return;
    }
    cross.share = *cross.spread > 0 ? 1 - math::normal_below((*rules.bar - *cross.mean) / *cross.spread)
                                    : (*cross.mean > *rules.bar ? 1.0 : 0.0);
    if (*cross.share > least_share) {
        const double chance = std::min(*cross.share, 1 - 1e-9);
        const int plants = detail::plants_needed(rules.wanted, chance, rules.confidence);
        cross.plants = plants > 0 && plants <= most_plants ? std::optional{plants} : std::nullopt;
    }
}

bool is_not_diploid(const ParentCandidate& parent) {
    return parent.ploidy && *parent.ploidy != 2;
}

LeftOut left_out(const SuggestedCross& cross, const ParentCandidate& one, const ParentCandidate& other,
                 const SuggestionRules& rules) {
    if (!one.genus.empty() && !other.genus.empty() && one.genus != other.genus) {
        return LeftOut::other_genus;
    }
    if (is_not_diploid(one) || is_not_diploid(other)) {
        return LeftOut::triploid;
    }
    if (cross.by_one.match == lineage::SMatch::none && cross.by_other.match == lineage::SMatch::none) {
        return LeftOut::no_seed;
    }
    if (cross.kinship && *cross.kinship > rules.most_kinship + 1e-9) {
        return LeftOut::related;
    }
    const bool needs_merit = rules.additive_variance > 0;
    return needs_merit && !cross.mean ? LeftOut::not_forecast : LeftOut::no;
}

void sort_by_promise(std::vector<SuggestedCross>& crosses, const std::vector<ParentCandidate>& candidates) {
    const auto key = [&](const SuggestedCross& cross) {
        return std::tuple(cross.left_out != LeftOut::no,
                          cross.plants.value_or(std::numeric_limits<int>::max()), -cross.mean.value_or(0),
                          cross.kinship.value_or(0), std::string_view(candidates[cross.one].name),
                          std::string_view(candidates[cross.other].name));
    };
    std::ranges::stable_sort(crosses, {}, key);
}

}  // namespace

SuggestedCross weigh_cross(const std::vector<ParentCandidate>& candidates, std::size_t one, std::size_t other,
                           std::optional<double> kinship, const SuggestionRules& rules) {
    const auto& a = candidates[one];
    const auto& b = candidates[other];
    SuggestedCross cross;
    cross.one = one;
    cross.other = other;
    cross.kinship = kinship;
    cross.by_one = lineage::s_compatibility(a.alleles, b.alleles);
    cross.by_other = lineage::s_compatibility(b.alleles, a.alleles);
    make_forecast(cross, a, b, rules);
    cross.left_out = left_out(cross, a, b, rules);
    return cross;
}

std::vector<SuggestedCross> suggest_crosses(const std::vector<ParentCandidate>& candidates,
                                            const SuggestionRules& rules, const KinshipOf& kinship) {
    std::vector<SuggestedCross> crosses;
    for (std::size_t one = 0; one < candidates.size(); ++one) {
        for (std::size_t other = one + 1; other < candidates.size(); ++other) {
            crosses.push_back(weigh_cross(candidates, one, other,
                                          kinship(candidates[one].name, candidates[other].name), rules));
        }
    }
    sort_by_promise(crosses, candidates);
    return crosses;
}

}  // namespace pipward::cross
