// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/operation/suggestion_meetings.h"
#include "pipward/operation/suggestion_parents.h"
#include "pipward/record/table.h"

namespace pipward::operation {

/// A pair with all that was found out about it.
struct WeighedCross {
    cross::SuggestedCross cross;
    Sentence reason{};  ///< why it is left out; empty: it is not
    std::optional<int> rank{};
    std::optional<CrossMeeting> meeting{};
    std::optional<std::string> shown_by_one{};  ///< who shows the trait that both sides must show
    std::optional<std::string> shown_by_other{};
};

/// Empty for one that is not left out.
Sentence reason_of(cross::LeftOut why, double most_kinship);

TableShape suggestion_shape();
Table suggestion_table(const std::vector<WeighedCross>& crosses, const SuggestionParents& parents,
                       const cross::SuggestionRules& rules);
TableShape left_out_shape();
Table left_out_table(const std::vector<WeighedCross>& crosses, const SuggestionParents& parents);

Sentence suggestion_summary(const std::vector<WeighedCross>& crosses, const SuggestionParents& parents,
                            const cross::SuggestionRules& rules);

}  // namespace pipward::operation
