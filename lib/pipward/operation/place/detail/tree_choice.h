// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/operation/declare/detail/declare.h"
#include "pipward/place/tree_choice.h"
#include "pipward/record/words.h"

/// Trees chosen by what they are and by what the season's plan asks for at them.
namespace pipward::operation::detail {

/// Requests extend it. All that is given must hold.
struct TreeRequest : place::TreeChoice {
    BookName book;
    Day as_of;
    std::optional<Day> tasks_on;
    std::optional<cross::Urgency> urgency;

    bool is_empty() const { return TreeChoice::is_empty() && !tasks_on && !urgency; }
};

/// The book, and what chooses its trees.
std::vector<Bound<TreeRequest>> tree_parameters();

/// What the season's plan in the book asks for at each tree, by label; empty where the request does not ask
/// by tasks. Throws Error (input) where it does and the book has no plan.
std::map<std::string, Sentence> planned_works(const TreeRequest& request);

/// The trees (into Orchard::trees) of a request, as place::chosen_trees(); where it asks by tasks, only those
/// of `works`.
std::vector<std::uint32_t> chosen_trees(const Orchard& orchard, const TreeRequest& request,
                                        const place::TreeDemand& demand, Findings& findings,
                                        const std::map<std::string, Sentence>& works);

}  // namespace pipward::operation::detail
