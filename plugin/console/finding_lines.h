// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/value/finding.h"

/// Findings as people read them.
namespace pipward::console {

/// A line each, weightiest first. Of more than three of one kind the first stands for all, with their number;
/// `all` gives every one.
std::vector<std::string> finding_lines(const Findings& findings, bool all);

}  // namespace pipward::console
