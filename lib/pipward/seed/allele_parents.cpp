// SPDX-License-Identifier: MIT
#include "pipward/seed/allele_evidence.h"

namespace pipward::seed {
namespace {

// Of a parent by name; of a blend all that its members have, nothing where one of them is not known.
std::optional<lineage::SAlleles> parent_alleles(const Evidence& evidence,
                                                const std::vector<lineage::ParentShare>& parents) {
    lineage::SAlleles all;
    double told = 0;
    for (const auto& parent : parents) {
        const auto& recorded = evidence.recorded[parent.parent];
        if (!recorded || !evidence.order.members[parent.parent].diploid) {
            return std::nullopt;
        }
        all.insert(recorded->begin(), recorded->end());
        told += parent.share;
    }
    return told > certain ? std::optional{all} : std::nullopt;
}

}  // namespace

std::optional<ContradictionRow> contradiction_of(const Evidence& evidence, const Accession& accession) {
    const int number = evidence.order.number.at(accession.name);
    const auto& member = evidence.order.members[number];
    if (!evidence.recorded[number] || !member.diploid || member.name != accession.name) {
        return std::nullopt;
    }
    const auto seed = parent_alleles(evidence, member.seed);
    const auto pollen = parent_alleles(evidence, member.pollen);
    const auto verdict = lineage::s_contradiction(*evidence.recorded[number], seed, pollen);
    if (!verdict) {
        return std::nullopt;
    }
    return ContradictionRow{accession.name,
                            lineage::to_text(*evidence.recorded[number]),
                            accession.seed_parent.value_or(""),
                            seed ? lineage::to_text(*seed) : "",
                            accession.pollen_parent.value_or(""),
                            pollen ? lineage::to_text(*pollen) : "",
                            *verdict};
}

}  // namespace pipward::seed
