// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/record/table.h"
#include "pipward/seed/planted.h"

/// A planting as tables: for people, and as the book takes it.
namespace pipward::operation::detail {

TableShape planted_shape();
Table planting_table(const std::vector<seed::Planted>& planted);

/// The seedlings as accessions with both parents, and everything planted as trees; `note` is kept with each.
Table new_accessions(const std::vector<seed::Planted>& planted, const Orchard& orchard,
                     const std::string& note);
Table new_trees(const std::vector<seed::Planted>& planted, Day planted_on, const std::string& note);

}  // namespace pipward::operation::detail
