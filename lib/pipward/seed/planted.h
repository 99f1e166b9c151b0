// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/place/row_position.h"
#include "pipward/seed/planting.h"
#include "pipward/seed/waiting_families.h"

namespace pipward::seed {

/// What stands where once it is planted. Points into the orchard and the places that it was planned for.
struct Planted {
    int order = 0;      ///< of planting, from 1
    std::string label;  ///< of the tree to be made; of a seedling its accession's name
    /// A seedling's new name, as "24-01-07"; of a check the accession planted as such.
    std::string accession;
    const CrossGoal* goal = nullptr;            ///< null for a check
    const place::RowPosition* place = nullptr;  ///< never null; into the places
    Sentence address{};                         ///< of the place, for people
};

/// Every seedling with its number and its place, in the order of planting; `check` is the accession of the
/// check trees. The orchard, the families' goals and the places must outlive what is returned.
std::vector<Planted> planted_seedlings(const std::vector<Waiting>& waiting,
                                       const std::vector<place::RowPosition>& places,
                                       const PlantingWish& wish, const std::string& check,
                                       const Orchard& orchard);

/// When a planting is made, and the note that each of its records keeps.
struct PlantingMark {
    Day planted_on;
    std::string remark;
};

/// A planting as the orchard keeps it: the seedlings as accessions with both parents and the seed parent's
/// species, everything planted as trees with computed places, and the seed that left its lots with them.
struct PlantedRecords {
    std::vector<Accession> accessions;
    std::vector<Tree> trees;
    std::vector<SeedWithdrawal> withdrawals;  ///< as seed_drawn() tells them
};
PlantedRecords planted_records(const std::vector<Planted>& planted, const Orchard& orchard,
                               const PlantingMark& mark);

}  // namespace pipward::seed
