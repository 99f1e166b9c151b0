// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/place/row_position.h"
#include "pipward/record/table.h"

/// A planting as tables: for people, and as the book takes it.
namespace pipward::operation {

struct Planted {
    int order = 0;
    std::string label;
    std::string accession;
    const CrossGoal* goal = nullptr;  ///< null for a check
    const place::RowPosition* place = nullptr;
    Sentence address{};
};

TableShape planted_shape();
Table planting_table(const std::vector<Planted>& planted);

/// The seedlings as accessions with both parents, and everything planted as trees; `note` is kept with each.
Table new_accessions(const std::vector<Planted>& planted, const Orchard& orchard, const std::string& note);
Table new_trees(const std::vector<Planted>& planted, Day planted_on, const std::string& note);

}  // namespace pipward::operation
