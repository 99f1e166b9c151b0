// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "pipward/place/row_recovery.h"

/// Inside of the room: what to ask where one answer settles most.
namespace pipward::place::detail {

/// What one answer would be, and the rule with it.
struct Variant {
    RecoveryRule rule{};
    Sentence words{};
    std::string option{};
    std::string value{};
};

struct Question {
    Sentence words{};
    std::vector<Variant> variants{};
};

Question which_bearing(const RecoveryRule& rule, double one, double other);
/// The longer of two spacings last.
Question which_spacing(const RecoveryRule& rule, double one, double other);
Question which_beginning(const RecoveryRule& rule);
Question which_rows(const RecoveryRule& rule);

/// With the numbers that follow from each answer. Nothing where neither would give a number.
std::optional<RowQuestion> asked(
    const Question& question, const std::function<std::vector<NumberedTree>(const RecoveryRule&)>& numbered);

}  // namespace pipward::place::detail
