// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/table.h"
#include "pipward/season/suggestion_words.h"

namespace pipward::operation::detail {

TableShape suggestion_shape();
Table suggestion_table(const std::vector<season::WeighedCross>& crosses,
                       const season::SuggestionParents& parents, const cross::SuggestionRules& rules);
TableShape left_out_shape();
Table left_out_table(const std::vector<season::WeighedCross>& crosses,
                     const season::SuggestionParents& parents);

}  // namespace pipward::operation::detail
