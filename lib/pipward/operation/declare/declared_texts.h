// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>

namespace pipward::operation {

/// Every text for people in the declarations of the operations and their results: titles, help, labels, the
/// meanings of choices, units of parameters. For hosts that speak other languages.
std::set<std::string> declared_texts();

}  // namespace pipward::operation
