// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include "pipward/value/finding.h"

namespace pipward::value {

/// Findings that say the same of different things: of one level, table and column, their messages one form.
struct FindingKind {
    Findings findings;  ///< in their order, at least one
};

/// By the place of each kind's first. Forms are told apart before a host has put them in other words; then
/// each message is a kind of its own.
std::vector<FindingKind> by_kind(const Findings& findings);

}  // namespace pipward::value
