// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/value/spoken.h"

namespace pipward::value {

/// "taste, scab" as names: commas, semicolons and line ends part them, blanks around them do not count. None
/// for blank text.
std::vector<std::string> listed_names(std::string_view text);

}  // namespace pipward::value
