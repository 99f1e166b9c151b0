// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Which trees somebody wants to go to.
namespace pipward::place {

/// All that is given must hold.
struct TreeChoice {
    std::string labels;     ///< with commas or semicolons between
    std::string accession;  ///< names with commas between
    std::string block;
    std::optional<TreePurpose> purpose;
    std::optional<std::set<std::string>> among{};  ///< labels of trees, where others are not wanted

    bool is_empty() const;
};

/// What the work with the trees asks of them. They are to stand on the day.
struct TreeDemand {
    Day as_of;
    bool with_place = true;    ///< trees without a place are left out
    bool removed_too = false;  ///< trees removed before are taken as well
    bool to_come_too = false;  ///< trees planted later are taken as well
};

/// The trees (into Orchard::trees) of a choice that meet the demand, in the order of the book. Labels that no
/// tree has are errors that offer the nearest; trees that are left out though they were named or have no
/// place are warnings.
std::vector<std::uint32_t> chosen_trees(const Orchard& orchard, const TreeChoice& choice,
                                        const TreeDemand& demand, Findings& findings);

}  // namespace pipward::place
