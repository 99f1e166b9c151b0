// SPDX-License-Identifier: MIT
#include "pipward/seed/allele_survey.h"

#include "pipward/record/descent.h"

namespace pipward::seed {
namespace {

// Apple and pear are not crossed.
bool may_be_crossed(const std::string& genus, const std::string& other) {
    return genus.empty() || other.empty() || genus == other;
}

}  // namespace

Finding contradiction_finding(const ContradictionRow& row) {
    return {Level::warning,
            "accession",
            row.accession,
            "s_alleles",
            row.alleles,
            row.verdict == lineage::SContradiction::rejected_pollen
                ? say("By its alleles it can only come from pollen that the style should have rejected.")
                : say("Its alleles do not fit its recorded parents."),
            say("Check its parents and all three records; s_contradiction shows which allele is missing.")};
}

AlleleSurvey allele_survey(const Evidence& evidence, const std::vector<std::string>& names) {
    AlleleSurvey rows;
    const OrchardIndex book(evidence.orchard);
    std::vector<std::string> genera;
    for (const auto& name : names) {
        genera.push_back(genus_of(book, name));
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        for (std::size_t j = 0; j < names.size(); ++j) {
            if (i != j && may_be_crossed(genera[i], genera[j])) {
                rows.matches.push_back(match_row(evidence, names[i], names[j]));
            } else {
                rows.not_crossed += i < j ? 1 : 0;
            }
        }
        const auto more = genotype_rows(evidence, names[i]);
        rows.genotypes.insert(rows.genotypes.end(), more.begin(), more.end());
    }
    for (const auto& accession : evidence.orchard.accessions) {
        if (const auto row = contradiction_of(evidence, accession)) {
            rows.contradictions.push_back(*row);
        }
    }
    return rows;
}

}  // namespace pipward::seed
