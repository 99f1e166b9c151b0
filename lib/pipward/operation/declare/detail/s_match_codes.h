// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/table.h"
#include "pipward/season/words.h"

namespace pipward::operation::detail {

/// The words of a column that says what the S-alleles do.
inline std::vector<CodeWord> s_match_codes() {
    using enum lineage::SMatch;
    std::vector<CodeWord> codes;
    for (const auto match : {full, half, none, unknown}) {
        codes.push_back({std::string(to_text(match)), season::s_match_words(match).text()});
    }
    return codes;
}

}  // namespace pipward::operation::detail
