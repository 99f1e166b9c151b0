// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/seed/allele_evidence.h"

namespace pipward::seed {
namespace {

// A cross of the accession with a partner whose alleles are recorded.
struct Trial {
    const PairOfParents* parents = nullptr;
    const lineage::CrossCount* count = nullptr;
    lineage::SAlleles partner;
    bool as_seed = false;  // the accession is the seed parent
};

std::vector<Trial> trials_of(const Evidence& evidence, const std::string& name) {
    std::vector<Trial> trials;
    for (const auto& [parents, count] : evidence.counts) {
        const bool as_seed = parents.first == name;
        if (!as_seed && parents.second != name) {
            continue;
        }
        if (const auto partner = evidence.recorded_of(as_seed ? parents.second : parents.first)) {
            trials.push_back({&parents, &count, *partner, as_seed});
        }
    }
    return trials;
}

double likelihood(const std::vector<Trial>& trials, const lineage::SAlleles& alleles,
                  const lineage::SetChances& chances) {
    double product = 1;
    for (const auto& trial : trials) {
        const auto met = trial.as_seed ? lineage::s_compatibility(alleles, trial.partner)
                                       : lineage::s_compatibility(trial.partner, alleles);
        const auto likely = lineage::field_likelihood(*trial.count, chances);
        product *= met.match == lineage::SMatch::none ? likely.incompatible : likely.compatible;
    }
    return product;
}

Sentence trial_words(const std::vector<Trial>& trials, const lineage::SetChances& chances) {
    std::vector<Sentence> words;
    for (const auto& trial : trials) {
        const auto& count = *trial.count;
        words.push_back(say("{} × {}: {}", trial.parents->first, trial.parents->second,
                            count.set == 0 ? none_words(count, chances) : count_words(count)));
    }
    return joined(words, verbatim(" "));
}

Sentence nothing_words(const Evidence& evidence, const lineage::PedigreeMember& member) {
    const auto tells = [&](const lineage::ParentShare& parent) {
        return !evidence.knowledge[parent.parent].genotypes.empty();
    };
    if (!member.diploid) {
        return say("It is not diploid: nothing is inferred.");
    }
    return !member.seed.empty() && !member.pollen.empty() && std::ranges::all_of(member.seed, tells) &&
                   std::ranges::all_of(member.pollen, tells)
               ? say("No match: by the alleles of its parents the style rejects all this pollen.")
               : say("Neither it nor its parents have alleles on record.");
}

Sentence source_words(const Evidence& evidence, const std::string& name,
                      const lineage::SKnowledge& knowledge) {
    const auto member = evidence.order.number.find(name);
    if (member == evidence.order.number.end()) {
        return say("Neither it nor its parents have alleles on record.");
    }
    const auto& of = evidence.order.members[member->second];
    if (knowledge.source == lineage::SSource::nothing) {
        return nothing_words(evidence, of);
    }
    if (of.name != name) {
        return say("Those of {}, whose sport it is.", of.name);
    }
    if (knowledge.source == lineage::SSource::recorded) {
        return {};
    }
    return of.expected ? say("One allele of each parent; the blend is one pool of pollen.")
                       : say("One allele of each parent, of the pollen only such as the style lets through.");
}

}  // namespace

std::vector<GenotypeRow> genotype_rows(const Evidence& evidence, const std::string& name) {
    const auto knowledge = evidence.of(name);
    const auto source = source_words(evidence, name, knowledge);
    if (knowledge.genotypes.empty()) {
        return {{name, std::nullopt, knowledge.source, std::nullopt, std::nullopt, source, {}}};
    }
    const bool guessed = knowledge.source == lineage::SSource::parents;
    const auto trials = guessed ? trials_of(evidence, name) : std::vector<Trial>{};
    double sum = 0;
    for (const auto& genotype : knowledge.genotypes) {
        sum += genotype.chance * likelihood(trials, genotype.alleles, evidence.chances);
    }
    std::vector<GenotypeRow> rows;
    for (const auto& genotype : knowledge.genotypes) {
        GenotypeRow row{name, genotype.alleles, knowledge.source, std::nullopt, std::nullopt, source, {}};
        if (guessed) {
            row.chance = genotype.chance;
        }
        if (!trials.empty() && sum > 0) {
            row.field_chance = genotype.chance * likelihood(trials, genotype.alleles, evidence.chances) / sum;
            row.from_field = trial_words(trials, evidence.chances);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace pipward::seed
