// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/lineage/relation.h"
#include "pipward/record/orchard.h"

/// Who is how closely related to whom among some accessions, and how inbred each is, in plain rows.
namespace pipward::lineage {

/// Two accessions.
struct PairKinship {
    std::string one;
    std::string other;
    std::optional<double> kinship;  ///< coefficient, 0..1; nothing where it cannot be told
    Relation relation = Relation::unknown;
    Sentence remark;  ///< what to bear in mind; empty where nothing
};

/// One accession.
struct OwnInbreeding {
    std::string accession;
    std::optional<double> inbreeding;    ///< F, 0..1; nothing for founders and what is not calculated
    std::optional<double> mean_kinship;  ///< of its known kinships with the others, sports left out
    Sentence remark;
};

struct KinshipSurvey {
    std::vector<PairKinship> pairs;      ///< every two, the most closely related first
    std::vector<OwnInbreeding> singles;  ///< in the order of the names
};

/// Of accessions by name; names that only a cross goal has are founders that nothing is known of. Unknown
/// parents are unrelated founders, a sport stands for its original, and what is not diploid or comes of such
/// is not calculated. Throws Error (input) with a finding for every accession that is its own ancestor.
KinshipSurvey kinship_survey(const Orchard& orchard, std::vector<std::string> names);

/// Why the genes of a member that is not calculated cannot be counted: it is not diploid, or comes of one
/// that is not. `name` is what it is called by.
Sentence not_calculated_words(const std::string& name, const PedigreeMember& member);

}  // namespace pipward::lineage
