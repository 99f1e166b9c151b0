// SPDX-License-Identifier: MIT
#include "pipward/seed/allele_evidence.h"

#include <fmt/format.h>

#include "pipward/seed/learning.h"

namespace pipward::seed {
namespace {

// A count that chance alone explains more rarely than this is told as a sign.
constexpr double rare = 0.01;

std::string percent(double share) {
    return fmt::format("{:.3g} %", 100 * share);
}

bool is_recorded(const lineage::SKnowledge& knowledge) {
    return knowledge.source == lineage::SSource::recorded;
}

Sentence match_words(const lineage::SMatchChances& chances, const lineage::SKnowledge& style,
                     const lineage::SKnowledge& donor) {
    if (style.genotypes.empty() || donor.genotypes.empty()) {
        return say("The alleles of one of them are not known.");
    }
    if (is_recorded(style) && is_recorded(donor)) {
        return verbatim(lineage::to_text(style.genotypes.front().alleles) + " × " +
                        lineage::to_text(donor.genotypes.front().alleles));
    }
    std::vector<Sentence> parts;
    const auto add = [&](double chance, const Sentence& word) {
        if (chance > 0) {
            parts.push_back(say("{} {}", word, percent(chance)));
        }
    };
    add(chances.full, say("fully compatible"));
    add(chances.half, say("semi-compatible"));
    add(chances.none, say("none"));
    add(chances.unknown, say("not known"));
    return say("By the parents' alleles: {}.", joined(parts, verbatim(", ")));
}

lineage::SMatch certain_match(const lineage::SMatchChances& chances) {
    return chances.full > certain   ? lineage::SMatch::full
           : chances.half > certain ? lineage::SMatch::half
           : chances.none > certain ? lineage::SMatch::none
                                    : lineage::SMatch::unknown;
}

Sentence field_words(const lineage::CrossCount& count, lineage::SMatch match,
                     const lineage::SetChances& chances) {
    auto words = count.set == 0 ? none_words(count, chances) : count_words(count);
    if (match == lineage::SMatch::none && count.set > 0 &&
        lineage::chance_by_leak(count, chances.leak) < rare) {
        words += verbatim(" ");
        words += say("That contradicts the alleles: check both records, or foreign pollen came in.");
    }
    if ((match == lineage::SMatch::full || match == lineage::SMatch::half) && count.set == 0 &&
        lineage::chance_of_none(count.flowers, chances.set) < rare) {
        words += verbatim(" ");
        words += say("The alleles do not explain it: frost and dead pollen do that too.");
    }
    return words;
}

}  // namespace

Evidence collected_evidence(const Orchard& orchard, Day as_of) {
    Evidence evidence{orchard, lineage::pedigree_order(orchard.accessions, orchard.blend_members), {}, {}, {},
                      {}};
    if (!evidence.order.loops.empty()) {
        throw Error(Trouble::input, evidence.order.loops);
    }
    evidence.recorded = lineage::recorded_s_alleles(orchard.accessions, evidence.order);
    evidence.knowledge = lineage::s_knowledge(evidence.order, evidence.recorded);
    evidence.counts = field_counts(orchard, as_of);
    evidence.chances.set = learn(orchard, as_of, cross::CrossingAssumptions{}).fruit_set.used;
    return evidence;
}

Sentence count_words(const lineage::CrossCount& count) {
    return count.flowers == 1 ? say("{} of 1 flower set.", count.set)
                              : say("{} of {} flowers set.", count.set, count.flowers);
}

Sentence none_words(const lineage::CrossCount& count, const lineage::SetChances& chances) {
    constexpr double very_rare = 1e-6;
    const double chance = lineage::chance_of_none(count.flowers, chances.set);
    const auto none =
        count.flowers == 1 ? say("The 1 flower did not set.") : say("None of {} flowers set.", count.flowers);
    const auto by_chance =
        chance < very_rare
            ? say("In a compatible cross, with a mean set of {}, this has a probability below 1 in a "
                  "million.",
                  percent(chances.set))
            : say("In a compatible cross, with a mean set of {}, this has a probability of 1 in {:.0f}.",
                  percent(chances.set), 1 / chance);
    return joined({none, by_chance}, verbatim(" "));
}

MatchRow match_row(const Evidence& evidence, const std::string& seed, const std::string& pollen) {
    const auto style = evidence.of(seed);
    const auto donor = evidence.of(pollen);
    const auto chances = lineage::s_match_chances(style, donor);
    MatchRow row{seed, pollen, certain_match(chances), std::nullopt, {}, std::nullopt, std::nullopt, {}};
    if (chances.unknown == 0) {
        row.share = chances.share;
    }
    row.from_alleles = match_words(chances, style, donor);
    if (const auto count = evidence.counts.find({seed, pollen}); count != evidence.counts.end()) {
        row.flowers = count->second.flowers;
        row.set = count->second.set;
        row.from_field = field_words(count->second, row.match, evidence.chances);
    }
    return row;
}

}  // namespace pipward::seed
