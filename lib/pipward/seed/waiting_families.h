// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Seedlings that germinated and have no numbered place yet.
namespace pipward::seed {

/// A cross with seedlings to be planted.
struct Waiting {
    const CrossGoal* goal = nullptr;  ///< never null; into the orchard
    /// That germinated and have no place, or so many of them as are wished for; above 0.
    int seedlings = 0;
};

/// Whether a wish such as "24-01=12; 24-02" can be read: so many of a cross, or all of it.
bool is_wish_of_crosses(std::string_view text);

/// What is wished for, or every cross that has seedlings waiting where nothing is. Error findings for more
/// than germinated and for crosses that the book does not have. `crosses` must be readable.
std::vector<Waiting> waiting_families(const std::string& crosses, const Orchard& orchard, Day as_of,
                                      Findings& findings);

}  // namespace pipward::seed
