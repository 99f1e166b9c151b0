// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/seed/detail/named_crosses.h"
#include "pipward/seed/unknown_cross.h"
#include "pipward/value/listed_names.h"

namespace pipward::operation::detail {

std::vector<std::string> named_crosses(const std::string& list, const Orchard& orchard) {
    auto names = listed_names(list);
    Findings findings;
    for (const auto& name : names) {
        if (std::ranges::find(orchard.goals, name, &CrossGoal::code) == orchard.goals.end()) {
            findings.push_back(seed::unknown_cross(name));
        }
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, std::move(findings));
    }
    return names;
}

bool is_named(const std::vector<std::string>& named, const std::string& cross) {
    return named.empty() || std::ranges::find(named, cross) != named.end();
}

}  // namespace pipward::operation::detail
