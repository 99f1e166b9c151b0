// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pipward::operation {

/// "taste, scab" as names: commas, semicolons and line ends part them, blanks around them do not count. None
/// for blank text.
std::vector<std::string> listed_names(std::string_view text);

}  // namespace pipward::operation
