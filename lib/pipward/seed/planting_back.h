// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/record/orchard.h"

/// A planting taken back as a whole.
namespace pipward::seed {

/// How the trees and accessions of a planting are marked: "planting 2026-07-01".
std::string planting_remark(const std::string& name);

/// What bears a planting's note; points into the orchard.
struct PlantingRows {
    std::vector<const Tree*> trees;            ///< never null; in the order of the book
    std::vector<const Accession*> accessions;  ///< likewise
    std::vector<const SeedWithdrawal*> withdrawals;  ///< likewise
};

/// Every tree, accession and seed withdrawal that bears the remark. Throws Error (input) with all findings where there is none,
/// or where something was noted of one of them since; then nothing may be taken out.
PlantingRows planting_to_take_back(const Orchard& orchard, const std::string& remark);

}  // namespace pipward::seed
