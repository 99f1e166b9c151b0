// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/operation/declare/detail/declare.h"
#include "pipward/record/words.h"

/// Which trees somebody wants to go to.
namespace pipward::operation::detail {

/// All that is given must hold.
struct TreeChoice {
    std::string labels;  ///< with commas or semicolons between
    std::string accession;
    std::string block;
    std::optional<TreePurpose> purpose;
    std::optional<Day> tasks_on;
    std::optional<cross::Urgency> urgency;

    bool is_empty() const;
};

/// The parameters that fill a choice, for a request that extends it.
std::vector<Bound<TreeChoice>> tree_choice_parameters();

/// What the work with the trees asks of them. They are to stand on the day.
struct TreeDemand {
    Day as_of;
    bool with_place = true;    ///< trees without a place are left out
    bool removed_too = false;  ///< trees removed before are taken as well
    bool to_come_too = false;  ///< trees planted later are taken as well
};

struct ChosenTree {
    std::uint32_t tree = 0;  ///< into Orchard::trees
    Sentence work{};         ///< what is to be done there: "pollinate 26-01; ..."
};

/// The trees of a choice that meet the demand, in the order of the book. Labels that no tree has are errors
/// that offer the nearest; trees that are left out though they were named or have no place are warnings.
std::vector<ChosenTree> chosen_trees(const std::string& location, const Orchard& orchard,
                                     const TreeChoice& choice, Findings& findings, const TreeDemand& demand);

/// What the season's plan asks for: works by label, of a day and of an urgency where these are given. Throws
/// Error (input) where the book has no plan.
std::map<std::string, Sentence> planned_works(const std::string& location, const TreeChoice& choice);

}  // namespace pipward::operation::detail
