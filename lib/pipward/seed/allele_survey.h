// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/seed/allele_evidence.h"
#include "pipward/value/finding.h"

namespace pipward::seed {

/// What alleles and worked crosses tell of some accessions, and which recorded parents of the whole orchard
/// the alleles contradict.
struct AlleleSurvey {
    std::vector<MatchRow> matches;  ///< every two of one genus, both ways
    std::vector<GenotypeRow> genotypes;
    std::vector<ContradictionRow> contradictions;
    int not_crossed = 0;  ///< pairs of an apple and a pear
};
AlleleSurvey allele_survey(const Evidence& evidence, const std::vector<std::string>& names);

/// As a warning about the accession.
Finding contradiction_finding(const ContradictionRow& row);

}  // namespace pipward::seed
